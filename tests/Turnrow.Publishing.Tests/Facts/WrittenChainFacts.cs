using Turnrow.Publishing.Tests.Instructions;
using Xunit;

namespace Turnrow.Publishing.Tests.Facts;

/// <summary>Foundations and turning chains in the words that are printed.</summary>
public sealed class WrittenChainFacts
{
    private static string Row(string lines, int number) =>
        Written.Piece($"pattern \"P\"\npiece panel\n{lines}").Split('\n').Single(l => l.StartsWith($"Row {number} (", StringComparison.Ordinal));

    // Custom: "How to Crochet a Turning Chain", Dummies, and "Crochet: Turning Chain", thebestknittersguide.com, 2010/05; dtr by the same
    // rule, trtr and slip stitches: common practice, no source.
    [Theory]
    [InlineData("sl st", "Sl st in 2nd ch from hook")]
    [InlineData("sc", "Sc in 2nd ch from hook")]
    [InlineData("dc", "Dc in 4th ch from hook (skipped 3 ch count as 1 dc)")]
    [InlineData("tr", "Tr in 5th ch from hook (skipped 4 ch count as 1 tr)")]
    [InlineData("dtr", "Dtr in 6th ch from hook (skipped 5 ch count as 1 dtr)")]
    [InlineData("trtr", "Trtr in 7th ch from hook (skipped 6 ch count as 1 trtr)")]
    public void The_first_row_names_its_first_chain(string stitch, string expected) =>
        Assert.StartsWith($"Row 1 (RS): {expected}", Row($"begin with 20 stitches\nrow 1 RS: {stitch} across", 1), StringComparison.Ordinal);

    [Theory]
    // Published leaflet BRC0502-029618M: V in 6th chain, "skipped ch-5 counts as 1 dc and 2 skipped ch".
    [InlineData(173, "dc, skip 2, ((dc, ch 2, dc) in next, skip 3) 41 times, (dc, ch 2, dc) in next, skip 2, dc", "6th ch from hook (skipped 5 ch count as 1 dc and 2 skipped ch)")]
    // Published leaflet BRC0502-030110M: V in 6th chain.
    [InlineData(117, "dc, skip 2, ((dc, ch 1, dc) in next, skip 2) 36 times, (dc, ch 1, dc) in next, skip 2, dc", "6th ch from hook (skipped 5 ch count as 1 dc and 2 skipped ch)")]
    // Published leaflet BRC0502-028564M: V in 5th chain.
    [InlineData(103, "dc, skip 1, ((dc, ch 1, dc) in next, skip 2) 32 times, (dc, ch 1, dc) in next, skip 1, dc", "5th ch from hook (skipped 4 ch count as 1 dc and 1 skipped ch)")]
    public void Chains_skipped_by_the_pattern_are_counted_from_the_hook(int chains, string words, string expected) =>
        Assert.Contains(expected, Row($"chain {chains}\nrow 1 RS: {words}", 1), StringComparison.Ordinal);

    // "Crochet: Turning Chain", thebestknittersguide.com, 2010/05: counted, skip the stitch at its foot and work into its top at the end.
    [Fact]
    public void A_counted_chain_stands_on_the_first_stitch_and_is_worked_into_at_the_end() => Assert.Equal(
        "Row 3 (RS): As Row 2, ending in top of turning ch. [20 dc]|Row 2 (WS): Ch 3 (counts as 1 dc here and throughout), turn, skip first dc, dc in each dc across, dc in top of beginning ch. [20 dc]",
        Row("begin with 20 stitches\nrow 1 RS: dc across\nrow: dc across\nrow: dc across", 3) + "|" + Row("begin with 20 stitches\nrow 1 RS: dc across\nrow: dc across\nrow: dc across", 2));

    // The same page: not counted (sc), work into the stitch at its foot, and not into the chain on the way back.
    [Fact]
    public void A_chain_that_is_not_counted_is_never_worked_into() => Assert.Equal(
        "Row 2 (WS): Ch 1 (does not count as a st here and throughout), turn, sc in each sc across. [20 sc]",
        Row("begin with 20 stitches\nrow 1 RS: sc across\nrow: sc across", 2));

    // "Turning chains when working crochet in rows", mariescozycorner.blogspot.com, 2009/03: the last stitch goes into the 3rd of the 5.
    [Fact]
    public void The_last_stitch_goes_into_the_third_of_five_chains() => Assert.Contains(
        "dc in 3rd ch of turning ch-5", Row("begin with 7 stitches\nrow 1 RS: dc across\nrow: dc, (ch 2, skip 2, dc) across\nrow: dc in each st and sp", 3), StringComparison.Ordinal);

    // A count at the end of a row, in square brackets: one of the four ways of published leaflets; sizes in parentheses, in ascending order.
    [Fact]
    public void Counts_stand_at_the_end_and_sizes_in_parentheses() => Assert.Contains(
        "[30 (30, 32, 34, 36, 40) hdc]",
        Written.Piece("pattern \"P\"\nsizes XS, S, M, L, XL, 2XL\nturn hdc: ch 2 does not count\npiece panel\nchain 32 (32, 34, 36, 38, 42)\nrow 1 RS: hdc across"),
        StringComparison.Ordinal);
}
