using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>A number of stitches shared out over a walk, and what goes into its corners.</summary>
public sealed class EvenPickUpTests
{
    private const string Gauges = "gauge dc: 20 stitches and 10 rows to 10 cm\ngauge sc: 20 stitches and 20 rows to 10 cm\nturn sc: ch 1 does not count\n";

    [Theory]
    [InlineData(40, "10 20 10")]
    [InlineData(41, "10 21 10")]
    [InlineData(42, "10 22 10")]
    [InlineData(43, "11 21 11")]
    [InlineData(80, "20 40 20")]
    public void Each_stretch_gets_its_share_by_length_and_both_sides_alike(int stitches, string shares)
    {
        // 5 rows are 5 cm, and 20 stitches are 10 cm.
        var start = Start($"piece front\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight 4 rows\n  fasten off\npiece band picked up along front right edge and front last row and front left edge: {stitches} sc evenly\n  straight 1 row\n");
        Assert.Equal(shares, string.Join(' ', start.Walk.Select(leg => leg.Rate)));
        Assert.Equal(stitches, start.Walk.Sum(leg => leg.Rate));
    }

    [Fact]
    public void Without_gauges_the_customary_number_is_the_measure() => Assert.Equal(
        ["20/10x10"],
        Start("piece front\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight 9 rows\n  fasten off\npiece band picked up along front right edge and front last row: 40 sc evenly\n  straight 1 row\n", "")
            .Walk.Where(leg => leg.Stretch.Kind == StretchKind.RowEnds).Select(leg => $"{leg.Rate}/{leg.Per}x{leg.Stretch.Count}"));

    [Fact]
    public void What_would_not_lie_flat_is_told_and_can_be_accepted()
    {
        const string text = "piece front\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight 9 rows\n  fasten off\npiece frill picked up along front foundation: 30 sc evenly\n  straight 1 row\n";
        Assert.Contains(Compile(Head(Gauges) + text).Diagnostics, d => d.Kind == PickUpFlat.Kind && d.Help!.Contains("about 20", StringComparison.Ordinal));
        Assert.DoesNotContain(Compile(Head(Gauges) + text + "accept pick-up-flat of frill: \"it is a frill\"\n").Diagnostics, d => d.Kind == PickUpFlat.Kind);
    }

    [Fact]
    public void Corners_stand_where_a_row_turns_to_row_ends()
    {
        var compilation = Compile(Head(Gauges) + "piece front\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight 9 rows\n  fasten off\n"
            + "piece band picked up along front right edge and front last row and front left edge and front foundation: 2 sc in each row, 1 sc in each st, 3 sc in each corner = 86\n"
            + "  row 2: (sc to corner, 3 sc in corner) 3 times, sc across = 92\n");
        Assert.DoesNotContain(compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        var tops = compilation.Pattern.Pieces.ElementAt(1).InSizes[0].Rows[0].Work!.Tops;
        Assert.Equal([21, 42, 65], Enumerable.Range(0, tops.Count).Where(i => tops.Slice(i, 1).First.IsCorner));
    }

    [Fact]
    public void A_marked_place_of_the_last_row_is_a_corner_too()
    {
        var compilation = Compile(Head(Gauges) + "piece front\n  begin with 9 stitches\n  row 1 RS: dc 5, mark corner, dc across\n  row 2: dc to corner, 3 dc in corner, dc across\n  fasten off\n"
            + "piece band picked up along front last row: 1 sc in each st, 5 sc in each corner = 15\n  row 2: sc to corner, 3 sc in corner, sc across = 17\n");
        Assert.DoesNotContain(compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
    }

    [Fact]
    public void A_mirrored_band_has_its_corners_and_its_rounds_on_the_other_hand()
    {
        var compilation = Compile(Head(Gauges) + "piece right\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight 12 rows\n  fasten off\npiece left is right mirrored\n"
            + "piece band picked up along right right edge and right last row: 2 sc in each row, 1 sc in each st, 3 sc in each corner\n  row 2: sc to corner, 3 sc in corner, sc across\npiece other is band mirrored\n"
            + "piece edging picked up along right foundation: 23 sc evenly\n  straight 1 row\npiece second is edging mirrored\n");
        Assert.DoesNotContain(compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        var pieces = compilation.Pattern.Pieces.ToDictionary(p => p.Name, p => p.InSizes[0]);
        Assert.Equal([27], Corners(pieces["band"]));
        Assert.Equal([20], Corners(pieces["other"]));
        Assert.Equal(23, pieces["second"].Rows[0].Work!.Stitches);
    }

    private static IEnumerable<int> Corners(Piece piece) =>
        Enumerable.Range(0, piece.Rows[0].Work!.Tops.Count).Where(i => piece.Rows[0].Work!.Tops.Slice(i, 1).First.IsCorner);

    private static PickUpStart Start(string text, string gauges = Gauges)
    {
        var compilation = Compile(Head(gauges) + text);
        Assert.DoesNotContain(compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        return Assert.IsType<PickUpStart>(compilation.Pattern.Pieces.Last().InSizes[0].Start);
    }

    private static Compilation Compile(string text) => Compilation.Of(new SourceText("band", text));

    private static string Head(string gauges) => "notation 1\npattern \"Band\"\nterms US\nhook 4 mm\n" + gauges;
}
