using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Steps and slopes in one line of shaping, how far it goes, and numbers in sizes inside of it; after one row of 20 dc.</summary>
public sealed class ShapeStageTests
{
    private const string Edges = "right edge is armhole\nleft edge is neck\n";

    [Theory]
    [InlineData("shape 12 rows: leave 5 at armhole, then dec 1 every row 2 times, then every 2 rows 3 times", "10", "2, 3, 4, 6, 8, 10")]
    [InlineData("shape 12 rows: leave 5, then dec 1 every row 2 times, then every 2 rows 3 times, at armhole", "10", "2, 3, 4, 6, 8, 10")]
    [InlineData("shape 12 rows: after 2 rows, leave 5, at armhole", "15", "4")]
    [InlineData("shape 8 rows: leave 3 at neck every 2 rows 2 times, then leave 2 every 2 rows 2 times", "10", "3, 5, 7, 9")]
    [InlineData("shape 8 rows: dec 1 at armhole every 4 rows; leave 3 at neck every 2 rows 2 times", "12", "3, 5, 9")]
    [InlineData("shape 4 rows: add 3 at armhole every 2 rows", "26", "3, 5")]
    [InlineData("shape 8 rows: inc 1 at neck every 2 rows 2 times, then leave 4, then dec 1 every row 2 times", "16", "3, 5, 6, 7, 8")]
    [InlineData("shape 4 rows: leave 2 at both edges every 2 rows", "12", "3, 5")]
    [InlineData("shape 4 rows: leave 0 (2) at neck, then dec 1 (2) every row 1 (2) times", "19 (14)", "3")]
    [InlineData("shape 12 rows: dec 1 at neck every 4 (3) rows 0 (2) times, then every 2 (1) rows 2 (3) times", "18 (15)", "3, 5")]
    [InlineData("shape 12 rows: dec 1 at neck by turns every 3 (2) and 4 (1) rows 2 (6) times", "18 (14)", "4, 8")]
    [InlineData("shape 12 rows: after 4 (6) rows, dec 1 at neck every 2 rows, 2 (3) stitches in", "16 (17)", "7, 9, 11, 13")]
    public void Stages_follow_one_another(string line, string last, string changes)
    {
        var compiled = Compiled.Piece(Edges + line).Clean();
        Assert.Equal((last, changes), (compiled.Last(), string.Join(", ", compiled.Changes())));
    }

    [Theory]
    [InlineData("shape to 10 cm: inc 1 at neck every row", "10", "29")]
    [InlineData("shape for 6 cm: inc 1 at neck every row", "7", "26")]
    [InlineData("shape to 10 cm, odd rows: inc 1 at neck every row", "11", "30")]
    [InlineData("shape for 5 cm, end WS: inc 1 at neck every row", "6", "25")]
    [InlineData("straight 3 rows\nmark next row up\nstraight 2 rows\nshape to 6 cm from up: inc 1 at neck every row", "10", "24")]
    [InlineData("straight 3 rows\nmark next row up\nstraight 2 rows\nshape 6 rows from up: inc 1 at neck every row", "10", "24")]
    [InlineData("shape to 10 (12) cm evenly to 26, at both edges", "10 (12)", "26")]
    public void It_goes_so_far(string lines, string rows, string last)
    {
        var compiled = Compiled.Piece(Edges + lines).Clean();
        Assert.Equal((rows, last), (compiled.Rows(), compiled.Last()));
    }

    [Theory]
    [InlineData("shape 4 rows: leave 5", "line-unfinished")]
    [InlineData("shape 4 rows: leave 5, at neck, at armhole", "unexpected-word")]
    [InlineData("shape 4 rows: leave 5 at neck, then dec 1", "line-unfinished")]
    [InlineData("shape 4 rows: leave 5 at neck, then dec 1 every 2 rows 2 times", "schedule-too-long")]
    [InlineData("shape 4 rows: leave 9 at neck every row", "row-length")]
    [InlineData("shape 4 rows: leave 5 at neck; dec 1 at both edges every row", "shapings-meet")]
    [InlineData("add 3 at neck\nshape 4 rows: leave 5 at neck", "steps-meet")]
    [InlineData("shape to 1 cm: inc 1 at neck every row", "")]
    [InlineData("straight 3 rows\nshape to 1 cm: inc 1 at neck every row", "length-passed")]
    [InlineData("shape 6 rows from up: inc 1 at neck every row", "mark-unknown")]
    [InlineData("shape 6 rows, odd rows: inc 1 at neck every row", "rows-fix")]
    public void What_can_not_be_is_said(string lines, string found) =>
        Assert.Equal(found, string.Join(", ", Compiled.Piece(Edges + lines).Found.Distinct()));

    [Fact]
    public void A_step_is_the_step_of_its_row_at_the_proper_end()
    {
        var compiled = Compiled.Piece(Edges + "shape 4 rows: leave 3 at armhole every 2 rows; leave 2 at neck every 2 rows").Clean();
        var (before, stepped) = (compiled.Row(2), compiled.Row(3));
        Assert.Equal((null, null), (before.Start, before.End));
        Assert.Equal((3, 2), (stepped.StepAt(Hand.Right)!.Count, stepped.StepAt(Hand.Left)!.Count));
        Assert.Equal(("armhole", "neck"), (stepped.Start!.Edge, stepped.End!.Edge));
    }
}
