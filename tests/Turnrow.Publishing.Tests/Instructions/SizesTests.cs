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
        Assert.Contains("Sizes M (L) only: Rows 3 (3-5): Repeat Row 2. [10 sc in each row]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 2 (4, 6) (WS): ", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_that_leave_nothing_are_told_by_themselves()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M, L\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nleave 2 (0, 3) at right edge\nstraight 1 row");
        Assert.Contains("Sizes S (L) only: Row 2 (WS): Ch 1 (does not count as a st here and throughout), turn, sc in each sc to last 2 (3) sts, leave these unworked. [8 (7) sc]", panel, StringComparison.Ordinal);
        Assert.Contains("Size M only: Row 2 (WS): Ch 1, turn, sc in each sc across. [10 sc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_sides_differ_by_size_each_is_said()
    {
        var panel = Written.Piece("pattern \"P\"\nsizes S, M\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nstraight 2 (3) rows\nrow: hdc across");
        Assert.Contains("Row 4 (5) (WS (RS)): ", panel, StringComparison.Ordinal);
    }
}
