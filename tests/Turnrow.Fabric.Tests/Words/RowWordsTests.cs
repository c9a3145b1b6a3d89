using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Each word of a row: what it takes and what it makes.</summary>
public sealed class RowWordsTests
{
    [Fact]
    public void One_in_each_of_five_takes_five_and_makes_five() => Assert.Equal(5, Say.Good(Say.Plain(5), Say.Stitches(5)).Stitches);

    [Fact]
    public void Across_takes_the_rest() => Assert.Equal(77, Say.Good(Say.Plain(77), Say.Stitches(7), Say.Stitches(Amount.Across)).Stitches);

    [Fact]
    public void Until_five_remain_leaves_five_places() =>
        Assert.Equal(12, Say.Good(Say.Plain(12), Say.Stitches(Amount.Until(5)), Say.Stitches(5)).Stitches);

    [Fact]
    public void Three_in_one_place_take_one_and_make_three() =>
        Assert.Equal(7, Say.Good(Say.Plain(5), Say.In(Aim.Next, 3), Say.Stitches(4)).Stitches);

    [Fact]
    public void Three_in_the_first_and_the_last_widen_by_four() =>
        Assert.Equal(16, Say.Good(Say.Plain(12), Say.In(Aim.First, 3), Say.Stitches(Amount.Until(1)), Say.In(Aim.Last, 3)).Stitches);

    [Fact]
    public void In_the_same_place_takes_none() =>
        Assert.Equal(13, Say.Good(Say.Plain(12), Say.Stitches(1), Say.In(Aim.Same), Say.Stitches(Amount.Across)).Stitches);

    [Theory]
    [InlineData(1, 1, 2)]
    [InlineData(3, 3, 6)]
    public void Increases_take_one_each_and_make_two(int times, int takes, int makes) =>
        Assert.Equal(makes, Say.Good(Say.Plain(takes), Work.Increase(StitchBook.Double, times)).Stitches);

    [Theory]
    [InlineData(1, 2, 1)]
    [InlineData(3, 6, 3)]
    public void Decreases_take_two_each_and_make_one(int times, int takes, int makes) =>
        Assert.Equal(makes, Say.Good(Say.Plain(takes), Work.Decrease(StitchBook.Double, times)).Stitches);

    [Fact]
    public void Three_together_take_three_and_make_one() => Assert.Equal(
        1, Say.Good(Say.Plain(3), new Work(StitchBook.Double, 3, 1, Amount.Once, Target.Next, HookInto.BothLoops)).Stitches);

    [Fact]
    public void Decreases_across_halve_the_row() => Assert.Equal(
        6, Say.Good(Say.Plain(12), new Work(StitchBook.Double, 2, 1, Amount.Across, Target.Next, HookInto.BothLoops)).Stitches);

    [Fact]
    public void Skipped_places_make_nothing() => Assert.Equal(3, Say.Good(Say.Plain(5), Say.Stitches(1), new Skip(2), Say.Stitches(2)).Stitches);

    [Fact]
    public void Chains_take_nothing_and_make_a_space()
    {
        var row = Say.Good(Say.Plain(4), Say.Stitches(2), new Chains(3), Say.Stitches(2));
        Assert.Equal((4, 1), (row.Stitches, Say.SpacesOf(row)));
        Assert.Equal(1, row.Tops.CountWhere(p => p == Say.Space(3)));
    }

    [Fact]
    public void Slipping_over_and_leaving_make_nothing() =>
        Assert.Equal(7, Say.Good(Say.Plain(13), new SlipOver(3), Say.Stitches(Amount.Until(3)), new Leave(3)).Stitches);

    [Fact]
    public void The_rest_can_be_left()
    {
        var row = Say.Good(Say.Plain(13), Say.Stitches(4), new Leave(-1));
        Assert.Equal(new Leave(9), row.Words[^1]);
    }

    [Fact]
    public void Slip_stitches_as_fabric_are_counted() =>
        Assert.Equal(7, Say.Good(Say.Plain(7), Work.Plain(StitchBook.Slip, Amount.Of(5)), Say.Stitches(2)).Stitches);

