using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Borders picked up all round a piece and closed to a round: the closing place is a corner as the three others are.</summary>
public sealed class BorderTests
{
    private const string Square = "notation 1\npattern \"Square\"\nterms US\nhook 4 mm\ngauge sc: 20 stitches and 20 rows to 10 cm\nturn sc: ch 1 does not count\nturn dc: ch 3 counts\n"
        + "piece front\n  begin with 20 stitches\n  row 1 RS: sc across\n  straight 9 rows\n  fasten off\n";

    private const string FromRight = "front right edge and front last row and front left edge and front foundation";
    private const string FromTop = "front last row and front left edge and front foundation and front right edge";
    private const string FromLeft = "front left edge and front foundation and front right edge and front last row";
    private const string FromFoot = "front foundation and front right edge and front last row and front left edge";
    private const string Rates = "1 sc in each row, 1 sc in each st, 3 sc in each corner";

    // 18 stitches between the corners of a long side and 10 row-ends of a short one, and 3 in each corner.
    [Theory]
    [InlineData(FromRight, "12 33 46 67")]
    [InlineData(FromTop, "2 23 36 57")]
    [InlineData(FromLeft, "12 33 46 67")]
    [InlineData(FromFoot, "2 23 36 57")]
    public void A_round_has_four_corners_wherever_it_begins(string walk, string corners)
    {
        var border = Border($"piece border picked up around {walk}: {Rates} = 68\n  round 2: (sc to corner, 3 sc in corner) 4 times, sc across = 76\n  round 3: (sc to corner, 3 sc in corner) around, sc across = 84\n");
        Assert.Equal(corners, Corners(border));
    }

    // Both corners at the end of such a strip are its one stitch, and 3 go into it once.
    [Fact]
    public void A_strip_of_one_stitch_has_a_corner_at_each_end()
    {
        const string Strip = "terms US\ngauge sc: 20 stitches and 20 rows to 10 cm\nturn sc: ch 1 does not count\npiece front\n  begin with 1 stitches\n  row 1 RS: sc across\n  straight 9 rows\n  fasten off\n";
        var around = Compiled.Whole(Strip + $"piece border picked up around {FromTop}: {Rates} = 26\n  round 2: (sc to corner, 3 sc in corner) around, sc across = 30\n").Clean();
        Assert.Equal("2 15", string.Join(' ', Enumerable.Range(1, 26).Where(at => around.Row(1, "border").Work!.Tops.Slice(at - 1, 1).HasCorners)));
        var along = Compiled.Whole(Strip + $"piece border picked up along front right edge and front last row: {Rates} = 13\n  row 2: sc to corner, 3 sc in corner, sc across = 15\n").Clean();
        Assert.Equal([13, 15], along.Counts("border"));
    }

    [Fact]
    public void With_the_wrong_side_facing_too() => Assert.Equal(
        "2 23 36 57",
        Corners(Border($"piece border picked up around front last row and front right edge and front foundation and front left edge, WS facing: {Rates} = 68\n  round 2: (sc to corner, 3 sc in corner) around, sc across = 76\n")));

    [Fact]
    public void A_mirrored_round_has_its_corners_at_the_same_places() => Assert.Equal(
        "2 23 36 57",
        Corners(Border($"piece border picked up around {FromRight}: {Rates} = 68\n  round 2: (sc to corner, 3 sc in corner) around, sc across = 76\npiece other is border mirrored\n")));

    [Fact]
    public void One_stitch_in_a_corner_is_the_corner() => Assert.Equal(
        "1 20 31 50",
        Corners(Border($"piece border picked up around {FromFoot}: 1 dc in each row, 1 dc in each st, 1 dc in each corner = 60\n  round 2: 3 sc in corner, (sc to corner, 3 sc in corner) around, sc across = 68\n")));

    [Fact]
    public void Rows_that_are_picked_up_all_round_have_two_ends_and_no_corner_there() => Assert.Equal(
        "12 33 46", Corners(Border($"piece border picked up along {FromRight}: {Rates} = 66\n  row 2: (sc to corner, 3 sc in corner) across, sc across = 72\n")));

