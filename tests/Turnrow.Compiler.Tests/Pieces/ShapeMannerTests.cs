using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>How edges are shaped, said once for a piece or by a line for itself; after one row of 20 dc.</summary>
public sealed class ShapeMannerTests
{
    private static Compiled Piece(string lines) => Compiled.Piece(lines).Clean();

    private static EdgeChange Right(Compiled compiled, int row = 2) => ((ShapedPlan)compiled.Row(row).Plan).Right;

    [Theory]
    [InlineData("", "inc 1 at both edges every row", 1, 0, false)]
    [InlineData("shape 1 stitch in", "inc 1 at both edges every row", 1, 1, false)]
    [InlineData("shape 2 stitches in", "dec 1 at both edges every row", -1, 2, false)]
    [InlineData("shape 2 stitches in", "dec 1 at both edges every row, 3 stitches in", -1, 3, false)]
    [InlineData("shape by skipping", "dec 1 at both edges every row", -1, 1, true)]
    [InlineData("shape by skipping", "inc 1 at both edges every row", 1, 0, false)]
    [InlineData("shape by skipping", "dec 1 at both edges every row, by working together", -1, 0, false)]
    [InlineData("shape by skipping", "dec 1 at both edges every row, 0 stitches in", -1, 0, false)]
    [InlineData("shape by skipping", "dec 1 at both edges every row, 3 stitches in", -1, 3, true)]
    [InlineData("shape 2 stitches in, by skipping", "dec 1 at both edges every row", -1, 2, true)]
    [InlineData("shape 0 stitches in", "dec 1 at both edges every row, by skipping", -1, 1, true)]
    [InlineData("shape by slipping over", "dec 1 at both edges every row, 2 stitches in", -1, 2, false)]
    [InlineData("shape 1 stitch in, by slipping over", "inc 1 at both edges every row", 1, 1, false)]
    [InlineData("shape by slipping over\nshape by working together", "dec 1 at both edges every row", -1, 0, false)]
    public void The_line_goes_before_the_piece(string piece, string line, int change, int inside, bool skips) =>
        Assert.Equal(new EdgeChange(change, inside) { Skips = skips }, Right(Piece($"{piece}\nshape 2 rows: {line}")));

    [Fact]
    public void Slipping_over_is_a_step_at_either_edge()
    {
        var compiled = Piece("shape by slipping over\nshape 2 rows: dec 2 at both edges every row = 12");
        var row = compiled.Row(2);
        Assert.Equal((2, 2, false, true), (row.Start!.Count, row.End!.Count, row.Start.Adds, ((ShapedPlan)row.Plan).IsPlain));
    }

    [Theory]
    [InlineData("shape by skipping\nshape 4 rows evenly to 16, at both edges", "16")]
    [InlineData("shape by slipping over\nshape 4 rows evenly to 16, at both edges", "16")]
    [InlineData("shape 4 rows evenly to 16, at both edges, by slipping over", "16")]
    [InlineData("shape 4 rows evenly to 16, at both edges, by skipping, 2 stitches in", "16")]
    [InlineData("turn dc: ch 2 does not count\nshape by skipping\nshape 4 rows: dec 1 at both edges every row", "12")]
    [InlineData("turn dc: ch 2 does not count\nshape by slipping over\nshape 4 rows: dec 1 at both edges every row", "12")]
    [InlineData("for L: shape by slipping over\nshape 4 rows: dec 1 at both edges every row", "12")]
    public void Counts_do_not_depend_on_the_manner(string lines, string last) => Assert.Equal(last, Piece(lines).Last());

    [Fact]
    public void Between_two_that_are_skipped_one_is_worked()
    {
        var words = Piece("shape 1 rows: dec 2 at right edge every row, by skipping").Row(2).Work!.Words;
        Assert.Equal(2, words.Count(w => w is Skip { Count: 1 }));
        Assert.Equal(18, Piece("shape 1 rows: dec 2 at both edges every row, by skipping").Row(2).Work!.Stitches + 2);
    }

    [Fact]
    public void A_mirror_goes_on_in_the_manner_of_its_original()
    {
        var compiled = Compiled.Piece("shape 3 stitches in\nshape 2 rows: dec 1 at right edge every row\n\npiece front is back mirrored\nshape 2 rows: dec 1 at right edge every row\nseam back left edge with front right edge, first 3 rows").Clean();
        Assert.Equal((-1, 3), (((ShapedPlan)compiled.Row(4, "front").Plan).Right.Change, ((ShapedPlan)compiled.Row(4, "front").Plan).Right.StitchesIn));
        Assert.Equal(3, ((ShapedPlan)compiled.Row(2, "front").Plan).Left.StitchesIn);
    }

    [Theory]
    [InlineData("shape 0 stitches in, by skipping")]
    [InlineData("shape 2 rows: dec 1 at right edge every row, by skipping, 0 stitches in")]
    [InlineData("shape 2 rows: dec 1 at right edge every row, 1 stitch in, by slipping over")]
    public void A_manner_that_can_not_be_there_is_refused(string line) => Assert.Equal(["shape-manner"], Compiled.Piece(line).Found);
}
