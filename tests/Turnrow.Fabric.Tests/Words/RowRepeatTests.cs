using CsCheck;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

public sealed class RowRepeatTests
{
    private static readonly Word _inc = Work.Increase(StitchBook.Double, 1);

    [Fact]
    public void A_repeat_comes_so_many_times_in_all() =>
        Assert.Equal(14, Say.Good(Say.Plain(12), Say.Times(Amount.Of(2), Say.Stitches(5), _inc)).Stitches);

    [Fact]
    public void A_repeat_across_uses_up_the_row_and_knows_how_often_it_came()
    {
        var row = Say.Good(Say.Plain(60), Say.Times(Amount.Across, Say.Stitches(4), _inc));
        Assert.Equal((72, 12), (row.Stitches, Assert.IsType<Repeat>(row.Words[0]).Amount.Times));
    }

    [Fact]
    public void A_repeat_until_three_remain_stops_before_them() =>
        Assert.Equal(75, Say.Good(Say.Plain(63), Say.Times(Amount.Until(3), Say.Stitches(4), _inc), Say.Stitches(3)).Stitches);

    [Theory]
    [InlineData(84, 4)]
    [InlineData(61, 1)]
    public void A_repeat_that_does_not_come_out_says_what_is_left_over(int below, int left)
    {
        var fault = Say.Bad(Say.Plain(below), Say.Times(Amount.Across, Say.Stitches(4), _inc));
        Assert.Equal((RowFaultKind.RepeatDoesNotComeOut, 5, left), (fault.Kind, fault.Needed, fault.There));
    }

    [Fact]
    public void What_is_left_over_is_counted_from_where_the_repeat_began()
    {
        var fault = Say.Bad(Say.Plain(84), Say.Stitches(3), Say.Times(Amount.Until(2), Say.Stitches(4), _inc), Say.Stitches(2));
        Assert.Equal((RowFaultKind.RepeatDoesNotComeOut, 5, 4, 3), (fault.Kind, fault.Needed, fault.There, fault.Before));
    }

    [Fact]
    public void Decreases_across_an_odd_row_do_not_come_out() => Assert.Equal(
        RowFaultKind.RepeatDoesNotComeOut,
        Say.Bad(Say.Plain(13), new Work(StitchBook.Double, 2, 1, Amount.Across, Target.Next, HookInto.BothLoops)).Kind);

    [Fact]
    public void A_repeat_across_that_takes_nothing_would_never_end() =>
        Assert.Equal(RowFaultKind.RepeatTakesNothing, Say.Bad(Say.Plain(4), Say.Times(Amount.Across, new Chains(2))).Kind);

    [Fact]
    public void A_repeat_that_meets_other_places_each_time_keeps_its_ways()
    {
        var below = Say.Of((Say.Dc, 1), (Say.Space(2), 1), (Say.Dc, 3), (Say.Space(2), 1), (Say.Dc, 3), (Say.Space(2), 1));
        var row = Say.Good(below, Say.Times(Amount.Of(3), Say.In(Aim.NextOfKind, Say.AnySpace)));
        Assert.Equal([1, 2], Assert.IsType<Repeat>(row.Words[0]).Ways.Select(w => w.Amount.Times));
    }

    [Fact]
    public void What_is_measured_from_the_end_of_the_row_is_not_the_same_a_second_time()
    {
        var increase = Work.Increase(StitchBook.Double, 1) with { Amount = Amount.Until(5) };
        var row = Say.Good(Say.Plain(9), Say.Times(Amount.Of(2), increase), Say.Stitches(5));
        Assert.Equal(13, row.Stitches);
    }

    [Fact]
    public void What_comes_again_and_again_is_a_repeat_though_the_places_below_are_written_one_by_one()
    {
        var below = Say.Of([.. Enumerable.Range(0, 60).Select(i => i % 2 == 0 ? (Say.Dc, 3) : (Say.Space(1), 1))]);
        var row = Say.Good(below, Say.Times(Amount.Across, Say.In(Aim.NextOfKind, Say.AnySpace, 3), new Chains(1)));
        Assert.Equal((1, 30), (row.Tops.Segments.Count, row.Tops.Segments[0].Times));
    }

    [Fact]
    public void A_hundred_thousand_meshes_cost_what_two_words_cost()
    {
        var below = Say.Mesh(100_000);
        var row = Say.Good(below, Say.Stitches(1), Say.Times(Amount.Across, new Chains(2), Say.In(Aim.NextOfKind, Say.DcOnly)));
        Assert.Equal((100_001, 100_000), (row.Stitches, Say.SpacesOf(row)));
        Assert.True(row.Tops.Segments.Count <= 3);
    }

    [Fact]
    public void A_row_that_grows_beyond_all_bounds_is_refused()
    {
        Word hostile = Say.In(Aim.Next, 1_000_000);
        for (var i = 0; i < 4; i++) hostile = Say.Times(Amount.Of(1_000_000), new Chains(1), hostile);
        Assert.NotNull(RowWorker.Work([hostile], Say.Plain(10)).Fault);
    }

    // A repeat is worked once and then taken as often as it meets the same again; written out it is worked one by one.
    [Fact]
    public void Bulk_equals_one_by_one() => Gen.Select(WordGen.Unit, Gen.Int[0, 6], WordGen.Below).Sample((unit, times, below) =>
    {
        var bulk = RowWorker.Work([Say.Times(Amount.Of(times), [.. unit]), new Leave(-1)], below);
        var single = RowWorker.Work([.. Enumerable.Repeat(unit, times).SelectMany(u => u), new Leave(-1)], PlaceSequenceOfSingles(below));
        Assert.Equal(single.Fault is null, bulk.Fault is null);
        if (bulk.Fault is not null) return;
        Assert.Equal(WordGen.Flat(single.Tops), WordGen.Flat(bulk.Tops));
        Assert.Equal(single.Words.Sum(WordCounts.Takes), bulk.Words.Sum(WordCounts.Takes));
        Assert.Equal(single.Words.Sum(WordCounts.Makes), bulk.Words.Sum(WordCounts.Makes));
    });

    private static PlaceSequence PlaceSequenceOfSingles(PlaceSequence below) => Say.Of([.. WordGen.Flat(below).Select(p => (p, 1))]);
}
