using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Tests.Instructions;
using Xunit;

namespace Turnrow.Publishing.Tests.Facts;

/// <summary>The words that are printed, in US and in UK terms.</summary>
public sealed class WrittenTermsFacts
{
    private const string Panel = """
        pattern "P"
        gauge sc: 14 stitches and 16 rows to 10 cm
        piece panel
          begin with 18 stitches
          row 1 RS: sc across
          row: sl st 1, sc 2, hdc 2, dc 2, tr 2, dtr 2, trtr 1, sc2tog, dc2tog, skip 1, sc across
          row: FPdc 2, BPdc 2, sc across
        """;

    // Sources: "Crochet hook, yarn and stitch conversions" and "Crochet Terms Translation Chart" (two conversion sheets); tog and FP: pages
    // of two UK books, "Modern Granny Square Crochet" p. 9 and "Shawls & Wraps" p. 9; BP by the same rule. From memory of the Craft Yarn
    // Council's table: gauge = tension, skip = miss, trtr = qtr. yo = yoh: a list of Spotlight. ch, sl st, RS, WS, st, fasten off: common practice.
    [Theory]
    [InlineData("Ch 19", "Ch 19")]
    [InlineData("sl st in first", "sl st in first")]
    [InlineData("sc in each of next 2", "dc in each of next 2")]
    [InlineData("hdc in each of next 2", "htr in each of next 2")]
    [InlineData("dc in each of next 2", "tr in each of next 2")]
    [InlineData("tr in each of next 2", "dtr in each of next 2")]
    [InlineData("dtr in each of next 2", "trtr in each of next 2")]
    [InlineData("trtr in next", "qtr in next")]
    [InlineData("sc2tog over", "dc2tog over")]
    [InlineData("dc2tog over", "tr2tog over")]
    [InlineData("FPdc around", "FPtr around")]
    [InlineData("BPdc around", "BPtr around")]
    [InlineData("skip next", "miss next")]
    [InlineData("## Gauge", "## Tension")]
    [InlineData("yarn over and draw", "yarn over hook and draw")]
    [InlineData("Row 1 (RS)", "Row 1 (RS)")]
    [InlineData("Row 2 (WS)", "Row 2 (WS)")]
    [InlineData("Fasten off", "Fasten off")]
    public void Each_word_is_the_one_of_its_terms(string us, string uk)
    {
        Assert.Contains(us, Plain(Terms.US), StringComparison.OrdinalIgnoreCase);
        Assert.Contains(uk, Plain(Terms.UK), StringComparison.OrdinalIgnoreCase);
    }

    // Abbreviations and what they mean: from memory of the Craft Yarn Council's list; the names of the stitches: the two conversion sheets.
    [Theory]
    [InlineData("ch", "chain", "chain")]
    [InlineData("sl st", "slip stitch", "slip stitch")]
    [InlineData("sc", "single crochet", null)]
    [InlineData("hdc", "half double crochet", null)]
    [InlineData("dc", "double crochet", "double crochet")]
    [InlineData("tr", "treble crochet", "treble")]
    [InlineData("dtr", "double treble crochet", "double treble")]
    [InlineData("trtr", "triple treble crochet", "triple treble")]
    [InlineData("RS", "right side", "right side")]
    [InlineData("WS", "wrong side", "wrong side")]
    [InlineData("st(s)", "stitch(es)", "stitch(es)")]
    [InlineData("htr", null, "half treble")]
    [InlineData("qtr", null, "quadruple treble")]
    public void An_abbreviation_is_explained_by_its_name(string abbreviation, string? us, string? uk)
    {
        Explains(Written.Of(Panel), abbreviation, us);
        Explains(Written.Of(Panel, Terms.UK), abbreviation, uk);
    }

    private static void Explains(string text, string abbreviation, string? name)
    {
        var line = text.Split('\n').SingleOrDefault(l => l.StartsWith($"- **{abbreviation}:**", StringComparison.Ordinal));
        Assert.Equal(name is null ? null : $"- **{abbreviation}:** {name}", line);
    }

    private static string Plain(Terms terms) => Written.Of(Panel, terms).Replace("*", string.Empty, StringComparison.Ordinal);
}
