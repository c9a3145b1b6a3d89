using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Rounds together with what else pieces have: skips, marks, holds by size, parts with names and their seams.</summary>
public sealed class RoundConstructTests
{
    private const string Body = """
        piece body
          begin with 40 stitches
          round 1: dc around
          straight 3 rounds
          divide: 18 for front, 2 for right-underarm, 18 for back, 2 for left-underarm
          fasten off

        piece sleeve
          begin with 14 stitches
          round 1: dc around
          straight 3 rounds
          divide: 1 for far-underarm, 12 for top, 1 for near-underarm
          fasten off


        """;

    private const string Yoke = """
        piece sleeve-two is sleeve mirrored

        piece yoke across body front, sleeve top, body back, sleeve-two top
          round: dc around = 60
          straight 2 rounds = 60
          fasten off


        """;

    private const string FirstSeam = "seam body right-underarm with sleeve near-underarm and sleeve far-underarm\n";
    private const string SecondSeam = "seam body left-underarm with sleeve-two near-underarm and sleeve-two far-underarm\n";

    [Fact]
    public void A_round_that_begins_with_a_skipped_stitch_is_one_less_and_begins_in_the_next()
    {
        var round = Sound("piece hat\n  begin with 20 stitches\n  round 1: dc around\n  round 2: skip 1, dc around = 19\n  round 3: (skip 1, 2 dc in next) 9 times, dc = 19\n").InSizes[0].Rows;
        Assert.Equal([20, 19, 19], round.Select(row => row.Work!.Stitches));
        // The chain stands for the first stitch worked, wherever that goes.
        Assert.All(round, row => Assert.True(row.Work!.Opening is { Counts: true, Chains: 3, Space: 0 }));
        Assert.All(round.Skip(1), row => Assert.Equal(RowBegins.Round, row.Begins));
    }

