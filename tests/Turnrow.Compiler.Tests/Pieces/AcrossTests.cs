using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>A row over several pieces, some of them made twice, and what it goes over as an edge.</summary>
public sealed class AcrossTests
{
    private const string Pieces = """
        piece back
          begin with 24 stitches
          row 1 RS: dc across
          straight 3 rows
        piece front
          begin with 24 stitches
          row 1 RS: dc across
          straight 3 rows
        piece sleeve, make 2
          begin with 16 stitches
          row 1 RS: dc across
          straight 3 rows
          divide: 2 for near-underarm, 12 for top, 2 for far-underarm

        """;

    [Fact]
    public void A_piece_that_is_gone_over_whole_has_no_part_that_waits() => Compiled.Of("""
        turn sc: ch 1 does not count
        piece leg, make 2
        begin with 12 stitches
        round 1: sc around
        divide: 6 for outside, 6 for inside
        fasten off
        piece body across first leg inside, second leg, first leg outside
        round: sc 6, bridge 3 for gap-one, sc 12, bridge 3 for gap-two, sc around = 24
        round: sc around = 30
        seam body gap-one with body gap-two
        """).Clean();

    [Fact]
    public void Each_of_several_lies_in_the_row_where_it_is_named()
    {
        var yoke = Assert.Single(Of("back, first sleeve, front, second sleeve").Pattern.Pieces, p => p.Name == "yoke").InSizes[0];
        var start = Assert.IsType<AcrossStart>(yoke.Start);
        Assert.Equal([("back", 24), ("first-sleeve", 16), ("front", 24), ("second-sleeve", 16)], start.Parts.Select(part => (part.Base.Name, part.Count)));
        Assert.Equal(80, yoke.LastStitches);
    }

    [Fact]
    public void Each_has_the_parts_that_its_line_names()
    {
        var yoke = Assert.Single(Of("back, first sleeve top, front, second sleeve top").Pattern.Pieces, p => p.Name == "yoke").InSizes[0];
        Assert.Equal([(0, 24), (2, 12), (0, 24), (2, 12)], Assert.IsType<AcrossStart>(yoke.Start).Parts.Select(part => (part.FromRight, part.Count)));
    }

    [Fact]
    public void A_part_of_one_that_nothing_goes_on_from_is_told_by_its_name() =>
        Assert.Contains(Of("back, first sleeve top, front").Diagnostics, d => d.Kind == PartUnused.Kind && d.Help!.Contains("from second-sleeve: top", StringComparison.Ordinal));

    [Fact]
    public void What_is_picked_up_along_a_part_of_one_is_of_that_one()
    {
        var found = Compiled.Of(Pieces + "piece cuff picked up along second sleeve near-underarm: 1 dc in each st\n");
        Assert.Equal([2], found.Counts("cuff"));
    }

    [Fact]
    public void Yarn_is_joined_where_one_of_several_comes_first() =>
        Assert.True(Assert.IsType<AcrossStart>(Assert.Single(Of("first sleeve, back, second sleeve, front").Pattern.Pieces, p => p.Name == "yoke").InSizes[0].Start).Joined);

    [Theory]
    [InlineData("back, sleeve, front, sleeve", "first sleeve", "second sleeve")]
    [InlineData("back, sleeve, front, first sleeve", "second sleeve")]
    [InlineData("back, second sleeve, front, sleeve", "first sleeve")]
    [InlineData("back, sleeve second, front, sleeve", "second sleeve", "first sleeve")]
    [InlineData("back, sleeve top, front, second sleeve top", "first sleeve")]
    [InlineData("back, first front, first sleeve, second sleeve", "front")]
    public void It_has_to_be_said_which(string over, params string[] mends)
    {
        var errors = Errors(Of(over));
        Assert.All(errors, d => Assert.Equal(MadeSeveral.Kind, d.Kind));
        Assert.Equal(mends, errors.Select(d => Assert.Single(d.Mends).NewText));
    }

    [Theory]
    [InlineData("back, sleeve, front, sleeve")]
    [InlineData("back, sleeve top, front, second sleeve top")]
    [InlineData("back, first sleeve, front, first sleeve")]
    [InlineData("back first sleeve, front, second sleeve")]
    [InlineData("first back, sleeve second")]
    public void What_is_proposed_mends_it(string over)
    {
        var text = Compiled.Header + Text(over);
        var errors = Errors(Compiled.Whole(text).Compilation);
        foreach (var mend in errors.Select(d => Assert.Single(d.Mends)).OrderByDescending(m => m.Span.Start))
            text = text[..mend.Span.Start] + mend.NewText + text[mend.Span.End..];
        Assert.Empty(Errors(Compiled.Whole(text).Compilation));
    }

