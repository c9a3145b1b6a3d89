using CsCheck;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

public sealed class WordReversalTests
{
    // The rest of a row that does not come out is left, so that any words make a row.
    [Fact]
    public void A_reversed_row_over_the_reversed_places_makes_the_reversed_places() =>
        Gen.Select(WordGen.Row, WordGen.Below).Sample((words, below) =>
        {
            var row = RowWorker.Work([.. words, new Leave(-1)], below);
            if (row.Fault is not null) return;
            var reversed = WordReversal.Reverse(row.Words);
            var back = RowWorker.Work(reversed, below.Reversed());
            Assert.Null(back.Fault);
            Assert.Equal(WordGen.Flat(row.Tops.Reversed()), WordGen.Flat(back.Tops));
            // And each stitch goes where it went.
            var made = WorkedPlaces.Of(row.Words, below);
            Assert.Equal(WordGen.Flat(row.Tops), made.Select(m => m.Top));
            Assert.Equal(WorkedPlaces.Turned(made, below.Count), WorkedPlaces.Of(back.Words, below.Reversed()));
        }, iter: 20_000, threads: 1, print: static x => Read(x.Item1, x.Item2));

    private static string Read(Word[] words, PlaceSequence below)
    {
        var row = RowWorker.Work([.. words, new Leave(-1)], below);
        return $"over {WordGen.Text(below)}\nworked {WordGen.Text(row.Words)}\nreversed {WordGen.Text(WordReversal.Reverse(row.Words))}";
    }

