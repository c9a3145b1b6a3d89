using CsCheck;
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
        }, iter: 20_000, threads: 1, print: static x => $"{string.Join("; ", x.Item1.Select(w => w.ToString()))} over {string.Join(" ", WordGen.Flat(x.Item2))}");

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
}
