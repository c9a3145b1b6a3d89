using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Tests.Pieces;
using Xunit;

namespace Turnrow.Fabric.Tests.Joins;

public sealed class EdgeSelectionTests
{
    private static Piece Shaped()
    {
        var builder = Made.Begun(30);
        builder.NameEdge(Hand.Right, "side-seam");
        builder.Plain(6);
        builder.NameEdge(Hand.Right, "armhole");
        return builder.Leave(Hand.Right, 4).Plain(5).Finish();
    }

    private static IEnumerable<(StretchKind, int, int)> Of(JoinSide? side) => side!.Stretches.Select(s => (s.Kind, s.FirstRow, s.Count));

    [Fact]
    public void A_name_means_the_stretches_that_have_it()
    {
        Assert.Equal([(StretchKind.RowEnds, 1, 6)], Of(EdgeSelection.ByName(Shaped(), Hand.Right, "Side-Seam")));
        var armhole = EdgeSelection.ByName(Shaped(), Hand.Right, "armhole");
        Assert.Equal((5, 4), (armhole.RowEnds, armhole.Stitches));
    }

    [Fact]
    public void Without_a_name_it_is_the_whole_edge() => Assert.Equal(11, EdgeSelection.ByName(Shaped(), Hand.Right, null).RowEnds);

    [Fact]
    public void The_foundation_and_the_last_row_are_edges_too()
    {
        Assert.Equal(30, EdgeSelection.Foundation(Shaped()).Stitches);
        Assert.Equal(26, EdgeSelection.LastRow(Shaped(), []).Stitches);
    }

    [Fact]
    public void The_last_three_rows_are_three_row_ends() =>
        Assert.Equal([(StretchKind.RowEnds, 9, 3)], Of(EdgeSelection.Rows(EdgeSelection.ByName(Shaped(), Hand.Right, null), 8, 3)));

    [Fact]
    public void A_step_between_two_taken_rows_belongs_to_them_and_one_at_the_rim_does_not()
    {
        var edge = EdgeSelection.ByName(Shaped(), Hand.Right, null);
        Assert.Equal([(StretchKind.RowEnds, 5, 2), (StretchKind.LeftStitches, 6, 4), (StretchKind.RowEnds, 7, 2)], Of(EdgeSelection.Rows(edge, 4, 4)));
        Assert.Equal([(StretchKind.RowEnds, 7, 5)], Of(EdgeSelection.Rows(edge, 6, 5)));
        Assert.Equal([(StretchKind.RowEnds, 1, 6)], Of(EdgeSelection.Rows(edge, 0, 6)));
    }

    [Theory]
    [InlineData(0, 12)]
    [InlineData(9, 3)]
    [InlineData(-1, 3)]
    [InlineData(3, -1)]
    public void Rows_that_are_not_there_can_not_be_taken(int skip, int take) =>
        Assert.Null(EdgeSelection.Rows(EdgeSelection.ByName(Shaped(), Hand.Right, null), skip, take));

    [Fact]
    public void Edges_of_the_same_hand_meet_in_opposite_order_and_others_in_the_same()
    {
        var (right, left) = (EdgeSelection.ByName(Shaped(), Hand.Right, null), EdgeSelection.ByName(Shaped(), Hand.Left, null));
        Assert.True(new Seam(right, right, false, null).OppositeOrder);
        Assert.False(new Seam(right, left, false, null).OppositeOrder);
    }

    [Fact]
    public void A_seam_is_even_if_rows_meet_rows_and_stitches_stitches()
    {
        var (right, left) = (EdgeSelection.ByName(Shaped(), Hand.Right, null), EdgeSelection.ByName(Shaped(), Hand.Left, null));
        Assert.False(new Seam(right, left, false, null).IsEven);
        Assert.True(new Seam(right, right, false, null).IsEven);
        Assert.True(new Seam(EdgeSelection.Foundation(Shaped()), EdgeSelection.Foundation(Shaped()), false, null).IsEven);
    }

    [Fact]
    public void A_piece_without_rows_or_whose_first_row_is_not_known_has_no_foundation_stitches()
    {
        Assert.Equal([(StretchKind.Foundation, 0, 0)], Of(EdgeSelection.Foundation(Made.Begun(30).Finish())));
        var builder = Made.Begun(30);
        Assert.NotNull(builder.WorkRow(new WordsPlan([]), default, 0));
        Assert.Equal([(StretchKind.Foundation, 0, 0)], Of(EdgeSelection.Foundation(builder.Finish())));
        Assert.Equal([(StretchKind.Foundation, 0, 30)], Of(EdgeSelection.Foundation(Shaped())));
    }

    [Fact]
    public void Of_a_row_that_parts_go_on_from_what_lies_between_them_is_open()
    {
        var piece = Made.Begun(20, 2).Finish();
        Assert.Equal(
            [(StretchKind.OpenStitches, 2, 3), (StretchKind.OpenStitches, 2, 4), (StretchKind.OpenStitches, 2, 1)],
            Of(EdgeSelection.LastRow(piece, [(12, 7), (3, 5)])));
    }

    [Fact]
    public void A_part_at_an_edge_leaves_nothing_open_there()
    {
        var piece = Made.Begun(20, 2).Finish();
        Assert.Equal([(StretchKind.OpenStitches, 2, 15)], Of(EdgeSelection.LastRow(piece, [(0, 5)])));
        Assert.Equal([(StretchKind.OpenStitches, 2, 15)], Of(EdgeSelection.LastRow(piece, [(15, 5)])));
        Assert.Equal([(StretchKind.OpenStitches, 2, 1)], Of(EdgeSelection.LastRow(piece, [(1, 19)])));
    }

    [Fact]
    public void Parts_that_take_all_leave_an_edge_of_no_stitches()
    {
        var piece = Made.Begun(20, 2).Finish();
        Assert.Equal([(StretchKind.OpenStitches, 2, 0)], Of(EdgeSelection.LastRow(piece, [(0, 12), (12, 8)])));
        Assert.Equal([(StretchKind.OpenStitches, 2, 0)], Of(EdgeSelection.LastRow(piece, [(0, 20), (3, 4)])));
    }

    [Fact]
    public void No_rows_are_no_stretches() => Assert.Empty(Of(EdgeSelection.Rows(EdgeSelection.ByName(Shaped(), Hand.Right, null), 3, 0)));
}
