using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>
/// Every way in which a row does not come out, with every number that a message is made of: what is needed, what is there, and what
/// was taken before. The words up to the fault are known, and nothing of the word at fault is made.
/// </summary>
public sealed class FaultTableTests
{
    private static readonly Work _together = new Work(StitchBook.Double, 2, 1, Amount.Across, Target.Next, HookInto.BothLoops);
    private static readonly Group _shellNext = new([Say.In(Aim.Next, 2), new Chains(1)], Target.Next);
    private static readonly Group _shellInSpace = new([Say.In(Aim.Next, 2)], new Target(Aim.NextOfKind, Say.AnySpace));

    private static Work Each(int takes, PlaceFilter filter) => new(StitchBook.Double, takes, 1, Amount.Once, new Target(Aim.EachOfKind, filter), HookInto.BothLoops);

    private static void Fails(PlaceSequence below, Word[] words, RowFaultKind kind, int needed, int there, int before, int atFault)
    {
        var row = RowWorker.Work(words, below);
        Assert.Equal(new RowFault(kind, words[atFault], needed, there, before), row.Fault! with { Way = 0, Times = 0 });
        Assert.Equal(atFault, row.Words.Count);
        if (words[atFault] is not Repeat) Assert.Equal(RowWorker.Work([.. words[..atFault], new Leave(-1)], below).Tops, row.Tops);
    }

    [Fact]
    public void Too_few_places_for_stitches() => Fails(Say.Plain(4), [Say.Stitches(1), Say.Stitches(4), Say.Stitches(1)], RowFaultKind.NotEnough, 4, 3, 1, 1);

    [Fact]
    public void Too_few_places_to_let_so_many_remain() =>
        Fails(Say.Plain(5), [Say.Stitches(1), Say.Stitches(Amount.Until(5)), Say.Stitches(1)], RowFaultKind.NotEnough, 5, 4, 1, 1);

    [Fact]
    public void Too_few_places_behind_those_passed_over()
    {
        Word together = new Work(StitchBook.Double, 2, 1, Amount.Once, new Target(Aim.NextOfKind, Say.AnySpace), HookInto.BothLoops);
        Fails(Say.Of((Say.Dc, 3), (Say.Space(2), 1)), [together, Say.Stitches(1)], RowFaultKind.NotEnough, 2, 1, 3, 0);
    }

    [Fact]
    public void Too_few_places_to_skip() => Fails(Say.Plain(5), [Say.Stitches(1), new Skip(6), Say.Stitches(1)], RowFaultKind.NotEnough, 6, 4, 1, 1);

    [Fact]
    public void Too_few_places_to_slip_over() => Fails(Say.Plain(5), [new SlipOver(6), Say.Stitches(1)], RowFaultKind.NotEnough, 6, 5, 0, 0);

    [Fact]
    public void Too_few_places_to_leave()
    {
        Fails(Say.Plain(5), [Say.Stitches(1), new Leave(6)], RowFaultKind.NotEnough, 6, 4, 1, 1);
        Assert.Equal(new RowFault(RowFaultKind.NotEnough, new Leave(6), 6, 4, 1), RowWorker.Work([Say.Stitches(1), new Leave(6), Say.Stitches(1)], Say.Plain(5)).Fault);
    }

    [Fact]
    public void Too_few_places_to_stay_away_from() =>
        Fails(Say.Mesh(4), [Say.Stitches(1), Each(1, Say.AnySpace) with { Target = Say.EachUntil(9) }, Say.Stitches(1)], RowFaultKind.NotEnough, 9, 8, 1, 1);

    [Fact]
    public void Too_few_places_for_a_group_to_stay_away_from()
    {
        Word group = _shellNext with { Target = Say.EachUntil(9) };
        Fails(Say.Mesh(4), [Say.Stitches(1), group, Say.Stitches(1)], RowFaultKind.NotEnough, 9, 8, 1, 1);
    }