    [Fact]
    public void A_walk_that_ends_within_an_edge_has_no_corner_there() => Assert.Equal(
        "7 28 41 62",
        Corners(Border($"piece border picked up around front right edge, all but first 5 rows and {FromTop[..^21]} and front right edge, first 5 rows: {Rates} = 68\n  round 2: (sc to corner, 3 sc in corner) around, sc across = 76\n")));

    // 84 less 4 × 3 are 72, by the lengths of 10 rows and 18 stitches twice.
    [Theory]
    [InlineData(FromRight, "84 sc evenly, 3 sc in each corner")]
    [InlineData(FromFoot, "3 sc in each corner, 84 sc evenly")]
    public void A_number_in_all_has_the_corners_in_it(string walk, string rates)
    {
        var border = Border($"piece border picked up around {walk}: {rates} = 84\n  round 2: (sc to corner, 3 sc in corner) around, sc across = 92\n");
        var walked = Assert.IsType<PickUpStart>(border.Start).Walk;
        Assert.Equal(72, walked.Where(l => !l.IsCorner).Sum(l => l.Rate));
        Assert.Equal([13, 13, 23, 23], walked.Where(l => !l.IsCorner).Select(l => l.Rate).Order());
        Assert.Equal(4, Corners(border).Split(' ').Length);
    }

    [Fact]
    public void What_turns_a_corner_is_no_length() =>
        Assert.Contains(Compile($"piece border picked up around {FromRight}: 84 sc evenly, 3 sc in each corner\n  straight 1 round\n").Diagnostics, d => d.Kind == PickUpFlat.Kind && d.Help!.Contains("about 68", StringComparison.Ordinal));

    [Fact]
    public void Corners_that_take_all_are_told_with_the_arithmetic() => Assert.Contains(
        Compile($"piece border picked up around {FromRight}: 12 sc evenly, 3 sc in each corner\n  straight 1 round\n").Diagnostics,
        d => d.Kind == PickUpCorner.Kind && d.Message == "4 corners take 4 × 3 = 12 sc, and of 12 in all none is left for the edges");

    [Theory]
    [InlineData("68 sc evenly, 2 sc in each corner", "have no middle one")]
    [InlineData("68 sc evenly, 1 sc in each st", "can't both be said")]
    public void What_does_not_go_together_is_told(string rates, string message) =>
        Assert.Contains(Compile($"piece border picked up around {FromRight}: {rates}\n  straight 1 round\n").Diagnostics, d => d.Message.Contains(message, StringComparison.Ordinal));

    [Fact]
    public void Stitches_that_stop_short_of_each_corner_go_on_as_long_as_there_is_one() => Assert.Equal(
        60,
        Border($"piece border picked up around {FromRight}: {Rates} = 68\n  round 2: (sc until 1 remains before corner, sc3tog) around, sc across = 60\n").Rows[1].Work!.Stitches);

    [Fact]
    public void A_message_quotes_around_as_it_stands() => Assert.Contains(
        Compile("piece tube\n  begin with 20 stitches\n  round 1: sc across\n  round 2: (sc to corner, 3 sc in corner) around, sc across\n").Diagnostics,
        d => d.Kind == CornerMissing.Kind && d.Message.Contains("(sc to corner, 3 sc in corner) around`", StringComparison.Ordinal));

    private static string Corners(Piece piece) => string.Join(
        ' ', Enumerable.Range(1, piece.Rows[0].Work!.Tops.Count).Where(n => piece.Rows[0].Work!.Tops.Slice(n - 1, 1).First.IsCorner));

    private static Piece Border(string text)
    {
        var compilation = Compile(text);
        Assert.Empty(compilation.Diagnostics.Where(d => d.Kind.Severity == Severity.Error).Select(d => d.Message));
        return compilation.Pattern.Pieces.Last().InSizes[0];
    }

    private static Compilation Compile(string text) => Compilation.Of(new SourceText("square", Square + text));
}
