using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>sc to turn</c>, <c>sc until 1 remains before turn</c>: up to the gap where the row below turned.</summary>
public sealed class ToTurnTests
{
    private static Compiled Of(string lines) => Compiled.Of($"piece back\nbegin with 20 stitches\nrow 1 RS: sc across\n{lines}\n");

    [Fact]
    public void A_heel_is_turned_by_decreases_across_the_gap()
    {
        var heel = Of("""
            row 2: sc 11, dec, sc, leave the rest for later = 13
            row 3: sc 4, dec, sc, leave the rest for later = 6
            rows 4 to 9: sc until 1 remains before turn, dec, sc, leave the rest for later = 12
            """).Clean();
        Assert.Equal([20, 13, 6, 7, 8, 9, 10, 11, 12], heel.Counts());
        Assert.Equal([6, 6, 4, 4, 2, 2, 0, 0], heel.Piece("back", 0).Rows.Skip(1).Select(row => row.Short.Waiting));
        Assert.Equal([5, 6, 7, 8, 9, 10], heel.Piece("back", 0).Rows.Skip(3).Select(row => ((Work)row.Work!.Words[0]).Amount.Times));
    }

    [Fact]
    public void Rows_over_as_many_places_are_not_alike_where_they_wait_behind_another_turn()
    {
        // 18 places each time: 12 and 6 behind them, then 14 and 4.
        var rows = Of("row 2: sc 14, leave 6 for later\nrow 3: sc 12, leave 2\nrow 4: sc to turn, dec, leave 4 for later = 13\nrow 5: sc 13\nrow 6: sc to turn, sc across = 17").Clean().Piece("back", 0).Rows;
        Assert.Equal([12, 13], new[] { 3, 5 }.Select(row => ((Work)rows[row].Work!.Words[0]).Amount.Times));
    }

    [Theory]
    [InlineData("row 2: sc to turn, sc across", "no stitches wait at the right edge")]
    [InlineData("row 2: sc 14, leave 6 for later\nrow 3: sc to turn\nrow 4: sc across", "no stitches wait at the left edge")]
    [InlineData("row 2: sc 3, leave 17 for later\nrow 3: sc across\nrow 4: sc until 4 remain before turn, sc across", "3 stitches come before it")]
    public void Where_no_turn_is_it_is_told(string lines, string text)
    {
        var found = Of(lines);
        Assert.Equal(["turn-missing"], found.Found);
        Assert.Contains(text, found.Compilation.Diagnostics[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Behind_a_line_that_could_not_be_read_nothing_is_said_of_it() =>
        Assert.DoesNotContain("turn-missing", Of("row 2: sc 14, leeve 6 for later\nrow 3: sc across\nrow 4: sc to turn, sc across").Found);
}
