using Turnrow.Fabric.Pieces;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>leave</c> and <c>add</c> make no row; a claim on them is what the next row has to begin with.</summary>
public sealed class StepStatementTests
{
    [Theory]
    [InlineData("leave 3 at both edges = 14\nstraight 1 rows", "14")]
    [InlineData("leave 3 (4) at right edge = 17 (16)\nstraight 1 rows", "17 (16)")]
    [InlineData("leave 0 (2) at left edge = 20 (18)\nstraight 1 rows", "20 (18)")]
    [InlineData("add 6 at right edge = 26\nstraight 1 rows", "26")]
    [InlineData("add 6 at both edges = 32\nstraight 1 rows", "32")]
    [InlineData("add 6 at both edges, one row apart\nstraight 2 rows", "32")]
    [InlineData("add 0 (4) at left edge = 20 (24)\nrow 2: dc across", "20 (24)")]
    [InlineData("right edge is armhole\nleave 2 at armhole\nadd 5 at left edge = 23\nstraight 2 rows", "23")]
    [InlineData("leave 1 at right edge\nleave 2 at right edge = 17\nstraight 1 rows", "17")]
    public void The_next_row_is_worked_over_what_is_there(string lines, string expected) => Assert.Equal(expected, Compiled.Piece(lines).Clean().Last());

    [Fact]
    public void They_make_no_row() => Assert.Equal("1", Compiled.Piece("leave 2 at both edges\nadd 1 at left edge").Rows());

    [Theory]
    [InlineData("leave 10 at both edges\nstraight 1 rows", "edge-short")]
    [InlineData("leave 2 at armhole\nstraight 1 rows", "edge-unknown")]
    [InlineData("both edges are side\nleave 2 at side\nstraight 1 rows", "edge-ambiguous")]
    [InlineData("leave 2 at right edge\nadd 3 at right edge\nstraight 1 rows", "steps-meet")]
    [InlineData("leave 3 at both edges = 15\nstraight 1 rows", "row-count")]
    public void What_can_not_be_is_told_once(string lines, string name) => Assert.Equal([name], Compiled.Piece(lines).Found);

    [Fact]
    public void An_edge_s_name_may_change_and_the_step_has_the_one_that_held_where_it_was_said()
    {
        var compiled = Compiled.Piece("right edge is armhole\nstraight 1 rows\nadd 4 at armhole\nfrom here right edge is side-seam\nstraight 2 rows\nleave 1 at side-seam\nstraight 1 rows").Clean();
        Assert.Equal(["-", "armhole", "armhole", "side-seam", "side-seam", "side-seam"], compiled.Piece("back", 0).Right.Stretches.Select(s => s.Name ?? "-"));
    }

    [Fact]
    public void Repeated_over_an_odd_number_of_rows_a_step_stays_at_its_edge()
    {
        var compiled = Compiled.Piece("leave 2 at right edge\nstraight 3 rows\nrepeat rows 2 to 4, 1 more times").Clean();
        Assert.Equal("16", compiled.Last().Split(' ')[0]);
        Assert.Equal([0, 2], [compiled.Piece("back", 0).Left.Stretches.Count(s => s.Kind == StretchKind.LeftStitches), compiled.Piece("back", 0).Right.Stretches.Count(s => s.Kind == StretchKind.LeftStitches)]);
    }
}
