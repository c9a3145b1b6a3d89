using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

public sealed class MirroredTests
{
    private const string Front = """
        right edge is neck
        left edge is armhole
        shape 4 rows: inc 1 at neck every row = 24
        leave 2 at armhole
        row 6 WS: dc, dc2tog, 2 dc in next, dc in same, dc across = 23
        add 3 at armhole
        row 7: dc across = 26
        row 8: 3 dc in first, (dc 2, ch 1, skip 1) 5 times, dc across
        piece right is back mirrored
        piece over is back mirrored, turned over
        seam right neck with over neck, easing
        seam back neck with right armhole, easing
        """;

    [Theory]
    [InlineData("right")]
    [InlineData("over")]
    public void It_keeps_the_counts_and_exchanges_the_edges(string name)
    {
        var compiled = Compiled.Piece(Front);
        Assert.DoesNotContain(compiled.Compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        Assert.Equal(compiled.Counts(), compiled.Counts(name));
        Assert.Equal(compiled.Piece("back", 0).Right.Stretches, compiled.Piece(name, 0).Left.Stretches);
        Assert.Equal(compiled.Piece("back", 0).Left.Stretches, compiled.Piece(name, 0).Right.Stretches);
    }

    [Fact]
    public void Right_side_rows_stay_so_unless_it_is_turned_over()
    {
        var compiled = Compiled.Piece(Front);
        Assert.Equal(compiled.Piece("back", 0).Rows.Select(r => r.RightSide), compiled.Piece("right", 0).Rows.Select(r => r.RightSide));
        Assert.Equal(compiled.Piece("back", 0).Rows.Select(r => !r.RightSide), compiled.Piece("over", 0).Rows.Select(r => r.RightSide));
    }

    [Fact]
    public void Turned_over_chains_worked_on_stay_worked_on_and_mirrored_they_become_a_length_apart()
    {
        var compiled = Compiled.Piece("straight 1 rows\nadd 4 at right edge\nstraight 1 rows\npiece other is back mirrored\npiece over is back mirrored, turned over\nseam back right edge with other left edge\nseam other right edge with over right edge").Clean();
        Assert.Equal((true, false, true), (compiled.Row(3).Start is not null, compiled.Row(3, "other").Start is not null, compiled.Row(3, "over").Start is not null));
    }

    [Fact]
    public void A_mirror_of_chains_given_has_the_same_chains() =>
        Assert.Equal([18, 18], Compiled.Of("piece a\nchain 20\nrow 1 WS: dc across\nrow 2: dc across\npiece b is a mirrored\nseam a right edge with b right edge").Clean().Counts("b"));

    [Fact]
    public void A_mirrored_part_begins_from_the_other_edge()
    {
        var compiled = Compiled.Piece("piece a from back: 6 stitches at right edge\nleft edge is neck\nrow 1: dc across\nshape 2 rows: dec 1 at neck every row\npiece b is a mirrored = 4").Clean();
        Assert.Equal(Hand.Left, compiled.Piece("b", 0).Rows[0].StartsAt);
        Assert.Equal("neck", compiled.Piece("b", 0).Right.Stretches[0].Name);
    }

    [Fact]
    public void Parts_that_meet_in_the_middle_are_told() => Assert.Equal(
        ["part-overlap"], Compiled.Piece("piece a from back: 12 stitches at right edge\nrow 1: dc across\npiece b is a mirrored").Found);

    [Fact]
    public void Chains_added_one_row_apart_that_meet_stitches_left_only_in_the_mirror_are_told() => Assert.Equal(
        ["steps-meet"],
        Compiled.Piece("add 8 at both edges, one row apart\nstraight 1 rows\nleave 3 at left edge\nrow: dc across\npiece b is back mirrored\nseam back right edge with b left edge, easing").Found);
}
