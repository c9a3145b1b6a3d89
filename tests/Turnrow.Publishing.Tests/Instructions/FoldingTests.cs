using Turnrow.Publishing.Instructions.Folding;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Rows worked alike are written once; a fold says what each row adds and where it ends.</summary>
public class FoldingTests
{
    [Theory]
    [InlineData("A", "A")]
    [InlineData("AAAA", "A")]
    [InlineData("ABABA", "AB*2+1")]
    [InlineData("ABBBABBBC", "AB*2 C")]
    [InlineData("PPPSPPPSPPPPP", "PS*2 P")]
    [InlineData("PPSPPPPSPPPPS", "P SP*2+1")]
    [InlineData("ABCABC", "ABC*2")]
    public void Runs_of_rows_fold_into_rounds(string rows, string expected)
    {
        var runs = LikeRun.Of([.. rows.Select(c => (int)c)]);
        var folds = Fold.Of(runs).Select(f =>
            string.Concat(Enumerable.Range(f.Start, f.Period).Select(i => (char)runs[i].Kind))
            + (f.Times > 1 ? $"*{f.Times}" : "") + (f.Rest > 0 ? $"+{f.Rest}" : ""));
        Assert.Equal(expected, string.Join(' ', folds));
    }

    [Fact]
    public void Increases_at_one_edge_repeat_the_last_two_rows()
    {
        var panel = Panel("begin with 10 stitches\nleft edge is neck\nrow 1 RS: sc across\nshape 7 rows: inc 1 at neck every row");
        Assert.Contains("Rows 4-8: Repeat the last 2 rows 2 more times, then Row 2 once more; 1 sc more each row. [17 sc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Intervals_that_differ_by_size_share_a_text()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M, L\npiece panel\nbegin with 20 (24, 30) stitches\nrow 1 RS: sc across\nshape 24 rows evenly to 8 (16, 20), at both edges");
        Assert.Equal(
            """
            Ch 21 (25, 31).
            Row 1 (RS): Sc in 2nd ch from hook (skipped ch does not count as a st), sc in each ch across. [20 (24, 30) sc]
            Row 2 (WS): Ch 1 (does not count as a st here and throughout), turn, sc in each sc across. [20 (24, 30) sc]
            Rows 3-4 (3-6, 3-4): Repeat Row 2. [20 (24, 30) sc in each row]
            Row 5 (7, 5) (RS): Ch 1, turn, sc2tog over first 2 sc (decrease), sc in each sc to last 2 sts, sc2tog over last 2 sc (decrease). [18 (22, 28) sc]
            Rows 6-8 (8-12, 6-9): Repeat Row 2. [18 (22, 28) sc in each row]
            Rows 9-25 (13-25, 10-25): Repeat the last 4 (6, 5) rows 4 (2, 3) more times, then the first of them once more; 2 sc fewer every 4 (6, 5) rows. [8 (16, 20) sc]
            Fasten off.
            """.ReplaceLineEndings("\n"),
            panel);
    }

    [Fact]
    public void Two_lines_that_repeat_the_same_row_are_one_repeat()
    {
        var panel = Panel("begin with 10 stitches\nrow 1 RS: sc across\nrow: sc across\nstraight 2 rows\nrows 5 to 8: sc across");
        Assert.Contains("Rows 3-8: Repeat Row 2. [10 sc in each row]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_repeat_names_the_last_rows_or_earlier_ones_in_order()
    {
        var panel = Panel("begin with 10 stitches\nrow 1 RS: sc across\nrow: hdc across\nrow: sc across\nrow: hdc across\nrepeat rows 3 to 4, 3 more times\nrow: sc across\nrow: sc across\nrepeat rows 2 to 3, 2 more times");
        Assert.Contains("Rows 5-10: Repeat the last 2 rows 3 more times. [10 hdc]", panel, StringComparison.Ordinal);
        Assert.Contains("Rows 13-16: Repeat Rows 2-3 in order, 2 times. [10 sc]", panel, StringComparison.Ordinal);
    }

    private static string Panel(string lines) => Written.Piece($"pattern \"P\"\nturn hdc: ch 2 does not count\npiece panel\n{lines}");
}
