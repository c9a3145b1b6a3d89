using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>Row lines: numbers, sides, several rows, repeats.</summary>
public sealed class RowLineTests
{
    [Theory]
    [InlineData("row 2: dc across", "2")]
    [InlineData("row: dc across", "2")]
    [InlineData("row 2 WS: dc across", "2")]
    [InlineData("row WS: dc across", "2")]
    [InlineData("rows 2 to 19: dc across = 20", "19")]
    [InlineData("rows 2 to 4 (6): dc across", "4 (6)")]
    [InlineData("rows 2 to 1 (3): dc across", "1 (3)")]
    [InlineData("row 2: sc across\nrepeat rows 1 to 2, 9 more times", "20")]
    [InlineData("row 2: sc across\nrepeat rows 1 to 2, 9 times in all = 20", "18")]
    [InlineData("repeat row 1, 3 more times", "4")]
    [InlineData("repeat row 1, 0 (4) more times", "1 (5)")]
    public void A_line_makes_so_many_rows(string lines, string rows) => Assert.Equal(rows, Compiled.Piece(lines).Clean().Rows());

    [Theory]
    [InlineData("row 3: dc across", "row-number")]
    [InlineData("row 2 RS: dc across", "row-side")]
    [InlineData("rows 2 to 0: dc across", "rows-backwards")]
    [InlineData("repeat rows 1 to 2, 9 more times", "repeat-rows")]
    [InlineData("repeat row 1, 9 times", "repeat-times")]
    [InlineData("repeat row 1, 30000 more times", "too-many-rows")]
    public void A_number_or_a_side_that_is_not_the_row_s_own_is_an_error(string line, string name) =>
        Assert.Equal([name], Compiled.Piece(line).Found);

    [Fact]
    public void The_first_row_of_a_foundation_may_be_a_wrong_side_row() =>
        Assert.Equal([false, true], Compiled.Of("piece back\nbegin with 20 stitches\nrow 1 WS: dc across\nrow 2 RS: dc across").Clean()
            .Piece("back", 0).Rows.Select(r => r.RightSide));

    [Fact]
    public void Repeated_rows_are_the_rows_meant_over_whatever_is_there_by_then() =>
        Assert.Equal([20, 22, 22, 24, 24, 26], Compiled.Piece("row 2: inc, dc until 1 remain, inc\nrow 3: dc across\nrepeat rows 2 to 3, 1 more times\nrow: inc, dc until 1 remain, inc").Clean().Counts());

    [Fact]
    public void What_a_repeated_row_left_is_left_again() =>
        Assert.Equal([20, 18, 16, 14], Compiled.Piece("row 2: slip over 2, dc across\nrepeat row 2, 2 more times").Clean().Counts());

    [Fact]
    public void Statements_and_explicit_rows_mix_freely() =>
        Assert.Equal("18", Compiled.Piece("straight 2 rows\nrow 4: sc across\nleave 2 at right edge\nrow 5: dc across = 18\nstraight 3 rows = 18").Clean().Last());
}