    [Fact]
    public void Slipping_over_becomes_leaving_and_the_first_the_last()
    {
        var row = Say.Good(Say.Plain(13), new SlipOver(3), Say.Stitches(2), Say.Stitches(Amount.Until(2)), new Leave(2));
        Assert.Equal([new SlipOver(2), Say.Stitches(Amount.Until(5)), Say.Stitches(2), new Leave(3)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void What_went_across_goes_until_the_beginning_remains()
    {
        var row = Say.Good(Say.Plain(13), Work.Increase(StitchBook.Double, 1), Say.Stitches(2), Say.Stitches(Amount.Across));
        Assert.Equal([Say.Stitches(Amount.Until(3)), Say.Stitches(2), Work.Increase(StitchBook.Double, 1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void What_is_worked_in_the_same_place_as_the_last_of_a_run_stays_with_that_one_alone()
    {
        var row = Say.Good(Say.Plain(3), Say.Stitches(3), Say.In(Aim.Same, 2));
        Assert.Equal([Say.In(Aim.Next, 2), Say.In(Aim.Same), Say.Stitches(2)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void Chains_between_two_stitches_of_one_place_stay_between_them()
    {
        var row = Say.Good(Say.Plain(1), Say.Stitches(1), new Chains(2), Say.In(Aim.Same));
        Assert.Equal([Say.Stitches(1), new Chains(2), Say.In(Aim.Same)], WordReversal.Reverse(row.Words));
    }

    private static readonly Work _picot = new(SpecialStitches.Picot.Of(3)!, 0, 1, Amount.Once, Target.Next, HookInto.BothLoops);

    [Fact]
    public void A_picot_stays_on_the_stitch_that_it_was_worked_on()
    {
        var row = Say.Good(Say.Plain(12), Say.Stitches(5), _picot, Say.Stitches(7));
        Assert.Equal([Say.Stitches(7), Say.Stitches(1), _picot, Say.Stitches(4)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void Picots_of_a_repeat_stay_on_its_stitches()
    {
        var row = Say.Good(Say.Plain(12), Say.Times(Amount.Of(4), Say.Stitches(3), _picot));
        Assert.Equal([Say.Times(Amount.Of(4), Say.Stitches(1), _picot, Say.Stitches(2))], WordReversal.Reverse(row.Words));
        var first = Say.Good(Say.Plain(7), Say.Stitches(1), Say.Times(Amount.Of(3), _picot, Say.Stitches(2)));
        Assert.Equal(
            [Say.Stitches(2), Say.Times(Amount.Of(2), Say.Stitches(1), _picot, Say.Stitches(1)), Say.Stitches(1), _picot],
            WordReversal.Reverse(first.Words));
    }

    [Fact]
    public void A_picot_between_chains_stays_between_them()
    {
        var row = Say.Good(Say.Plain(2), Say.Stitches(1), new Chains(2), _picot, new Chains(2), Say.Stitches(1));
        Assert.Equal([Say.Stitches(1), new Chains(2), _picot, new Chains(2), Say.Stitches(1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void A_picot_between_two_stitches_of_one_place_stays_on_the_first()
    {
        var row = Say.Good(Say.Plain(1), Say.Stitches(1), _picot, Say.In(Aim.Same));
        Assert.Equal([Say.Stitches(1), Say.In(Aim.Same), _picot], WordReversal.Reverse(row.Words));
        var last = Say.Good(Say.Plain(1), Say.Stitches(1), Say.In(Aim.Same), _picot);
        Assert.Equal([Say.Stitches(1), _picot, Say.In(Aim.Same)], WordReversal.Reverse(last.Words));
    }

    [Fact]
    public void In_each_stays_away_from_what_was_worked_before_it()
    {
        Work Each(int remain) => new(StitchBook.Double, 1, 1, Amount.Of(8), Say.EachUntil(remain), HookInto.BothLoops);
        var row = Say.Good(Say.Mesh(4), Say.Stitches(1), Each(0));
        Assert.Equal([Each(1), Say.Stitches(1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void A_place_that_was_gone_to_is_gone_to_from_the_other_end()
    {
        var below = Say.Of((Say.Dc, 2), (Say.Space(2), 1), (Say.Dc, 1));
        var row = Say.Good(below, Say.In(Aim.NextOfKind, Say.AnySpace), Say.In(Aim.Same), Say.Stitches(1));
        Assert.Equal(
            [Say.Stitches(1), Say.In(Aim.NextOfKind, Say.AnySpace), Say.In(Aim.Same), new Skip(2)], WordReversal.Reverse(row.Words));
    }

    // "In each sp" after which none is left is worked no more; from the other end it would be the first to meet them.
    [Fact]
    public void What_was_worked_no_times_is_not_worked_from_the_other_end_either()
    {
        var below = Say.Of((Say.Space(2), 3));
        Word[] words = [Say.Times(Amount.Of(3), Say.In(Aim.EachOfKind, Say.AnySpace), Say.In(Aim.Same, 2))];
        var row = Say.Good(below, words);
        var back = Say.Good(below, [.. WordReversal.Reverse(row.Words)]);
        Assert.Equal((9, 9), (row.Stitches, back.Stitches));
        Assert.Equal(WorkedPlaces.Turned(WorkedPlaces.Of(row.Words, below), 3), WorkedPlaces.Of(back.Words, below));
    }

    [Fact]
    public void A_repeat_of_nothing_is_nothing() => Assert.Equal(
        [Say.Stitches(3)], WordReversal.Reverse(Say.Good(Say.Plain(3), Say.Times(Amount.Of(3), Say.In(Aim.EachOfKind, Say.AnySpace)), Say.Stitches(3)).Words));

    [Fact]
    public void What_joined_a_decrease_in_its_place_joins_it_there()
    {
        var row = Say.Good(Say.Plain(5), Say.Stitches(1), Work.Decrease(StitchBook.Double, 2), Say.In(Aim.Same, 3));
        Assert.Equal([Work.Decrease(StitchBook.Double, 1), Say.In(Aim.Same, 3), Work.Decrease(StitchBook.Double, 1), Say.Stitches(1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void What_joined_the_last_of_the_groups_in_each_space_stays_with_that_one_alone()
    {
        var below = Say.Mesh(3);
        var shell = new Group([Say.Stitches(2), new Chains(1)], new Target(Aim.EachOfKind, Say.AnySpace));
        var row = Say.Good(below, shell, Say.In(Aim.Same), Say.Stitches(1));
        var back = Say.Good(below.Reversed(), [.. WordReversal.Reverse(row.Words)]);
        Assert.Equal(WorkedPlaces.Turned(WorkedPlaces.Of(row.Words, below), below.Count), WorkedPlaces.Of(back.Words, below.Reversed()));
    }

    [Fact]
    public void A_repeat_that_went_across_goes_until_the_beginning_remains()
    {
        var row = Say.Good(Say.Plain(13), Work.Increase(StitchBook.Double, 1), Say.Times(Amount.Across, Say.Stitches(3), new Chains(1)));
        Assert.Equal([Say.Times(Amount.Until(1), new Chains(1), Say.Stitches(3)), Work.Increase(StitchBook.Double, 1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void Where_two_words_go_as_far_as_they_can_both_are_so_many()
    {
        var row = Say.Good(Say.Plain(12), Say.Stitches(Amount.Until(5)), Work.Plain(StitchBook.Single, Amount.Across));
        Assert.Equal([Work.Plain(StitchBook.Single, Amount.Of(5)), Say.Stitches(7)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void A_repeat_that_begins_where_it_ended_is_taken_apart_there()
    {
        var row = Say.Good(Say.Plain(2), Say.Stitches(1), Say.Times(Amount.Once, Say.In(Aim.Same, 2), Say.Stitches(1)));
        Assert.Equal([Say.Stitches(1), Say.In(Aim.Next, 2), Say.In(Aim.Same)], WordReversal.Reverse(row.Words));
        row = Say.Good(Say.Plain(4), Say.Stitches(1), Say.Times(Amount.Of(3), Say.In(Aim.Same, 2), Say.Stitches(1)));
        Assert.Equal(
            [Say.Stitches(1), Say.Times(Amount.Of(2), Say.In(Aim.Next, 2), Say.In(Aim.Same)), Say.In(Aim.Next, 2), Say.In(Aim.Same)],
            WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void The_last_time_of_a_repeat_stands_alone_where_something_joined_it()
    {
        var row = Say.Good(Say.Plain(4), Say.Times(Amount.Of(2), Say.Stitches(1), Say.In(Aim.Next, 2)), Say.In(Aim.Same));
        Assert.Equal(
            [Say.Stitches(1), Say.In(Aim.Same, 2), Say.Stitches(1), Say.Times(Amount.Of(1), Say.In(Aim.Next, 2), Say.Stitches(1))],
            WordReversal.Reverse(row.Words));
        row = Say.Good(Say.Plain(2), Say.Times(Amount.Once, Say.Stitches(1), Say.In(Aim.Next, 2)), Say.In(Aim.Same));
        Assert.Equal([Say.Stitches(1), Say.In(Aim.Same, 2), Say.Stitches(1)], WordReversal.Reverse(row.Words));
    }

    [Fact]
    public void In_each_space_of_three_passes_over_other_spaces_from_the_other_end_too()
    {
        var below = Say.Of((Say.Space(3), 1), (Say.Space(2), 1), (Say.Space(3), 1));
        var row = Say.Good(below, Say.In(Aim.EachOfKind, Say.SpaceOf(3)), Say.In(Aim.Same));
        Assert.Equal(4 - 1, Say.Good(below, [.. WordReversal.Reverse(row.Words)]).Stitches);
    }
}
