using CsCheck;
using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Fabric.Tests.Places;

/// <summary>A sequence of runs behaves as the plain list of its places does.</summary>
public sealed class PlaceSequenceTests
{
    [Fact]
    public void Its_count_is_the_number_of_its_places() => PlaceGen.Sequence.Sample(p => p.Count == PlaceGen.Flat(p).Count);

    [Fact]
    public void Reversed_it_is_the_reversed_list_and_twice_reversed_itself() => PlaceGen.Sequence.Sample(p =>
        PlaceGen.Flat(p.Reversed()).SequenceEqual(PlaceGen.Flat(p).AsEnumerable().Reverse()) && ReferenceEquals(p.Reversed().Reversed(), p));

    [Fact]
    public void A_slice_is_a_slice_of_the_list() => Gen.Select(PlaceGen.Sequence, Gen.Int[0, 60], Gen.Int[0, 60]).Sample((p, a, b) =>
    {
        var start = Math.Min(a, p.Count);
        var count = Math.Min(b, p.Count - start);
        return PlaceGen.Flat(p.Slice(start, count)).SequenceEqual(PlaceGen.Flat(p).Skip(start).Take(count));
    });

    [Fact]
    public void One_then_another_is_both_lists_joined() => Gen.Select(PlaceGen.Sequence, PlaceGen.Sequence).Sample((a, b) =>
        PlaceGen.Flat(a.Then(b)).SequenceEqual(PlaceGen.Flat(a).Concat(PlaceGen.Flat(b))));

    [Fact]
    public void Its_kinds_are_the_groups_of_the_list() => PlaceGen.Sequence.Sample(p =>
        p.Kinds().Select(k => (k.Place, k.Count)).SequenceEqual(PlaceGen.Flat(p).GroupBy(x => x).Select(g => (g.Key, g.Count()))));

    [Fact]
    public void It_counts_what_the_list_counts() => PlaceGen.Sequence.Sample(p =>
        p.CountWhere(static x => x.IsStitch) == PlaceGen.Flat(p).Count(x => x.IsStitch));

    [Fact]
    public void Its_first_and_last_are_the_list_s() => PlaceGen.Sequence.Where(p => p.Count > 0).Sample(p =>
        p.First == PlaceGen.Flat(p)[0] && p.Last == PlaceGen.Flat(p)[^1]);

    [Fact]
    public void Equal_sequences_hold_equal_places_and_have_one_hash() => Gen.Select(PlaceGen.Sequence, PlaceGen.Sequence).Sample((a, b) =>
        !a.Equals(b) || (PlaceGen.Flat(a).SequenceEqual(PlaceGen.Flat(b)) && a.GetHashCode() == b.GetHashCode()));

    [Fact]
    public void A_million_like_stitches_are_one_run()
    {
        var places = PlaceSequence.Of(PlaceGen.Dc, 1_000_000);
        Assert.Single(Assert.Single(places.Segments).Unit);
        Assert.Equal(1_000_000, places.Count);
    }

    [Fact]
    public void A_repeat_is_kept_as_one_unit()
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]), 100_000);
        var segment = Assert.Single(builder.Build().Segments);
        Assert.Equal((2, 100_000), (segment.Unit.Count, segment.Times));
    }

    [Fact]
    public void A_row_that_is_too_long_is_refused_and_not_laid_out()
    {
        var builder = new PlaceSequenceBuilder();
        builder.Add(PlaceGen.Dc, PlaceSequenceBuilder.MostPlaces);
        Assert.False(builder.TooLong);
        builder.Add(PlaceGen.Dc, 1);
        Assert.True(builder.TooLong);
    }

    [Fact]
    public void Only_stitches_are_counted_and_only_spaces_are_not_worked_like_stitches()
    {
        Assert.True(PlaceGen.Dc.IsStitch);
        Assert.True(new Place(PlaceKind.TurningChain, null, 0).IsStitch);
        Assert.False(new Place(PlaceKind.AddedChain, null, 0).IsStitch);
        Assert.True(new Place(PlaceKind.AddedChain, null, 0).TakesStitches);
        Assert.False(PlaceGen.Space.IsStitch);
        Assert.False(PlaceGen.Space.TakesStitches);
    }
}