    [Fact]
    public void No_place_for_a_group() => Fails(Say.Plain(2), [Say.Stitches(2), _shellNext, Say.Stitches(1)], RowFaultKind.NotEnough, 1, 0, 2, 1);

    [Fact]
    public void A_space_in_the_way_of_stitches() =>
        Fails(Say.Of((Say.Dc, 1), (Say.Space(3), 1), (Say.Dc, 2)), [Say.Stitches(1), Say.Stitches(2), Say.Stitches(1)], RowFaultKind.SpaceAhead, 3, 2, 1, 1);

    [Fact]
    public void A_space_in_the_way_of_a_group() =>
        Fails(Say.Of((Say.Dc, 1), (Say.Space(3), 1)), [Say.Stitches(1), _shellNext, Say.Stitches(1)], RowFaultKind.SpaceAhead, 3, 1, 1, 1);

    [Fact]
    public void Two_together_over_an_odd_number() =>
        Fails(Say.Plain(14), [Say.Stitches(1), _together, Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 2, 1, 1, 1);

    [Fact]
    public void Two_together_over_an_odd_number_of_spaces() =>
        Fails(Say.Mesh(3), [Say.Stitches(1), Each(2, Say.AnySpace), Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 2, 1, 1, 1);

    [Fact]
    public void No_place_of_the_kind()
    {
        Fails(Say.Plain(5), [new Chains(1), Say.In(Aim.NextOfKind, Say.AnySpace), Say.Stitches(1)], RowFaultKind.NoneOfKind, 1, 0, 5, 1);
        Fails(Say.Plain(5), [new Chains(1), _shellInSpace, Say.Stitches(1)], RowFaultKind.NoneOfKind, 1, 0, 5, 1);
    }

    [Fact]
    public void Another_space_on_the_way_to_one_of_three_chains() => Fails(
        Say.Of((Say.Dc, 2), (Say.Space(2), 1), (Say.Space(3), 1)), [new Chains(1), Say.In(Aim.NextOfKind, Say.SpaceOf(3)), Say.Stitches(1)], RowFaultKind.NoneOfKind, 1, 2, 2, 1);

    [Fact]
    public void The_first_behind_another()
    {
        Fails(Say.Plain(5), [Say.Stitches(1), Say.In(Aim.First), Say.Stitches(1)], RowFaultKind.NotFirst, 0, 1, 1, 1);
        Fails(Say.Plain(5), [new Skip(2), Say.In(Aim.First), Say.Stitches(1)], RowFaultKind.NotFirst, 0, 2, 2, 1);
    }

    [Fact]
    public void The_last_before_another_and_the_last_of_none()
    {
        Fails(Say.Plain(5), [Say.Stitches(1), Say.In(Aim.Last), Say.Stitches(1)], RowFaultKind.NotLast, 1, 4, 1, 1);
        Assert.Equal((RowFaultKind.NotEnough, 1, 0), Say.Bad(Say.Plain(1), Say.Stitches(1), Say.In(Aim.Last)) is var fault ? (fault.Kind, fault.Needed, fault.There) : default);
    }

    [Fact]
    public void The_same_of_none()
    {
        Fails(Say.Plain(5), [new Skip(1), Say.In(Aim.Same), Say.Stitches(1)], RowFaultKind.NothingBefore, 0, 0, 1, 1);
        Fails(Say.Plain(5), [Say.Stitches(0), Say.In(Aim.Same)], RowFaultKind.NothingBefore, 0, 0, 0, 1);
        Fails(Say.Plain(5), [Each(1, Say.AnySpace), Say.In(Aim.Same)], RowFaultKind.NothingBefore, 0, 0, 0, 1);
        Fails(Say.Plain(5), [_shellInSpace with { Target = new Target(Aim.EachOfKind, Say.AnySpace) }, Say.In(Aim.Same)], RowFaultKind.NothingBefore, 0, 0, 0, 1);
    }

    [Fact]
    public void Slipping_over_behind_something()
    {
        Fails(Say.Plain(5), [Say.Stitches(1), new SlipOver(2), Say.Stitches(1)], RowFaultKind.SlipOverInside, 2, 4, 1, 1);
        Fails(Say.Plain(5), [new Skip(1), new SlipOver(2)], RowFaultKind.SlipOverInside, 2, 4, 1, 1);
    }

    [Fact]
    public void Something_behind_what_is_left() => Fails(Say.Plain(5), [Say.Stitches(4), new Leave(1), new Chains(1)], RowFaultKind.AfterLeave, 0, 0, 5, 2);

    [Fact]
    public void Something_left_over()
    {
        var row = RowWorker.Work([Say.Stitches(3)], Say.Plain(5));
        Assert.Equal(new RowFault(RowFaultKind.LeftOver, null, 0, 2, 3), row.Fault);
        Assert.Equal(3, row.Stitches);
    }

    [Fact]
    public void More_spread_than_fits() => Fails(Say.Plain(8), [Say.Stitches(1), Spread.Of(StitchBook.Double, -4), Say.Stitches(1)], RowFaultKind.SpreadTooMany, 4, 7, 1, 1);

    [Fact]
    public void A_repeat_that_takes_nothing() =>
        Fails(Say.Plain(5), [Say.Stitches(1), Say.Times(Amount.Across, new Chains(1)), Say.Stitches(1)], RowFaultKind.RepeatTakesNothing, 0, 4, 1, 1);

    [Fact]
    public void A_repeat_of_all_that_can_be_repeated()
    {
        Word[] words = [Say.Stitches(2), Say.In(Aim.Same), _shellNext, new Chains(3), new Skip(1), Say.Times(Amount.Of(2), Say.Stitches(1), _together with { Amount = Amount.Once })];
        Fails(Say.Plain(33), [Say.Stitches(1), Say.Times(Amount.Across, words), Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 10, 2, 1, 1);
        Fails(Say.Plain(33), [Say.Stitches(1), Say.Times(Amount.Until(4), words), Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 10, 8, 1, 1);
    }

    [Fact]
    public void A_repeat_that_takes_too_much_at_its_end() =>
        Fails(Say.Plain(5), [Say.Times(Amount.Until(1), Say.Stitches(3)), Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 3, 1, 0, 0);

    [Fact]
    public void A_repeat_that_passes_over_places_says_what_was_left_when_it_began_for_the_last_time() => Fails(
        Say.Of((Say.Dc, 1), (Say.Space(2), 1), (Say.Dc, 3)),
        [Say.Times(Amount.Until(1), new Chains(2), Say.In(Aim.NextOfKind, Say.AnySpace)), Say.Stitches(1)],
        RowFaultKind.RepeatDoesNotComeOut, 1, 2, 0, 0);

    [Fact]
    public void A_repeat_of_words_that_take_what_there_is() =>
        Fails(Say.Plain(4), [Say.Times(Amount.Across, Say.Stitches(Amount.Until(5))), Say.Stitches(1)], RowFaultKind.RepeatDoesNotComeOut, 0, 4, 0, 0);

    [Fact]
    public void A_repeat_so_many_times_says_what_its_word_says()
    {
        var fault = Say.Bad(Say.Plain(5), Say.Times(Amount.Of(3), Say.Stitches(2)));
        Assert.Equal(new RowFault(RowFaultKind.NotEnough, Say.Stitches(2), 2, 1, 4), fault);
    }

    [Fact]
    public void A_space_in_the_way_of_a_repeat_is_told_as_such() =>
        Assert.Equal(new RowFault(RowFaultKind.SpaceAhead, Say.Stitches(2), 2, 1, 1), Say.Bad(Say.Mesh(2), Say.Times(Amount.Across, Say.Stitches(2))));
}
