using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>Short rows by hand: what each row is worked over, what waits, and which rows reach an edge.</summary>
public class ShortRowTests
{
    private static readonly Stitch Dc = StitchBook.Double;

    [Fact]
    public void A_row_that_turns_leaves_its_last_places_and_the_row_back_starts_at_the_turn()
    {
        var piece = Begun(20);
        piece.LeaveForLater(Hand.Left, 6, default);
        Plain(piece);
        Plain(piece);
        // Row 2 goes to the right edge, so row 3 is the first that can turn before the left.
        Assert.Equal([20, 20, 14], Stitches(piece));
        Plain(piece);
        Assert.Equal(14, piece.Rows[3].Work!.Below.Count);
        Assert.Equal(6, piece.WaitingAt(Hand.Left));
        Assert.True(piece.Rows[3].Short.StartsAtTurn);
    }

    [Fact]
    public void The_next_row_to_that_edge_works_over_what_waits()
    {
        var piece = Wedge();
        Assert.Equal([20, 20, 16, 16, 12, 12, 20, 20], Stitches(piece));
        Assert.Equal([new WaitingStitches(5, 0, 4), new WaitingStitches(3, 0, 4)], piece.Rows[6].Short.Over);
        Assert.Equal(0, piece.WaitingAt(Hand.Left));
    }

    [Fact]
    public void Only_the_rows_that_reach_an_edge_have_an_end_there()
    {
        var made = Wedge().Finish();
        Assert.Equal([(1, 2), (7, 2)], Ends(made.Left));
        Assert.Equal([(1, 8)], Ends(made.Right));
    }

    [Fact]
    public void A_mirror_image_turns_a_row_later()
    {
        var made = Wedge().Finish();
        var mirrored = Begun(20, rows: 0);
        new Mirror(false).Work(made, mirrored);
        Assert.Equal([20, 20, 20, 16, 16, 12, 12, 20], Stitches(mirrored));
        var image = mirrored.Finish();
        Assert.Equal([(1, 3), (8, 1)], Ends(image.Right));
        Assert.Equal([(1, 8)], Ends(image.Left));
    }

    [Fact]
    public void Words_count_what_waits_among_the_places_ahead()
    {
        var piece = Begun(20);
        Plain(piece);
        Words(piece, Work.Plain(Dc, Amount.Until(8)), Later(8));
        Plain(piece);
        Words(piece, Work.Plain(Dc, Amount.Until(3)), Later(3));
        Assert.Equal([20, 20, 12, 12, 17], Stitches(piece));
        Assert.Equal([new WaitingStitches(3, 0, 5)], piece.Rows[4].Short.Over);
        Assert.Equal(3, piece.WaitingAt(Hand.Left));
        Plain(piece);
        Plain(piece);
        Assert.Equal([new WaitingStitches(3, 5, 3)], piece.Rows[6].Short.Over);
        Assert.Equal(20, piece.Rows[6].Work!.Stitches);
    }

    [Fact]
    public void Both_edges_turn_each_in_its_own_row()
    {
        var piece = Begun(20);
        for (var i = 0; i < 2; i++)
        {
            piece.LeaveForLater(Hand.Right, 3, default);
            piece.LeaveForLater(Hand.Left, 3, default);
            Plain(piece);
            Plain(piece);
        }

        Plain(piece);
        Plain(piece);
        Assert.Equal([20, 17, 14, 11, 8, 14, 20], Stitches(piece));
        var made = piece.Finish();
        Assert.Equal([(1, 1), (6, 2)], Ends(made.Right));
        Assert.Equal([(1, 2), (7, 1)], Ends(made.Left));
    }

    [Fact]
    public void The_first_row_over_a_foundation_turns_nowhere()
    {
        var piece = new PieceBuilder("wedge", new Dictionary<Stitch, TurnRule>());
        piece.BeginWithStitches(20);
        Assert.Equal(RowFaultKind.TurnInFirstRow, piece.WorkRow(new WordsPlan([Work.Plain(Dc, Amount.Until(8)), Later(8)]), default, 0)?.Kind);
    }

    [Fact]
    public void Nothing_is_done_at_an_edge_that_a_row_does_not_reach()
    {
        var piece = Begun(20);
        piece.LeaveForLater(Hand.Left, 4, default);
        Plain(piece);
        Plain(piece);
        piece.AddStep(Hand.Left, false, 2, default);
        Assert.Equal(RowFaultKind.EdgeNotReached, piece.WorkRow(ShapedPlan.Plain(Dc), default, 0)?.Kind);
        Assert.True(piece.RowsInDoubt);

        var shaped = Begun(20);
        shaped.LeaveForLater(Hand.Right, 4, default);
        Assert.Equal(RowFaultKind.EdgeNotReached, shaped.WorkRow(new ShapedPlan(Dc, new EdgeChange(1, 0), default), default, 0)?.Kind);
    }

    [Fact]
    public void At_least_one_stitch_is_worked_before_the_turn()
    {
        var piece = Begun(20);
        piece.LeaveForLater(Hand.Right, 20, default);
        Assert.Equal(RowFaultKind.NotEnough, piece.WorkRow(ShapedPlan.Plain(Dc), default, 0)?.Kind);
    }

    [Fact]
    public void What_is_left_for_good_beside_stitches_that_wait_is_taken_off_their_outer_end()
    {
        var piece = Wedge(over: false);
        piece.AddStep(Hand.Left, false, 3, default);
        Plain(piece);
        Assert.Equal(17, piece.Rows[^1].Work!.Stitches);
        Assert.Equal([new WaitingStitches(5, 0, 4), new WaitingStitches(3, 0, 1)], piece.Rows[^1].Short.Over);
        Assert.Equal(StretchKind.LeftStitches, piece.Finish().Left.Stretches[1].Kind);
    }

    // 4 and 4 left at the left edge, then two rows over all.
    private static PieceBuilder Wedge(bool over = true)
    {
        var piece = Begun(20);
        Plain(piece);
        for (var i = 0; i < 2; i++)
        {
            piece.LeaveForLater(Hand.Left, 4, default);
            Plain(piece);
            Plain(piece);
        }

        for (var i = 0; i < 2 && over; i++) Plain(piece);
        return piece;
    }

    private static PieceBuilder Begun(int stitches, int rows = 1)
    {
        var piece = new PieceBuilder("wedge", new Dictionary<Stitch, TurnRule>());
        piece.BeginWithStitches(stitches);
        for (var i = 0; i < rows; i++) Plain(piece);
        return piece;
    }

    private static void Plain(PieceBuilder piece) => Assert.Null(piece.WorkRow(ShapedPlan.Plain(Dc), default, 0));

    private static void Words(PieceBuilder piece, params Word[] words) => Assert.Null(piece.WorkRow(new WordsPlan(words), default, 0));

    private static Leave Later(int count) => new(count) { ForLater = true };

    private static IEnumerable<int> Stitches(PieceBuilder piece) => piece.Rows.Select(row => row.Work!.Stitches);

    private static IEnumerable<(int, int)> Ends(EdgeWalk edge) =>
        edge.Stretches.Where(stretch => stretch.Kind == StretchKind.RowEnds).Select(stretch => (stretch.FirstRow, stretch.Count));
}