    [Fact]
    public void A_group_in_one_place_makes_its_stitches_and_its_space()
    {
        var group = new Group([Say.In(Aim.Next, 2), new Chains(2), Say.In(Aim.Next, 2)], new Target(Aim.NextOfKind, Say.AnySpace));
        var row = Say.Good(Say.Of((Say.Dc, 1), (Say.Space(2), 1), (Say.Dc, 1)), Say.Stitches(1), group, Say.Stitches(1));
        Assert.Equal((6, 1), (row.Stitches, Say.SpacesOf(row)));
    }

    [Fact]
    public void Where_the_hook_goes_changes_no_count() =>
        Assert.Equal(5, Say.Good(Say.Plain(5), Say.Stitches(5) with { Hook = HookInto.BackLoop }).Stitches);

    [Fact]
    public void Going_to_the_next_space_passes_over_the_stitches_before_it()
    {
        var row = Say.Good(Say.Of((Say.Dc, 3), (Say.Space(2), 1)), Say.In(Aim.NextOfKind, Say.AnySpace, 2));
        Assert.Equal(2, row.Stitches);
        Assert.Equal(3, Assert.IsType<Work>(row.Words[0]).PassedBefore);
    }

    [Fact]
    public void Going_to_the_next_stitch_of_a_kind_passes_over_spaces() =>
        Assert.Equal(5, Say.Good(Say.Mesh(4), Say.Stitches(1), Say.Times(Amount.Across, new Chains(2), Say.In(Aim.NextOfKind, Say.DcOnly))).Stitches);

    [Fact]
    public void In_each_space_goes_from_the_first_to_the_last_of_them()
    {
        var row = Say.Good(Say.Mesh(4), Say.In(Aim.EachOfKind, Say.AnySpace, 3), Say.In(Aim.Last));
        Assert.Equal(13, row.Stitches);
    }

