using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Borders all round a piece read back, with their corners, wherever the round begins and whatever its chain counts as.</summary>
public sealed class BorderTests
{
    private const string Square = "notation 1\npattern \"Square\"\nterms US\nsizes S, M\nhook 4 mm\nturn sc: ch 1 does not count\nturn dc: ch 3 counts\n"
        + "piece front\n  begin with 20 (26) stitches\n  row 1 RS: sc across\n  straight 9 rows\n  fasten off\n";

    private static readonly string[] Edges = ["front right edge", "front last row", "front left edge", "front foundation"];

    public static TheoryData<string> Borders
    {
        get
        {
            var borders = new TheoryData<string>();
            foreach (var stitch in new[] { "sc", "dc" })
            {
                string[] rates =
                [
                    $"1 {stitch} in each row, 1 {stitch} in each st, 3 {stitch} in each corner", $"3 {stitch} per 2 rows, 1 {stitch} in each st, 5 {stitch} in each corner",
                    $"1 {stitch} in each row, 1 {stitch} in each st, 1 {stitch} in each corner", $"70 (84) {stitch} evenly, 3 {stitch} in each corner", $"80 (99) {stitch} evenly, 1 {stitch} in each corner",
                    $"20 (25) {stitch} evenly to each corner, 3 {stitch} in each corner", $"9 {stitch} evenly along front left edge, 27 (30) {stitch} evenly along front last row, 1 {stitch} in each row, 3 {stitch} in each corner",
                ];
                foreach (var rate in rates)
                {
                    for (var from = 0; from < 4; from++) borders.Add($"around {Walk(from)}: {rate}");
                    borders.Add($"along {Walk(0)}: {rate}");
                }
            }

            return borders;
        }
    }

    [Theory]
    [MemberData(nameof(Borders))]
    public void A_border_reads_back(string border)
    {
        var row = border.StartsWith("around", StringComparison.Ordinal) ? "round" : "row";
        var next = border.Contains(" 1 sc in each corner", StringComparison.Ordinal) || border.Contains(" 1 dc in each corner", StringComparison.Ordinal) ? "sc across" : "(sc to corner, 3 sc in corner) across, sc across";
        var pattern = Compilation.Of(new SourceText("square.turnrow", $"{Square}piece border picked up {border}\n  {row} 2: {next}\n")).Pattern;
        Assert.Equal(0, pattern.Errors);
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.US)));
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.UK)));
    }

    [Theory]
    [InlineData("row 2: dc, (ch 4, skip 4, dc) across", "1 sc in each st, 3 sc in each sp")]
    [InlineData("row 2: dc, (ch 4, skip 4, dc) across", "1 dc in each st, 3 dc in each ch-4 sp")]
    [InlineData("row 2: dc, (ch 1, skip 1, dc) across", "1 sc in each st, skip each sp")]
    [InlineData("row 2: dc, (ch 1, skip 1, dc) across", "1 dc in each st and sp")]
    [InlineData("row 2: sc, (ch 1, skip 1, dc, ch 3, skip 1, dc) across", "2 sc in each sc, 1 sc in each dc, skip each ch-1 sp, 3 sc in each sp")]
    [InlineData("row 2: dc, (ch 1, skip 1, dc, ch 3, skip 1, dc) across", "1 dc in each st, 1 dc in each ch-1 sp, 3 dc in each ch-3 sp")]
    [InlineData("row 2: dc, (ch 1, skip 1, dc) across", "17 sc evenly along front last row")]
    public void A_border_over_spaces_reads_back(string row, string rates)
    {
        foreach (var hand in new[] { "RS", "WS" })
        {
            var pattern = Compilation.Of(new SourceText("net.turnrow", "notation 1\npattern \"Net\"\nterms US\nhook 4 mm\nturn dc: ch 3 counts\nturn sc: ch 1 does not count\n"
                + $"piece front\n  begin with 21 stitches\n  row 1 RS: dc across\n  {row}\n  fasten off\n"
                + $"piece border picked up along front last row, {hand} facing: {rates}\n  row 2: sc across\n")).Pattern;
            Assert.Equal(0, pattern.Errors);
            Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.US)));
            Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.UK)));
        }
    }

    [Theory]
    [InlineData("dc")]
    [InlineData("sc")]
    public void Stitches_spread_up_to_a_marked_corner_read_back(string stitch)
    {
        var pattern = Compilation.Of(new SourceText("mitre.turnrow", "notation 1\npattern \"Mitre\"\nterms US\nhook 4 mm\nturn dc: ch 3 counts\nturn sc: ch 1 does not count\n"
            + "piece front\n  begin with 21 stitches\n  row 1 RS: sc 11, mark corner, sc across\n  row 2: sc to corner, 3 sc in corner, sc across\n  fasten off\n"
            + $"piece border picked up along front last row: 30 {stitch} evenly, 5 {stitch} in each corner = 30\n  row 2: sc to corner, 3 sc in corner, sc across\n")).Pattern;
        Assert.Equal(0, pattern.Errors);
        var page = WrittenInstructions.Write(pattern, Terms.US);
        Assert.Contains($"{(stitch == "dc" ? 11 : 12)} {stitch} evenly over first 11 sts", page, StringComparison.Ordinal);
        Assert.Empty(ReadBack.Differences(pattern, page));
    }

    private static string Walk(int from) => string.Join(" and ", Enumerable.Range(from, 4).Select(at => Edges[at % 4]));
}
