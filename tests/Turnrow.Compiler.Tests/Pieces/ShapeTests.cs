using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>shape</c> in all its forms, after one row of 20 dc (so that the first of its rows is row 2).</summary>
public sealed class ShapeTests
{
    private const string Edges = "right edge is armhole\nleft edge is neck\n";

    [Theory]
    [InlineData("shape 16 rows: dec 1 at both edges every 4 rows", "12", "5, 9, 13, 17")]
    [InlineData("shape 26 rows: inc 1 at both edges every 6 rows 3 times, then every 4 rows 2 times", "30", "7, 13, 19, 23, 27")]
    [InlineData("shape 14 rows: inc 1 at both edges by turns every 3 and 4 rows", "28", "4, 8, 11, 15")]
    [InlineData("shape 14 rows: after 10 rows, inc 1 at neck every 2 rows", "22", "13, 15")]
    [InlineData("shape 4 rows: inc 1 at neck every row", "24", "2, 3, 4, 5")]
    [InlineData("shape rows 2 to 5: inc 1 at neck every row", "24", "2, 3, 4, 5")]
    [InlineData("shape 2 rows: inc 3 at neck every 2 rows", "23", "3")]
    [InlineData("shape 2 rows: dec 2 at armhole every 2 rows", "18", "3")]
    [InlineData("shape 6 rows: dec 1 at both edges every 3 rows, 1 stitch in", "16", "4, 7")]
    [InlineData("shape 6 rows: inc 1 at neck every row; dec 1 at armhole every 3 rows", "24", "2, 3, 5, 6")]
    [InlineData("shape 20 rows: inc 1 at neck every 2 rows 3 times", "23", "3, 5, 7")]
    [InlineData("shape 0 (4) rows: inc 1 at neck every row", "20 (24)", "")]
    [InlineData("shape 4 rows: inc 0 (1) at neck every row", "20 (24)", "")]
    [InlineData("shape 8 rows: inc 1 at neck every 2 (4) rows", "24 (22)", "3, 5, 7, 9")]
    [InlineData("shape 8 rows: inc 1 at neck every 2 rows 0 (2) times", "20 (22)", "")]
    public void A_schedule_that_is_given_is_followed(string line, string last, string changes)
    {
        var compiled = Compiled.Piece(Edges + line).Clean();
        Assert.Equal((last, changes), (compiled.Last(), string.Join(", ", compiled.Changes())));
    }

    [Theory]
    [InlineData("shape 60 rows evenly to 52, at both edges", "52")]
    [InlineData("shape 20 rows evenly to 30, at neck", "30")]
    [InlineData("shape 20 rows evenly to 10, at both edges", "10")]
    [InlineData("shape 20 rows evenly to 30 (40), at both edges", "30 (40)")]
    [InlineData("shape 20 rows evenly to 20 (24), at both edges", "20 (24)")]
    [InlineData("shape 0 rows evenly to 20, at both edges", "20")]
    [InlineData("shape 20 rows evenly to 30, at both edges, on RS rows", "30")]
    [InlineData("shape 20 rows evenly to 34, at both edges, longer first", "34")]
    [InlineData("shape 20 rows evenly to 34, at both edges, by turns", "34")]
    [InlineData("shape 20 rows evenly to 30, at both edges, first 2 rows plain, last 4 rows plain", "30")]
    [InlineData("shape 20 rows evenly to 12, at both edges, 1 stitch in", "12")]
    [InlineData("shape rows 2 to 21 evenly to 30, at neck = 30", "30")]
    public void A_schedule_that_is_solved_comes_out_in_every_size(string line, string last) =>
        Assert.Equal(last, Compiled.Piece(Edges + line).Clean().Last());

    [Theory]
    [InlineData("shape 20 rows evenly to 34, at both edges", "3, 6, 9, 12, 15, 18, 21")]
    [InlineData("shape 20 rows evenly to 34, at both edges, longer first", "4, 7, 10, 13, 16, 19, 21")]
    [InlineData("shape 20 rows evenly to 36, at both edges, by turns", "3, 6, 8, 11, 13, 16, 18, 21")]
    [InlineData("shape 20 rows evenly to 26, at both edges, on RS rows", "7, 13, 21")]
    [InlineData("shape 20 rows evenly to 26, at both edges, first 2 rows plain, last 3 rows plain", "8, 13, 18")]
    public void Intervals_are_as_even_as_can_be(string line, string changes)
    {
        var compiled = Compiled.Piece(Edges + line).Clean();
        Assert.Equal(changes, string.Join(", ", compiled.Changes()));
    }

    [Fact]
    public void On_RS_rows_only_right_side_rows_shape()
    {
        var compiled = Compiled.Piece("shape 20 rows evenly to 30, at both edges, on RS rows").Clean();
        Assert.All(compiled.Changes(), n => Assert.True(compiled.Row(n).RightSide));
    }

    [Theory]
    [InlineData("shape 18 rows evenly to 64, at both edges", "taper-too-steep")]
    [InlineData("shape 18 rows evenly to 23, at both edges", "taper-odd")]
    [InlineData("shape 20 rows: dec 1 at both edges every 6 rows 3 times, then every 4 rows 5 times", "schedule-too-long")]
    [InlineData("shape 4 rows: inc 1 at neck every row; dec 1 at neck every 2 rows", "shapings-meet")]
    [InlineData("shape 12 rows: dec 1 at both edges every row", "row-length")]
    [InlineData("shape rows 3 to 5: inc 1 at neck every row", "row-number")]
    [InlineData("shape 3 rows: inc 1 at hem every row", "edge-unknown")]
    [InlineData("shape 4 rows: inc 1 at neck", "line-unfinished")]
    public void What_does_not_fit_is_told_once(string line, string name) => Assert.Equal([name], Compiled.Piece(Edges + line).Found);

    [Fact]
    public void The_refusal_says_what_fits()
    {
        var found = Assert.Single(Compiled.Piece("shape 18 rows evenly to 64, at both edges").Compilation.Diagnostics);
        Assert.Contains("22 times at each edge do not fit into 18 rows", found.Message, StringComparison.Ordinal);
        Assert.Contains("once a row is 18 times, 36 stitches", found.Message, StringComparison.Ordinal);
    }
}
