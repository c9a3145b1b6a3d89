using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>A row takes exactly what is there: one short or one over is a fault, never adjusted.</summary>
public sealed class RowFaultTests
{
    [Fact]
    public void One_short_is_a_fault()
    {
        var fault = Say.Bad(Say.Plain(4), Say.Stitches(1), Say.Stitches(4));
        Assert.Equal((RowFaultKind.NotEnough, 4, 3, 1), (fault.Kind, fault.Needed, fault.There, fault.Before));
    }

    [Fact]
    public void One_over_is_a_fault_of_the_row_s_end()
    {
        var fault = Say.Bad(Say.Plain(6), Say.Stitches(5));
        Assert.Equal((RowFaultKind.LeftOver, 1), (fault.Kind, fault.There));
        Assert.Null(fault.Word);
    }

    [Fact]
    public void Until_more_remain_than_are_there_is_a_fault() =>
        Assert.Equal(RowFaultKind.NotEnough, Say.Bad(Say.Plain(4), Say.Stitches(Amount.Until(5)), Say.Stitches(5)).Kind);

    [Fact]
    public void A_stitch_does_not_go_into_a_space_unasked()
    {
        var fault = Say.Bad(Say.Mesh(2), Say.Stitches(Amount.Across));
        Assert.Equal((RowFaultKind.SpaceAhead, 2), (fault.Kind, fault.Needed));
    }

    [Fact]
    public void A_place_of_a_kind_that_is_not_ahead_is_a_fault() =>
        Assert.Equal(RowFaultKind.NoneOfKind, Say.Bad(Say.Plain(4), Say.In(Aim.NextOfKind, Say.AnySpace)).Kind);

    [Fact]
    public void The_next_space_of_three_never_passes_over_another_space() => Assert.Equal(
        RowFaultKind.NoneOfKind, Say.Bad(Say.Of((Say.Space(2), 1), (Say.Dc, 1), (Say.Space(3), 1)), Say.In(Aim.NextOfKind, Say.SpaceOf(3))).Kind);

    [Fact]
    public void The_first_is_the_first_only_at_the_beginning() =>
        Assert.Equal(RowFaultKind.NotFirst, Say.Bad(Say.Plain(4), Say.Stitches(1), Say.In(Aim.First)).Kind);

    [Fact]
    public void The_last_is_the_last_only_at_the_end() =>
        Assert.Equal((RowFaultKind.NotLast, 4), (Say.Bad(Say.Plain(5), Say.Stitches(1), Say.In(Aim.Last)) is var f ? (f.Kind, f.There) : default));

    [Fact]
    public void Nothing_is_the_same_before_anything_is_worked() =>
        Assert.Equal(RowFaultKind.NothingBefore, Say.Bad(Say.Plain(5), Say.In(Aim.Same)).Kind);

    [Fact]
    public void Slipping_over_is_for_the_beginning_of_a_row() =>
        Assert.Equal(RowFaultKind.SlipOverInside, Say.Bad(Say.Plain(5), Say.Stitches(1), new SlipOver(4)).Kind);

    [Fact]
    public void Nothing_follows_what_is_left() =>
        Assert.Equal(RowFaultKind.AfterLeave, Say.Bad(Say.Plain(5), Say.Stitches(1), new Leave(2), Say.Stitches(2)).Kind);

    [Fact]
    public void What_stands_behind_the_last_place_used_must_be_worked_skipped_or_left() =>
        Assert.Equal(RowFaultKind.LeftOver, Say.Bad(Say.Mesh(3), Say.In(Aim.EachOfKind, Say.AnySpace)).Kind);

    [Fact]
    public void The_words_before_the_fault_are_known() => Assert.Equal(2, RowWorker.Work([Say.Stitches(1), new Chains(2), Say.Stitches(9)], Say.Plain(4)).Words.Count);

    [Fact]
    public void A_fault_in_each_of_a_kind_is_where_its_word_begins()
    {
        var together = new Work(StitchBook.Double, 2, 1, Amount.Once, new Target(Aim.EachOfKind, Say.AnySpace), HookInto.BothLoops);
        var fault = Say.Bad(Say.Mesh(3), Say.Stitches(1), together);
        Assert.Equal((RowFaultKind.RepeatDoesNotComeOut, 2, 1, 1), (fault.Kind, fault.Needed, fault.There, fault.Before));
    }
}