    [Theory]
    [InlineData("S", "M")]
    [InlineData("M", "S")]
    public void What_stays_held_in_one_size_is_told_of_that_size(string size, string other)
    {
        var warning = Assert.Single(Found($"piece mitten\n  begin with 30 stitches\n  round 1: dc around\n  for {size}: round: dc 5, hold 6 for thumb, bridge 6, dc around\n  for {other}: round: dc around\n"), d => d.Kind.Name == "held-unused");
        Assert.Equal([size], warning.Sizes);
        Assert.EndsWith($"in {size}", warning.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stays_held_in_all_sizes_is_told_without_their_names()
    {
        var warning = Assert.Single(Found("piece mitten\n  begin with 30 stitches\n  round 1: dc around\n  round 2: dc 5, hold 6 for thumb, bridge 6, dc around\n"), d => d.Kind.Name == "held-unused");
        Assert.DoesNotContain(" in S", warning.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mark next round brim", "straight 6 rounds from brim", 7)]
    [InlineData("mark next row brim", "straight 6 rounds from brim", 7)]
    [InlineData("mark next round brim", "straight to 20 cm from brim", 17)]
    [InlineData("mark next round brim\n  straight 2 rounds", "shape 10 rounds from brim: dec 1 at both edges every 4 rounds", 11)]
    public void A_mark_in_rounds_counts_rounds(string mark, string from, int rounds)
    {
        // 8 rounds to 10 cm; round 2 is the first that counts from the mark.
        var hat = Sound($"piece hat\n  begin with 40 stitches\n  round 1: dc around\n  {mark}\n  {from}\n").InSizes[0];
        Assert.Equal(rounds, hat.Rows.Count);
        Assert.All(hat.Rows, row => Assert.True(row.IsRound));
    }

    [Fact]
    public void A_mark_that_rounds_are_past_is_told() =>
        Assert.Equal(["rows-passed"], Errors("piece hat\n  begin with 40 stitches\n  round 1: dc around\n  mark next round brim\n  straight 6 rounds\n  straight 4 rounds from brim\n"));

    [Fact]
    public void A_round_goes_over_named_parts_in_the_order_said_and_their_seams_close_the_underarms()
    {
        var pattern = Clean(Body + Yoke + FirstSeam + SecondSeam);
        var parts = Assert.IsType<AcrossStart>(pattern.Pieces.Single(piece => piece.Name == "yoke").InSizes[0].Start).Parts;
        Assert.Equal(["body", "sleeve", "body", "sleeve-two"], parts.Select(part => part.Base.Name));
        Assert.Equal([(0, 18), (1, 12), (20, 18), (1, 12)], parts.Select(part => (part.FromRight, part.Count)));
        var seams = pattern.Items.OfType<Turnrow.Fabric.Patterns.SeamInSizes>().Select(seam => seam.InSizes[0]!);
        Assert.All(seams, seam => Assert.Equal((2, 2), (seam.WholeFirst.Sum(side => side.Stitches), seam.WholeSecond.Sum(side => side.Stitches))));
    }

    [Fact]
    public void A_mirrored_sleeves_parts_lie_the_other_way_round()
    {
        // Parts of other numbers: 1 before the top and 3 behind it, in the mirror image 3 before and 1 behind.
        var apart = Body.Replace("begin with 14", "begin with 16", StringComparison.Ordinal).Replace("1 for near-underarm", "3 for near-underarm", StringComparison.Ordinal);
        var parts = Assert.IsType<AcrossStart>(Sound(apart + Yoke, "yoke").InSizes[0].Start).Parts;
        Assert.Equal([(1, 12), (3, 12)], new[] { parts[1], parts[3] }.Select(part => (part.FromRight, part.Count)));
    }

    [Fact]
    public void A_mirrored_yoke_goes_over_the_mirrored_pieces_parts()
    {
        var parts = Assert.IsType<AcrossStart>(Sound(Body + """
            piece body-two is body mirrored

            piece half across body front, sleeve top
              row: dc across = 30
              fasten off

            piece sleeve-two is sleeve mirrored

            piece half-two is half mirrored

            """, "half-two").InSizes[0].Start).Parts;
        Assert.Equal([("sleeve-two", 1, 12), ("body-two", 22, 18)], parts.Select(part => (part.Base.Name, part.FromRight, part.Count)));
    }

    [Fact]
    public void A_named_part_is_sewn_once() =>
        Assert.Equal(["part-unused", "edge-twice"], Names(Body + Yoke + FirstSeam + "seam body right-underarm with sleeve-two near-underarm and sleeve-two far-underarm\n"));

    [Fact]
    public void A_named_part_that_nothing_takes_is_told() =>
        Assert.Equal(["far-underarm", "left-underarm", "near-underarm"], Clean(Body + Yoke + FirstSeam, "part-unused").Select(NameIn).Order(StringComparer.Ordinal));

    [Fact]
    public void A_part_that_is_not_there_is_told_with_those_that_are()
    {
        var error = Assert.Single(Found(Body + "piece yoke across body front, sleeve tip\n  row: dc across\n"), d => d.Kind.Severity == Severity.Error);
        Assert.Equal("part-unknown", error.Kind.Name);
    }

    private static string NameIn(Diagnostic warning) => new[] { "left-underarm", "near-underarm", "far-underarm" }.First(name => warning.Message.Contains(name, StringComparison.Ordinal));

    private static Turnrow.Fabric.Patterns.PieceInSizes Sound(string pieces, string? name = null)
    {
        Assert.Empty(Errors(pieces));
        var made = Of(pieces).Pattern.Pieces;
        return name is null ? made.First() : made.Single(piece => piece.Name == name);
    }

    private static Turnrow.Fabric.Patterns.Pattern Clean(string pieces)
    {
        Assert.Empty(Found(pieces).Select(d => $"{d.Kind.Name}: {d.Message}"));
        return Of(pieces).Pattern;
    }

    private static IEnumerable<Diagnostic> Clean(string pieces, string but)
    {
        var found = Found(pieces).ToList();
        Assert.All(found, d => Assert.Equal(but, d.Kind.Name));
        return found;
    }

    private static IEnumerable<string> Errors(string pieces) => Found(pieces).Where(d => d.Kind.Severity == Severity.Error).Select(d => d.Kind.Name);

    private static IEnumerable<string> Names(string pieces) => Found(pieces).Select(d => d.Kind.Name);

    private static IEnumerable<Diagnostic> Found(string pieces) => Of(pieces).Diagnostics;

    private static Compilation Of(string pieces) => Compilation.Of(new SourceText(
        "round.turnrow",
        $"notation 1\npattern \"Round\"\nterms US\nsizes S, M\ngauge dc: 16 stitches and 8 rows to 10 cm\nturn dc: ch 3 counts\n\n{pieces}"));
}
