using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>Where the hook is, which side faces, and at which end of a row an edge is.</summary>
public sealed class FrameTests
{
    [Fact]
    public void A_right_side_row_runs_from_the_right_edge_to_the_left()
    {
        var builder = Made.Begun(10, 1);
        Assert.Equal((true, Hand.Right, Hand.Left), (builder.Rows[0].RightSide, builder.Rows[0].StartsAt, builder.Rows[0].EndsAt));
        Assert.Equal((Hand.Left, false), (builder.HookAt, builder.NextIsRightSide));
    }

    [Fact]
    public void A_wrong_side_row_runs_back()
    {
        var builder = Made.Begun(10, 2);
        Assert.Equal((Hand.Left, Hand.Right), (builder.Rows[1].StartsAt, builder.Rows[1].EndsAt));
        Assert.Equal(Hand.Right, builder.HookAt);
    }

    [Fact]
    public void The_first_row_may_be_a_wrong_side_row()
    {
        var builder = Made.New();
        builder.BeginWithStitches(10);
        builder.BeginOnSide(false);
        builder.Plain(1);
        Assert.Equal((false, Hand.Left), (builder.Rows[0].RightSide, builder.Rows[0].StartsAt));
        builder.BeginOnSide(true);
        Assert.False(builder.Rows[0].RightSide);
        Assert.True(builder.NextIsRightSide);
    }

    [Fact]
    public void A_part_begins_on_the_side_after_the_row_that_it_is_part_of()
    {
        Assert.True(Made.Part(Made.Begun(20, 2).Finish(), 0, 5, false).NextIsRightSide);
        Assert.False(Made.Part(Made.Begun(20, 1).Finish(), 0, 5, true).NextIsRightSide);
    }

    [Fact]
    public void Shaping_is_at_the_beginning_of_a_row_that_starts_there_and_at_the_end_of_one_that_ends_there()
    {
        var neck = new ShapedPlan(StitchBook.Double, default, new EdgeChange(1, 0));
        var builder = Made.Begun(10).Rows(2, neck);
        Assert.Equal(2, Assert.IsType<Work>(builder.Rows[0].Work!.Words[^1]).Makes);
        Assert.Equal(2, Assert.IsType<Work>(builder.Rows[1].Work!.Words[0]).Makes);
        Assert.Equal(12, builder.Last());
    }

    [Fact]
    public void Shaping_one_stitch_in_keeps_a_plain_stitch_at_the_edge()
    {
        var builder = Made.Begun(10).Rows(1, new ShapedPlan(StitchBook.Double, new EdgeChange(-1, 1), new EdgeChange(-2, 1)));
        Assert.Equal(7, builder.Last());
        Assert.Equal([(1, 1, 1), (2, 1, 1), (1, 1, 2), (2, 1, 2), (1, 1, 1)], builder.Rows[0].Work!.Words.Cast<Work>().Select(w => (w.Takes, w.Makes, w.Amount.Times)));
    }

    [Fact]
    public void A_thousand_like_rows_are_worked_once()
    {
        var builder = Made.Begun(77, 1000);
        // The first is worked into chains, the second over what was skipped of them.
        Assert.All(builder.Rows.Skip(3), row => Assert.Same(builder.Rows[2].Work, row.Work));
    }

    [Fact]
    public void Another_turning_chain_works_them_anew_and_keeps_the_count()
    {
        var builder = Made.Begun(77, 2);
        builder.SetRule(StitchBook.Double, TurnRule.Of(2, false), false);
        builder.Plain(2);
        Assert.Equal([3, 3, 2, 2], builder.Rows.Select(r => r.Number == 1 ? 3 : r.Work!.Opening.Chains));
        Assert.All(builder.Rows, r => Assert.Equal(77, r.Work!.Stitches));
    }

    [Fact]
    public void Rows_worked_often_before_are_worked_anew_by_another_rule_and_again_when_it_is_over()
    {
        var builder = Made.Begun(77, 5);
        builder.SetRule(StitchBook.Double, TurnRule.Of(2, true), true);
        builder.Plain(3);
        builder.SetRule(StitchBook.Double, TurnRule.Of(4, true), false);
        builder.Plain(2);
        Assert.Equal([3, 3, 3, 3, 2, 3, 3, 4, 4], builder.Rows.Skip(1).Select(r => r.Work!.Opening.Chains));
    }

    [Fact]
    public void A_rule_for_the_next_row_is_over_after_it()
    {
        var builder = Made.Begun(77, 1);
        builder.SetRule(StitchBook.Double, TurnRule.Of(2, false), true);
        builder.Plain(2);
        Assert.Equal([2, 3], builder.Rows.Skip(1).Select(r => r.Work!.Opening.Chains));
    }
}
