using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Picking up along edges, and holes along a band.</summary>
public sealed class RowEndFacts
{
    private static string PickedUp(string rows, string along) => Printed.Piece(
        "turn hdc: ch 2 counts", $"begin with 20 stitches\nrow 1: {rows} across\nstraight 19 rows\npiece band picked up along back {along}").Clean().Last("band");

    // Sources: "Picot edging", a crochet blog, Sept 2009: 1 a row of sc, 2 of dc, 3 of tr. hdc 3 in 2 rows: common practice, no source.
    [Theory]
    [InlineData("sc", "20")]
    [InlineData("hdc", "30")]
    [InlineData("dc", "40")]
    [InlineData("tr", "60")]
    public void Custom_picks_up_so_many_along_twenty_rows(string rows, string picked) => Assert.Equal(picked, PickedUp(rows, "right edge: sc"));

    // "Picot edging", the same blog: along a knitted side edge 1 in 2 rows; said as a rate, since rows here are crocheted.
    [Fact]
    public void One_in_two_rows_is_said_as_a_rate() => Assert.Equal("10", PickedUp("sc", "right edge: 1 sc per 2 rows"));

    // serendipity.gpvm.com/modify.html: against back-loop ribbing 2 dc rows take 5 sc, where the custom gives 4: the pattern's rate is followed.
    [Fact]
    public void Five_in_two_rows_of_dc_is_followed() => Assert.Equal("50", PickedUp("dc", "right edge: 5 sc per 2 rows"));

    // One in each stitch or chain: common practice, no source.
    [Theory]
    [InlineData("last row: 1 sc in each st")]
    [InlineData("foundation: 1 sc in each st")]
    public void Along_a_row_and_a_foundation_it_is_one_in_each(string along) => Assert.Equal("20", PickedUp("dc", along));

    [Theory]
    // knittingrobin.blogspot.com, Sept 2012: 100 stitches, 3 at each end, 7 holes of 4: 94 - 28 = 66, 11 between.
    [InlineData(100, "sc 3, (ch 4, skip 4, sc 11) 6 times, ch 4, skip 4, sc 3", "= 72 sc, 7 sp")]
    // The same page: 110 stitches, 7 holes of 3: 104 - 21 = 83, five spaces of 14 and one of 13.
    [InlineData(110, "sc 3, (ch 3, skip 3, sc 14) 5 times, ch 3, skip 3, sc 13, ch 3, skip 3, sc 3", "= 89 sc, 7 sp")]
    // A question on a knitting forum, knittinghelp.com: 123 stitches, 7 holes. Arithmetic: 123 - 6 - 7 = 110, 18 between and 2 over.
    [InlineData(123, "sc 3, (ch 1, skip 1, sc 18) 4 times, (ch 1, skip 1, sc 19) 2 times, ch 1, skip 1, sc 3", "= 116 sc, 7 sp")]
    public void Buttonholes_fill_their_band(int stitches, string words, string claim) =>
        Printed.Piece("", $"begin with {stitches} stitches\nrow 1: sc across\nrow 2: {words} {claim}").Clean();

    // serendipity.gpvm.com/modify.html: 56 rows, the first hole in the 4th row from each end: 48 between. 5 holes are 12 rows apart; 6 are
    // 10 apart, and the last two 8.
    [Theory]
    [InlineData("rows 6 to 15: sc across\nrow 16: HOLE\nrepeat rows 5 to 16, 3 more times\nrow 53: OVER", "4, 16, 28, 40, 52")]
    [InlineData(
        "rows 6 to 13: sc across\nrow 14: HOLE\nrepeat rows 5 to 14, 3 more times\nrow 45: OVER\nrows 46 to 51: sc across\nrow 52: HOLE\nrow 53: OVER",
        "4, 14, 24, 34, 44, 52")]
    public void Buttonholes_lie_so_many_rows_apart(string lines, string holes)
    {
        var text = $"begin with 10 stitches\nrow 1: sc across\nrows 2 to 3: sc across\nrow 4: HOLE\nrow 5: OVER\n{lines}\nrows 54 to 56: sc across"
            .Replace("HOLE", "sc 4, ch 2, skip 2, sc 4 = 8 sc, 1 sp", StringComparison.Ordinal)
            .Replace("OVER", "sc 4, 2 sc in next sp, sc 4 = 10", StringComparison.Ordinal);
        var band = Printed.Piece("", text).Clean().Piece("back", 0);
        Assert.Equal(56, band.Rows.Count);
        Assert.Equal(holes, string.Join(", ", band.Rows.Where(r => r.Work!.Spaces > 0).Select(r => r.Number)));
    }
}
