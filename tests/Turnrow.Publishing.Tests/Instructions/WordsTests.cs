using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Words of a row, by the places that they meet.</summary>
public class WordsTests
{
    [Theory]
    [InlineData("sc 3, (sc 2, sc inc) 2 times, sc across", "sc in each of first 3 sc, [sc in each of next 2 sc, 2 sc in next sc] 2 times, sc in each sc across.")]
    [InlineData("(sc 4, sc dec) across", "[sc in each of next 4 sc, sc2tog over next 2 sc] 3 times.")]
    [InlineData("(sc, ch 3, skip 2) across", "[sc in next sc, ch 3, skip next 2 sc] 6 times.")]
    [InlineData("back-loop sc 10, front-post dc 2, sc across", "sc in back loop only of each of first 10 sc, FPdc around each of next 2 sc, sc in each sc across.")]
    [InlineData("sc 5, 3 sc in next, sc in same, leave the rest", "sc in each of first 5 sc, 3 sc in next sc, sc in same sc, leave the last 12 sts unworked.")]
    [InlineData("sc until 3 remain, sc3tog", "sc in each sc to last 3 sts, sc3tog over last 3 sc.")]
    [InlineData("sl st 18", "sl st in each of first 18 sc.")]
    public void Each_word_is_told_in_the_trades_way(string words, string expected)
    {
        var panel = Written.Piece($"pattern \"P\"\npiece panel\nbegin with 18 stitches\nrow 1 RS: sc across\nrow: {words}");
        var row = panel.Split('\n').Single(l => l.StartsWith("Row 2 (WS):", StringComparison.Ordinal));
        Assert.Contains("urn, " + expected, row.Replace("Turn", "turn", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_in_a_space_and_stitches_to_it()
    {
        var panel = Written.Piece("""
            pattern "P"
            piece panel
              begin with 9 stitches
              row 1 RS: dc across
              row: dc 2, skip 2, (2 dc, ch 2, 2 dc) in next, skip 2, dc 2
              row: dc in first, dc 1, (2 dc, ch 2, 2 dc) in next ch-2 sp, skip 2, dc 2
            """);
        Assert.Contains("skip next 2 dc, (2 dc, ch 2, 2 dc) in next dc, skip next 2 dc, dc in next dc, dc in top of beginning ch. [8 dc, 1 ch-2 sp]", panel, StringComparison.Ordinal);
        Assert.Contains("(2 dc, ch 2, 2 dc) in next ch-2 sp, skip next 2 dc, dc in next dc, dc in top of turning ch.", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3 dc in first, dc in each st and sp until 1 remains, 3 dc in last", "2 dc in first dc, dc in each st and sp across, 3 dc in top of turning ch. [13 dc]")]
    [InlineData("dc in each st and sp until 2 remain, dc, 3 dc in last", "skip first dc, dc in each st and sp to last 2 sts, dc in next dc, 3 dc in top of turning ch. [11 dc]")]
    [InlineData("dc, 2 dc in each sp, dc 2", "skip first dc, 2 dc in each ch-1 sp across, dc in next dc, dc in top of turning ch. [9 dc]")]
    [InlineData("dc, 2 dc in each sp until 3 remain, dc, dc in next sp, dc 2", "skip first dc, 2 dc in each of next 2 ch-1 sps, dc in next dc, dc in next ch-1 sp, dc in next dc, dc in top of turning ch. [9 dc]")]
    public void A_row_over_spaces_may_stop_before_its_end(string words, string expected)
    {
        var panel = Written.Piece($"pattern \"P\"\npiece panel\nbegin with 9 stitches\nrow 1 RS: dc across\nrow: dc 1, dc, skip 1, ch 1, (dc, ch 1, skip 1) 2 times, dc 2\nrow: {words}");
        Assert.Contains(expected, panel, StringComparison.Ordinal);
    }

    [Fact]
    public void UK_terms_are_one_substitution_at_once()
    {
        const string Pattern = "pattern \"P\"\nterms US\ngauge dc: 14 stitches and 8 rows to 10 cm\npiece panel\nbegin with 18 stitches\nrow 1 RS: sc across\nrow: sc 2, hdc 2, dc 2, tr 2, dc2tog, skip 1, sc across";
        var text = Written.Of(Pattern, Terms.UK);
        Assert.Contains("turn, dc in each of first 2 dc, htr in each of next 2 dc, tr in each of next 2 dc, dtr in each of next 2 dc, tr2tog over next 2 dc, miss next dc, dc in each dc across.", text, StringComparison.Ordinal);
        Assert.Contains("## Tension", text, StringComparison.Ordinal);
        Assert.Contains("- 14 sts and 8 rows of tr measure 10 cm (4 in)", text, StringComparison.Ordinal);
        Assert.Contains("yarn over hook", text, StringComparison.Ordinal);
        Assert.DoesNotContain("skip", text, StringComparison.Ordinal);
        Assert.DoesNotContain("sc", text.Replace("Esc", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
