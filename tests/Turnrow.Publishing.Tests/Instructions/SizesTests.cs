using Turnrow.Publishing.Trade;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Sizes side by side: numbers where only numbers differ, "sizes … only" where rows do.</summary>
public class SizesTests
{
    [Theory]
    [InlineData(new[] { 5 }, "5", "5th")]
    [InlineData(new[] { 5, 5, 5 }, "5", "5th")]
    [InlineData(new[] { 5, 6, 7 }, "5 (6, 7)", "5th (6th, 7th)")]
    [InlineData(new[] { 1, 2, 3, 11, 12, 13, 21, 22, 111 }, "1 (2, 3, 11, 12, 13, 21, 22, 111)", "1st (2nd, 3rd, 11th, 12th, 13th, 21st, 22nd, 111th)")]
    public void Numbers_in_sizes_are_written_as_the_trade_does(int[] values, string plain, string nth)
    {
        Assert.Equal(plain, Sized.Over(values).Written());
        Assert.Equal(nth, Sized.Over(values).WrittenNth());
    }

    [Fact]
    public void A_row_that_some_sizes_never_reach_is_for_the_others_only()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M, L\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nstraight 0 (2, 4) rows\nrow: hdc across");
        Assert.Contains("Sizes M (L) only: Row 2 (WS):", panel, StringComparison.Ordinal);
        Assert.Contains("Sizes M (L) only: Row(s) 3 (3-5): Repeat Row 2. [10 sc in each row]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 2 (4, 6) (WS): ", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_that_leave_nothing_are_told_by_themselves()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M, L\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nleave 2 (0, 3) at right edge\nstraight 1 row");
        Assert.Contains("Sizes S (L) only: Row 2 (WS): Ch 1 (does not count as a st), turn, sc in each sc to last 2 (3) sts, leave these unworked. [8 (7) sc]", panel, StringComparison.Ordinal);
        Assert.Contains("Size M only: Row 2 (WS): Ch 1 (does not count as a st), turn, sc in each sc across. [10 sc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_sides_differ_by_size_each_is_said()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nstraight 2 (3) rows\nrow: hdc across");
        Assert.Contains("Row 4 (5): WS faces in size S, RS in size M. ", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_group_of_sizes_is_told_from_where_it_parts_to_where_it_joins_the_others()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M, L\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nfor S to M: row: sc 2, hdc across\nfor L: row: dc across\nfor S to M: row: hdc 3, sc across\nfor L: row: hdc 3, sc across\nrow: hdc across");
        Assert.Equal(
            ["Sizes S (M) only: Row 2 (WS)", "Sizes S (M) only: Row 3 (RS)", "Size L only: Row 2 (WS)", "Size L only: Row 3 (RS)", "Row 4 (WS)"],
            panel.Split('\n').Where(static line => line.Contains("Row ", StringComparison.Ordinal) && !line.StartsWith("Row 1 ", StringComparison.Ordinal)).Select(static line => line[..(line.IndexOf(')', line.IndexOf("Row ", StringComparison.Ordinal)) + 1)]));
    }

    [Fact]
    public void What_all_sizes_do_before_rows_that_differ_is_told_once()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M\nturn sc: ch 1 does not count\nturn hdc: ch 2 counts\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nadd 4 at right edge\nleave 2 (0) at left edge\nstraight 1 row");
        Assert.Contains("\nLeave the yarn", panel, StringComparison.Ordinal);
        Assert.Contains("Size M only: Row 2", panel, StringComparison.Ordinal);
        Assert.DoesNotContain("only: Leave the yarn", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_some_sizes_read_explains_nothing_to_the_others()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nleave 2 (0) at right edge\nstraight 1 row\nrow: sc 2, sc across");
        Assert.Contains("Row 3 (RS): Ch 1 (does not count as a st here and throughout), turn,", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sc 2, sc 5, ch 1, skip 1, sc across", "sc in each of first 7 sc, ch 1")]
    [InlineData("sc 2, back-loop sc 5, sc across", "sc in each of first 2 sc, sc in back loop only of each of next 5 sc")]
    [InlineData("sc inc, sc 3, sc 2, sc across", "2 sc in first sc, sc in each of next 5 sc")]
    public void The_same_stitch_goes_on_in_one_number(string row, string written) => Assert.Contains(
        written, Written.Piece($"pattern \"P\"\nturn sc: ch 1 does not count\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nrow 2: {row}"), StringComparison.Ordinal);

    [Theory]
    [InlineData(20, "20 sc evenly over these 20 ch (1 in each)")]
    [InlineData(21, "21 sc evenly over these 20 ch (1 in each, and 1 more in 1 of them)")]
    [InlineData(19, "19 sc evenly over these 20 ch (1 in each, but none in 1 of them)")]
    [InlineData(30, "30 sc evenly over these 20 ch (3 in every 2)")]
    public void How_often_stitches_go_along_an_edge_is_said_as_exactly_as_it_can_be(int stitches, string written) => Assert.Contains(
        written,
        Written.Of($"pattern \"P\"\nturn sc: ch 1 does not count\npiece panel\nbegin with 20 stitches\nrow 1 RS: sc across\npiece band picked up along panel foundation: {stitches} sc evenly\nstraight 1 row"),
        StringComparison.Ordinal);

    [Fact]
    public void A_size_that_does_not_come_round_again_reads_of_no_0_times()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M\npiece panel\nbegin with 40 stitches\nrow 1 RS: sc across\nshape 3 (7) rows: dec 1 at right edge every 2 rows");
        Assert.Contains("Size S only: Row 4", panel, StringComparison.Ordinal);
        Assert.DoesNotContain("0 (", panel.Replace("40 (", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_seam_along_rounds_speaks_of_the_last_round()
    {
        const string Tube = "\nbegin with 20 stitches\nround 1: sc across\nstraight 3 rounds\nfasten off\n";
        Assert.Contains("Last round of Cuff to last round of Sleeve", Written.Of($"pattern \"P\"\npiece cuff{Tube}piece sleeve{Tube}seam cuff last row with sleeve last row"), StringComparison.Ordinal);
    }
}