    [Fact]
    public void One_named_twice_is_refused_and_the_other_proposed()
    {
        var error = Assert.Single(Errors(Of("back, first sleeve, front, first sleeve")));
        Assert.Equal(PartOverlap.Kind, error.Kind);
        Assert.Equal("second sleeve", Assert.Single(error.Mends).NewText);
    }

    [Fact]
    public void One_that_another_piece_goes_on_from_is_refused_and_the_other_proposed()
    {
        var error = Assert.Single(Errors(Of("back, first sleeve", "piece collar across first sleeve, front\n  row: dc across\n")));
        Assert.Equal(PartOverlap.Kind, error.Kind);
        Assert.Contains("`second sleeve`", error.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void More_than_are_made_is_refused_once_for_each() =>
        Assert.Equal([MadeSeveral.Kind, MadeSeveral.Kind, PartOverlap.Kind], Errors(Of("sleeve, sleeve, sleeve")).Select(d => d.Kind));

    [Fact]
    public void One_that_is_left_out_is_told_even_where_each_is_closed_by_itself()
    {
        const string seam = "seam sleeve right edge with sleeve left edge\n";
        Assert.Contains(Of("back, first sleeve, front", seam).Diagnostics, d => d.Kind == PieceUnjoined.Kind && d.Message.StartsWith("second-sleeve", StringComparison.Ordinal));
        Assert.DoesNotContain(Of("back, first sleeve, front, second sleeve", seam).Diagnostics, d => d.Kind == PieceUnjoined.Kind);
    }

    [Fact]
    public void A_forgotten_comma_is_told()
    {
        var error = Assert.Single(Errors(Of("back front, first sleeve, second sleeve")));
        Assert.Equal(PartUnknown.Kind, error.Kind);
        Assert.Equal(", ", Assert.Single(error.Mends).NewText);
    }

    [Theory]
    [InlineData("seam first sleeve top with back foundation\n", "yoke goes on from the stitches of first-sleeve top")]
    [InlineData("seam sleeve top with sleeve foundation\n", "yoke goes on from the stitches of sleeve top")]
    [InlineData("seam back last row with front foundation\n", "yoke goes on from all stitches of the last row of back")]
    [InlineData("piece cuff picked up along second sleeve top: 1 dc in each st\n", "yoke goes on from the stitches of second-sleeve top")]
    [InlineData("piece cuff picked up along front last row: 1 dc in each st\n", "yoke goes on from all stitches of the last row of front")]
    public void What_the_row_goes_over_is_no_edge_any_more(string line, string said)
    {
        var error = Assert.Single(Errors(Of("back, first sleeve top, front, second sleeve top", line)));
        Assert.Equal(StitchesTaken.Kind, error.Kind);
        Assert.StartsWith(said, error.Message, StringComparison.Ordinal);
        Assert.Equal("yoke begins here", Assert.Single(error.Related).Message);
    }

    [Theory]
    [InlineData("seam first sleeve near-underarm with first sleeve far-underarm\n")]
    [InlineData("seam first sleeve last row with second sleeve foundation, easing\n")]
    [InlineData("piece cuff picked up along sleeve foundation: 1 dc in each st\n", "made-several")]
    public void What_stays_open_is_one(string line, params string[] errors) =>
        Assert.Equal(errors, Errors(Of("back, first sleeve top, front, second sleeve top", line)).Select(d => d.Kind.Name));

    [Fact]
    public void A_piece_that_begins_from_all_of_a_row_takes_it() => Assert.Equal(
        [StitchesTaken.Kind],
        Errors(Compiled.Of(Pieces + "piece yoke from back: 24 stitches at right edge\n  row: dc across\nseam back last row with front last row\n").Compilation).Select(d => d.Kind));

    private static string Text(string over, string more = "") => $"{Pieces}piece yoke across {over}\n  row: dc across\n  fasten off\n{more}";

    private static Compilation Of(string over, string more = "") => Compiled.Of(Text(over, more)).Compilation;

    private static List<Diagnostic> Errors(Compilation compilation) => [.. compilation.Diagnostics.Where(d => d.Kind.Severity == Severity.Error)];
}