    [Fact]
    public void In_each_stitch_and_space_goes_everywhere() => Assert.Equal(
        9, Say.Good(Say.Mesh(4), Say.In(Aim.EachOfKind, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0))).Stitches);

    [Fact]
    public void In_each_stays_away_from_what_remains()
    {
        var row = Say.Good(Say.Mesh(4), Say.In(Aim.First, 3), new Work(StitchBook.Double, 1, 1, Amount.Once, Say.EachUntil(1), HookInto.BothLoops), Say.In(Aim.Last, 3));
        Assert.Equal(13, row.Stitches);
    }

    [Fact]
    public void More_can_not_remain_than_is_there()
    {
        var fault = Say.Bad(Say.Mesh(4), new Work(StitchBook.Double, 1, 1, Amount.Once, Say.EachUntil(10), HookInto.BothLoops));
        Assert.Equal((RowFaultKind.NotEnough, 10, 9), (fault.Kind, fault.Needed, fault.There));
    }

    [Fact]
    public void The_chain_that_stands_for_a_dc_is_a_dc_to_go_to() => Assert.Equal(
        1, Say.Good(Say.Of((Say.Space(2), 1), (Say.Dc with { Kind = PlaceKind.TurningChain }, 1)), Say.In(Aim.NextOfKind, Say.DcOnly)).Stitches);

    [Fact]
    public void Nothing_can_be_worked_no_times() =>
        Assert.Equal(4, Say.Good(Say.Plain(4), Say.Stitches(0), Say.Times(Amount.Of(0), Say.Stitches(9)), new Skip(0), Say.Stitches(Amount.Across)).Stitches);

    [Fact]
    public void Across_nothing_is_nothing() => Assert.Equal(4, Say.Good(Say.Plain(4), Say.Stitches(4), Say.Stitches(Amount.Across)).Stitches);

    [Fact]
    public void Leaving_none_leaves_all_to_what_follows() => Assert.Equal(5, Say.Good(Say.Plain(5), new Leave(0), Say.Stitches(5)).Stitches);

    [Fact]
    public void Leaving_none_is_not_leaving_all() => Assert.Equal((RowFaultKind.LeftOver, 5), Say.Bad(Say.Plain(5), new Leave(0)) is var fault ? (fault.Kind, fault.There) : default);

    [Fact]
    public void In_each_of_a_kind_that_is_not_there_nothing_is_worked_and_nothing_passed()
    {
        var row = Say.Good(Say.Plain(4), Say.In(Aim.EachOfKind, Say.AnySpace), Say.Stitches(4));
        Assert.Equal((0, 0, 0), Assert.IsType<Work>(row.Words[0]) is var each ? (each.Amount.Times, each.Passed, each.PassedBefore) : default);
    }

    [Fact]
    public void In_each_space_knows_what_it_passed_and_what_of_it_came_first()
    {
        var below = Say.Of((Say.Dc, 3), (Say.Space(2), 1), (Say.Dc, 2), (Say.Space(2), 1), (Say.Dc, 1));
        var row = Say.Good(below, Say.In(Aim.EachOfKind, Say.AnySpace), Say.In(Aim.Same), Say.Stitches(1));
        Assert.Equal((2, 5, 3), Assert.IsType<Work>(row.Words[0]) is var each ? (each.Amount.Times, each.Passed, each.PassedBefore) : default);
    }

    [Fact]
    public void Two_together_in_each_space_halve_the_spaces() => Assert.Equal(
        3, Say.Good(Say.Mesh(4), new Work(StitchBook.Double, 2, 1, Amount.Once, new Target(Aim.EachOfKind, Say.AnySpace), HookInto.BothLoops), Say.In(Aim.Last)).Stitches);

    [Fact]
    public void In_each_may_stay_away_from_all_there_is() => Assert.Equal(
        9, Say.Good(Say.Mesh(4), Say.In(Aim.EachOfKind) with { Target = Say.EachUntil(9) }, Say.In(Aim.EachOfKind) with { Target = Say.EachUntil(0) }).Stitches);

    [Fact]
    public void A_group_in_each_space_comes_as_often_as_there_are_spaces()
    {
        var shell = new Group([Say.Stitches(2), new Chains(1), Say.Stitches(3)], new Target(Aim.EachOfKind, Say.AnySpace));
        var row = Say.Good(Say.Of((Say.Dc, 3), (Say.Space(2), 1), (Say.Dc, 2), (Say.Space(2), 1), (Say.Dc, 1)), shell, Say.In(Aim.Same), Say.In(Aim.Last));
        Assert.Equal((2, 5, 3), Assert.IsType<Group>(row.Words[0]) is var group ? (group.Times, group.Passed, group.PassedBefore) : default);
        Assert.Equal((12, 2), (row.Stitches, Say.SpacesOf(row)));
    }

    [Fact]
    public void The_first_may_stand_behind_chains() => Assert.Equal(5, Say.Good(Say.Plain(5), new Chains(3), Say.In(Aim.First), Say.Stitches(4)).Stitches);

    [Fact]
    public void Going_to_the_next_space_of_three_passes_over_stitches() =>
        Assert.Equal(1, Say.Good(Say.Of((Say.Dc, 2), (Say.Sc, 1), (Say.Space(3), 1)), Say.In(Aim.NextOfKind, Say.SpaceOf(3))).Stitches);

    [Fact]
    public void Going_to_each_space_of_three_passes_over_other_spaces() => Assert.Equal(
        2, Say.Good(Say.Of((Say.Space(2), 1), (Say.Space(3), 1), (Say.Space(2), 1), (Say.Space(3), 1)), Say.In(Aim.EachOfKind, Say.SpaceOf(3))).Stitches);

    [Fact]
    public void What_one_place_took_may_be_gone_back_to() => Assert.Equal(
        2, Say.Good(Say.Of((Say.Dc, 2), (Say.Space(2), 1)), Say.In(Aim.EachOfKind, Say.AnySpace), Say.In(Aim.Same)).Stitches);

    [Fact]
    public void A_repeat_whose_times_make_different_numbers_makes_their_sum() =>
        Assert.Equal(10, Say.Good(Say.Plain(10), Say.Times(Amount.Of(2), Say.Stitches(Amount.Until(3))), Say.Stitches(3)).Stitches);
}
