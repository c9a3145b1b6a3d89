using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Which hand a row starts at, what a step at an edge is, and what a mirror turns over.</summary>
public sealed class FrameTests
{
    private static readonly RowLine s_dc = Pieces.Row(new Across("dc"));

    [Fact]
    public void Every_row_turns()
    {
        var rows = Pieces.Worked(new BeginWith(9), s_dc, new Straight(2)).Rows;
        Assert.Equal([Side.RS, Side.WS, Side.RS], rows.Select(row => row.Side));
        Assert.Equal([Hand.Right, Hand.Left, Hand.Right], rows.Select(row => row.Start));
        Assert.Equal([Hand.Left, Hand.Right, Hand.Left], rows.Select(row => row.End));
    }

    [Fact]
    public void Stitches_are_slipped_over_at_the_start_and_left_at_the_end()
    {
        var piece = Pieces.Worked(new BeginWith(20), s_dc, new LeaveAtEdge(3, EdgeRef.Both), new Straight(2));
        Assert.Equal([20, 14, 14], piece.Rows.Select(row => row.Stitches));
        Assert.Equal(StretchKind.SlippedOver, piece.Edge(Hand.Left)[1].Kind);
        Assert.Equal(StretchKind.Left, piece.Edge(Hand.Right)[1].Kind);
    }

    [Fact]
    public void Words_that_slip_over_and_leave_make_the_same_steps()
    {
        var piece = Pieces.Worked(
            new BeginWith(20), s_dc, Pieces.Row(new SlipOver(2), new Until("dc", 3), new LeaveUnworked(null)));
        Assert.Equal((StretchKind.SlippedOver, 2), (piece.Edge(Hand.Left)[1].Kind, piece.Edge(Hand.Left)[1].Count));
        Assert.Equal((StretchKind.Left, 3), (piece.Edge(Hand.Right)[1].Kind, piece.Edge(Hand.Right)[1].Count));
    }

    [Fact]
    public void Chains_one_row_apart_are_both_worked_on_at_the_hook()
    {
        var piece = Pieces.Worked(new BeginWith(10), s_dc, new AddAtEdge(4, EdgeRef.Both, true), new Straight(3));
        Assert.Equal([10, 14, 18, 18], piece.Rows.Select(row => row.Stitches));
        Assert.Equal(new Stretch(StretchKind.AddedChain, 2, "", 4, ""), piece.Edge(Hand.Left)[1]);
        Assert.Equal(new Stretch(StretchKind.AddedChain, 3, "", 4, ""), piece.Edge(Hand.Right)[2]);
    }

    [Fact]
    public void A_schedule_changes_in_the_last_row_of_each_interval()
    {
        var schedule = new Schedule(false, 1, EdgeRef.Both, [new Leg(2, 2), new Leg(3)], After: 1);
        var rows = Pieces.Worked(new BeginWith(20), s_dc, new Shape(RowSpan.Of(11), [schedule])).Rows;
        Assert.Equal([20, 20, 20, 18, 18, 16, 16, 16, 14, 14, 14, 12], rows.Select(row => row.Stitches));
    }

    [Fact]
    public void A_schedule_that_does_not_fit_is_a_fault()
    {
        Assert.NotEmpty(Pieces.Fault(
            new BeginWith(60), s_dc, new Shape(RowSpan.Of(18), [Pieces.Shaping(false, 1, EdgeRef.Both, new Leg(1, 22))])));
        Assert.NotEmpty(Pieces.Fault(
            new BeginWith(5), s_dc, new Shape(RowSpan.Of(1), [Pieces.Shaping(false, 2, EdgeRef.Both, new Leg(1))])));
    }

    [Fact]
    public void Straight_wants_one_plain_stitch_to_go_on_with() => Assert.NotEmpty(Pieces.Fault(
        new BeginWith(9), Pieces.Row(new Each("sc", 4), new Across("dc")), new Straight(1)));

    [Fact]
    public void A_mirrored_row_is_the_row_seen_from_the_other_edge()
    {
        NaivePiece[] pieces =
        [
            new("swatch", new BeginWith(9), [s_dc, Pieces.Row(new Each("sc", 2), new Until("dc", 3), new LeaveUnworked(3))]),
            new("other", new MirrorOf("swatch"), []),
        ];
        var result = NaiveWorker.Work(Pieces.Of(pieces));
        var (row, mirrored) = (result.Of("swatch", 0).Rows[1], result.Of("other", 0).Rows[1]);
        Assert.Equal("dc dc dc dc sc sc", Pieces.Kinds(row));
        Assert.Equal("sc sc dc dc dc dc", Pieces.Kinds(mirrored));
        Assert.Equal(row.Side, mirrored.Side);
        Assert.Equal(StretchKind.Left, result.Of("swatch", 0).Edge(Hand.Right)[1].Kind);
        Assert.Equal(StretchKind.SlippedOver, result.Of("other", 0).Edge(Hand.Left)[1].Kind);
    }

    [Theory]
    [InlineData(1, Hand.Right, YarnAt.JoinedAnew, Side.WS)]
    [InlineData(1, Hand.Left, YarnAt.GoesOn, Side.WS)]
    [InlineData(2, Hand.Right, YarnAt.GoesOn, Side.RS)]
    [InlineData(2, Hand.Left, YarnAt.JoinedAnew, Side.RS)]
    public void A_part_goes_on_where_the_hook_is(int rows, Hand edge, YarnAt yarn, Side side)
    {
        NaivePiece[] pieces =
        [
            new("back", new BeginWith(20), [s_dc, new Straight(rows - 1)]),
            new("front", new PartOf("back", 8, edge), [s_dc]),
        ];
        var front = NaiveWorker.Work(Pieces.Of(pieces)).Of("front", 0);
        Assert.Equal((yarn, side, 8), (front.Yarn, front.Rows[0].Side, front.Rows[0].Stitches));
    }

    [Fact]
    public void Parts_may_not_share_a_stitch()
    {
        NaivePiece[] pieces =
        [
            new("back", new BeginWith(15), [s_dc]),
            new("front", new PartOf("back", 8, Hand.Left), [s_dc]),
            new("other", new MirrorOf("front"), []),
        ];
        Assert.Contains("two parts", Assert.Single(NaiveWorker.Work(Pieces.Of(pieces)).Faults), StringComparison.Ordinal);
    }
}
