using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>repeat</c> by numbers and by the last rows, in sizes that have got to different numbers.</summary>
public sealed class RepeatTests
{
    private const string Grown = "row 2: sc across\nstraight 3 (5) rows\nrow: (dc, ch 1, skip 1) across\nrow: dc in each st and sp\n";

    [Theory]
    [InlineData("repeat last 2 rows, 3 more times", "13 (15)")]
    [InlineData("repeat last 2 rows, 3 times in all", "11 (13)")]
    [InlineData("repeat last row, 2 (4) more times", "9 (13)")]
    [InlineData("repeat last 2 (1) rows, 2 more times", "11")]
    [InlineData("repeat rows 6 (8) to 7 (9), 3 more times", "13 (15)")]
    [InlineData("repeat rows 1 to 2, 2 more times", "11 (13)")]
    public void Rows_are_repeated(string line, string rows) => Assert.Equal(rows, Compiled.Piece(Grown + line).Clean().Rows());

    [Fact]
    public void The_last_rows_are_those_of_the_lines_in_each_size()
    {
        var compiled = Compiled.Piece(Grown + "repeat last 2 rows, 3 more times").Clean();
        for (var size = 0; size < 2; size++)
        {
            var spaces = compiled.Piece("back", size).Rows.Skip(size == 0 ? 5 : 7).Select(static row => row.Work!.Spaces).ToArray();
            Assert.Equal([spaces[0], 0, spaces[0], 0, spaces[0], 0, spaces[0], 0], spaces);
            Assert.NotEqual(0, spaces[0]);
        }
    }

    [Theory]
    [InlineData("repeat rows 6 to 7, 3 more times", "`repeat last 2 rows`")]
    [InlineData("repeat row 7, 3 more times", "`repeat last row`")]
    [InlineData("row: sc across\nrepeat rows 6 to 7, 3 more times", "`repeat rows 6 (8) to 7 (9)`")]
    [InlineData("row: sc across\nrepeat row 6, 3 more times", "`repeat row 6 (8)`")]
    public void Numbers_of_other_lines_are_told_with_those_that_were_meant(string lines, string help)
    {
        var found = Assert.Single(Compiled.Piece(Grown + lines).Compilation.Diagnostics, static d => d.Kind.Name == "repeat-elsewhere");
        Assert.Contains(help, found.Help, StringComparison.Ordinal);
        Assert.Equal("mend", found.Mends.Count == 1 ? "mend" : "none");
    }

    [Theory]
    [InlineData("for S: row 2: sc across\nfor L: row 2: dc across\nrepeat row 2, 2 more times")]
    [InlineData("straight 4 (6) rows\nrepeat rows 2 to 3, 2 more times")]
    [InlineData("row 2: sc across\nstraight 3 (5) rows\nrepeat rows 1 to 2, 2 more times")]
    public void Lines_of_each_size_s_own_are_no_others(string lines) => Compiled.Piece(lines).Clean();

    [Theory]
    [InlineData("repeat last 3 rows, 2 more times")]
    [InlineData("repeat last 0 rows, 2 more times")]
    public void More_than_there_are_can_t_be_repeated(string line) => Assert.NotEmpty(Compiled.Piece("row 2: sc across\n" + line).Found);

    [Fact]
    public void What_does_not_come_out_in_a_repeat_names_the_row_that_is_worked_again()
    {
        var found = Assert.Single(Compiled.Piece("row 2: (dc 2, dec) 5 times\nrepeat row 2, 1 more time").Compilation.Diagnostics);
        Assert.Contains(found.Related, static r => r.Message == "row 2, which is worked again as row 3");
    }
}
