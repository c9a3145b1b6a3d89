using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Rows of any width cost what was written, and those that would have no end are refused.</summary>
public sealed class LongRowTests
{
    private const int Half = PlaceSequenceBuilder.MostPlaces / 2;

    private static PlaceSequence Pairs(int times)
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(Say.Of((Say.Dc, 1), (Say.Sc, 1)), times);
        return builder.Build();
    }

    [Fact]
    public void As_many_stitches_as_a_row_may_have_can_be_made_and_not_one_more()
    {
        Assert.Null(RowWorker.Work([Say.In(Aim.Next, 2 * Half)], Say.Plain(1)).Fault);
        var word = Say.In(Aim.Next, (2 * Half) + 1);
        Assert.Equal(new RowFault(RowFaultKind.TooLong, word, 0, 0, 1), RowWorker.Work([word], Say.Plain(1)).Fault);
    }

    [Fact]
    public void Too_many_together_are_told_at_the_next_word_or_at_the_row_s_end()
    {
        var half = Say.In(Aim.Next, Half + 1);
        Assert.Equal(new RowFault(RowFaultKind.TooLong, null, 0, 0, 2), RowWorker.Work([half, half], Say.Plain(2)).Fault);
        Assert.Equal(new RowFault(RowFaultKind.TooLong, new Chains(1), 0, 0, 2), RowWorker.Work([half, half, new Chains(1)], Say.Plain(3)).Fault);
    }

    [Fact]
    public void Too_many_in_a_repeat_are_told_at_the_repeat()
    {
        var half = Say.In(Aim.Next, Half + 1);
        var repeat = Say.Times(Amount.Once, half, half);
        Assert.Equal(new RowFault(RowFaultKind.TooLong, repeat, 0, 0, 2), RowWorker.Work([repeat], Say.Plain(2)).Fault);
    }

    [Fact]
    public void Words_without_end_are_refused()
    {
        Assert.Null(RowWorker.Work([.. Enumerable.Repeat(new Skip(0), 200_000)], Say.Plain(0)).Fault);
        Assert.Equal(new RowFault(RowFaultKind.TooLong, new Skip(0), 0, 0, 0), RowWorker.Work([.. Enumerable.Repeat(new Skip(0), 200_001)], Say.Plain(0)).Fault);
    }

    [Fact]
    public void A_repeat_that_takes_nothing_comes_as_often_as_was_said()
    {
        var same = Work.Plain(StitchBook.Single, Amount.Once) with { Target = Target.Next with { Aim = Aim.Same } };
        var row = Say.Good(Say.Plain(1), Say.Stitches(1), Say.Times(Amount.Of(300_000), new Chains(2), same));
        Assert.Equal(300_000, Say.SpacesOf(row));
        Assert.Equal(300_000, Assert.IsType<Repeat>(row.Words[1]).Amount.Times);
    }

    [Fact]
    public void Chains_however_often_are_one_space()
    {
        var row = Say.Good(Say.Plain(1), Say.Times(Amount.Of(300_000), new Chains(2)), Say.Stitches(1));
        Assert.Equal(new Chains(600_000), row.Words[0]);
        Assert.Equal(1, Say.SpacesOf(row));
    }

    [Fact]
    public void Chains_that_meet_in_more_words_than_can_be_laid_out_are_refused()
    {
        Word nested = Say.Times(Amount.Of(2), new Chains(1), Work.Plain(StitchBook.Single, Amount.Once), new Chains(1));
        for (var depth = 0; depth < 15; depth++) nested = Say.Times(Amount.Of(2), nested);
        Assert.Equal(RowFaultKind.TooLong, RowWorker.Work([nested], Say.Plain(1 << 16)).Fault?.Kind);
    }

    [Fact]
    public void Stitches_over_a_hundred_thousand_pairs_of_two_kinds_are_taken_at_once()
    {
        var row = Say.Good(Pairs(300_000), Say.Stitches(7), Work.Plain(StitchBook.Single, Amount.Until(3)), Say.Stitches(3));
        Assert.Equal([7, 599_990, 3], row.Tops.Segments.SelectMany(s => s.Unit).Select(run => run.Count));
    }

    [Fact]
    public void Stitches_take_whole_pairs_and_parts_of_pairs()
    {
        for (var first = 0; first <= 8; first++)
        {
            for (var second = 0; first + second <= 8; second++)
                Assert.Equal(8, Say.Good(Pairs(4), Say.Stitches(first), Work.Plain(StitchBook.Single, Amount.Of(second)), Say.Stitches(Amount.Across)).Stitches);
        }
    }

    [Fact]
    public void Pairs_of_which_one_is_a_space_are_not_taken_unasked() =>
        Assert.Equal(new RowFault(RowFaultKind.SpaceAhead, Say.Stitches(9), 2, 8, 1), Say.Bad(Say.Mesh(9), Say.Stitches(9)));

    [Fact]
    public void A_repeat_stops_before_what_it_lets_remain_however_wide_the_row()
    {
        Assert.Equal(125_000, Say.Good(Say.Plain(100_005), Say.Times(Amount.Until(5), Say.Stitches(3), Work.Increase(StitchBook.Double, 1)), new Skip(5)).Stitches);
        Assert.Equal(65, Say.Good(Say.Plain(65), Say.Times(Amount.Until(5), Say.Stitches(5)), Say.Stitches(5)).Stitches);
        Assert.Equal(20, Say.Good(Say.Plain(20), Say.Times(Amount.Until(4), Say.Stitches(2)), Say.Stitches(4)).Stitches);
    }

    [Fact]
    public void A_repeat_that_is_alike_each_time_has_one_way_whatever_it_goes_into()
    {
        var row = Say.Good(Say.Of((Say.Dc, 2), (Say.Sc, 3)), Say.Times(Amount.Of(5), Say.Stitches(1)));
        var repeat = Assert.IsType<Repeat>(Assert.Single(row.Words));
        Assert.Equal(5, repeat.Amount.Times);
        Assert.Empty(repeat.Ways);
    }
}
