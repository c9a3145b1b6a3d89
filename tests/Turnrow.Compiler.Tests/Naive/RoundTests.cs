using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What a round is: where it begins, what it has no edge for, and what is held inside it.</summary>
public sealed class RoundTests
{
    private static readonly RowLine s_round = Pieces.Row(new Across("dc")) with { IsRound = true };
    private static readonly RowLine s_row = Pieces.Row(new Across("dc"));

    [Fact]
    public void Rounds_go_on_with_the_same_side_and_have_no_row_ends()
    {
        var piece = Pieces.Worked(new BeginWith(9), s_round, new Straight(2) { IsRound = true });
        Assert.Equal([Side.RS, Side.RS, Side.RS], piece.Rows.Select(row => row.Side));
        Assert.Empty(piece.Edge(Hand.Right));
        Assert.Empty(piece.Edge(Hand.Left));
        Assert.Equal(9, piece.FoundationChains);
    }

    [Fact]
    public void A_row_after_rounds_goes_on_or_back_as_it_says()
    {
        Assert.Equal(Side.RS, Pieces.Worked(new BeginWith(9), s_round, s_row).Rows[1].Side);
        Assert.Equal(Side.WS, Pieces.Worked(new BeginWith(9), s_round, s_row with { Side = Side.WS }).Rows[1].Side);
    }

    [Fact]
    public void The_first_round_after_rows_has_the_right_side()
    {
        Assert.Equal([Side.RS, Side.RS], Pieces.Worked(new BeginWith(9), s_row, s_round).Rows.Select(row => row.Side));
        Assert.Equal([Side.RS, Side.WS, Side.RS], Pieces.Worked(new BeginWith(9), s_row, s_row, s_round).Rows.Select(row => row.Side));
    }

    [Fact]
    public void A_round_has_no_edge_to_leave_stitches_at() =>
        Assert.Contains("no edge", Pieces.Fault(new BeginWith(20), s_round, new LeaveAtEdge(3, EdgeRef.Left), s_round), StringComparison.Ordinal);

    [Fact]
    public void Rows_are_not_said_of_rounds() =>
        Assert.Contains("rows are said", Pieces.Fault(new BeginWith(20), s_round, new Straight(2)), StringComparison.Ordinal);

    [Fact]
    public void Bridged_chains_are_counted_by_the_row_that_works_into_them()
    {
        var piece = Pieces.Worked(
            new BeginWith(20), s_round, Pieces.Row(new Each("dc", 5), new Hold(6, "thumb"), new Bridge(4, null), new Across("dc")) with { IsRound = true }, s_round);
        Assert.Equal([20, 14, 18], piece.Rows.Select(row => row.Stitches));
        Assert.Equal([new InnerEdge(2, false, 6, "thumb"), new InnerEdge(2, true, 4, null)], piece.Inner);
    }

    [Fact]
    public void What_is_held_is_picked_up_around()
    {
        var yoke = new NaivePiece("yoke", new BeginWith(20), [s_round, Pieces.Row(new Each("dc", 5), new Hold(6, "thumb"), new Bridge(4, "gap"), new Across("dc")) with { IsRound = true }]);
        var thumb = new NaivePiece("thumb", new PickedUpInside("yoke", ["thumb", "gap"], "sc", true), [new Straight(1) { IsRound = true }]);
        var worked = NaiveWorker.Work(Pieces.Of([yoke, thumb])).Of("thumb", 0);
        Assert.Equal([10, 10], worked.Rows.Select(row => row.Stitches));
        Assert.All(worked.Rows, row => Assert.True(row.IsRound));
    }

    [Fact]
    public void A_row_goes_over_pieces_that_face_alike()
    {
        NaivePiece One(string name, int rows) => new(name, new BeginWith(6), [s_row, new Straight(rows)]);
        var yoke = new NaivePiece("yoke", new AcrossOf(["front", "back"]), [s_row]);
        var worked = NaiveWorker.Work(Pieces.Of([One("front", 1), One("back", 1), yoke])).Of("yoke", 0);
        Assert.Equal(12, Assert.Single(worked.Rows).Stitches);
        Assert.Equal(YarnAt.GoesOn, worked.Yarn);
        Assert.Contains("different sides", Assert.Single(NaiveWorker.Work(Pieces.Of([One("front", 1), One("back", 2), yoke])).Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_goes_over_both_of_a_piece_made_twice_with_new_yarn()
    {
        NaivePiece front = new("front", new BeginWith(6), [s_row, new Straight(1)]);
        var sleeve = new NaivePiece("sleeve", new BeginWith(4), [s_row, new Straight(1)]) { Copies = 2 };
        NaivePattern With(params string[] over) => Pieces.Of([front, sleeve, new NaivePiece("yoke", new AcrossOf(over), [s_row])]);
        var yoke = NaiveWorker.Work(With("first sleeve", "front", "second sleeve")).Of("yoke", 0);
        Assert.Equal(14, Assert.Single(yoke.Rows).Stitches);
        Assert.Equal(YarnAt.JoinedAnew, yoke.Yarn);
        Assert.Contains("two parts", Assert.Single(NaiveWorker.Work(With("first sleeve", "front", "first sleeve")).Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void A_claim_at_a_step_counts_what_waits_where_the_next_row_goes()
    {
        // Row 2 goes to the right edge, row 3 turns before the left one; row 5 will meet the seven again.
        var piece = Pieces.One(
            new BeginWith(18), s_row, new LeaveForLater(7, EdgeRef.Left), new Straight(3), new LeaveAtEdge(2, EdgeRef.Right) { Claim = 16 }, new Straight(1));
        Assert.True(NaiveWorker.Work(piece).IsUnclear);
    }
}
