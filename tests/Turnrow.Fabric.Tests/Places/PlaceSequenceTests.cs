using CsCheck;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Fabric.Tests.Places;

/// <summary>A sequence of runs behaves as the plain list of its places does.</summary>
public sealed class PlaceSequenceTests
{
    [Fact]
    public void What_is_beside_a_repeat_and_is_one_more_of_it_goes_into_it() => Gen.Select(PlaceGen.Sequence, Gen.Int[0, 9], Gen.Int[0, 9]).Sample((places, before, behind) =>
    {
        if (before + behind > places.Count) return true;
        // The same row put together of three parts, as a row is that is worked to the side of the repeats below.
        var builder = new PlaceSequenceBuilder();
        builder.Add(places.Slice(0, before));
        builder.Add(places.Slice(before, places.Count - before - behind));
        builder.Add(places.Slice(places.Count - behind, behind));
        return PlaceGen.Flat(builder.Build()).SequenceEqual(PlaceGen.Flat(places));
    });

    [Fact]
    public void A_repeat_that_was_taken_apart_at_both_ends_is_whole_again()
    {
        var (one, other) = (new PlaceRun(Place.TopOf(StitchBook.Double), 5), new PlaceRun(Place.TopOf(StitchBook.Single), 1));
        var whole = new PlaceSequence([new PlaceSegment([other], 1), new PlaceSegment([one, other], 100)]);
        var builder = new PlaceSequenceBuilder();
        builder.Add(whole.Slice(0, 14));
        builder.Add(whole.Slice(14, 586));
        builder.Add(whole.Slice(600, 1));
        Assert.Equal(whole, builder.Build());
    }

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

    [Theory]
    [InlineData(10_000_000, 1, false)]
    [InlineData(5_000_000, 2, false)]
    [InlineData(5_000_001, 2, true)]
    [InlineData(int.MaxValue, int.MaxValue, true)]
    public void Like_places_so_many_times_over_are_refused_beyond_the_most(int count, int times, bool tooLong)
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceSequence.Of(PlaceGen.Dc, count), times);
        Assert.Equal(tooLong, builder.TooLong);
        if (!tooLong) Assert.Equal(10_000_000, builder.Build().Count);
    }

    [Theory]
    [InlineData(5_000_000, false)]
    [InlineData(5_000_001, true)]
    public void A_unit_so_many_times_over_is_refused_beyond_the_most(int times, bool tooLong)
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, Place.SpaceOf(1)]), times);
        Assert.Equal(tooLong, builder.TooLong);
    }

    [Theory]
    [InlineData(2_000_000, false)]
    [InlineData(2_000_001, true)]
    public void The_chains_of_a_space_count_towards_the_most(int times, bool tooLong)
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, Place.SpaceOf(4)]), times);
        Assert.Equal(tooLong, builder.TooLong);
    }

    [Theory]
    [InlineData(10_000, false)]
    [InlineData(10_001, true)]
    public void A_unit_is_refused_beyond_the_most_runs_that_it_may_have(int meshes, bool tooLong)
    {
        // No two of them alike, so that there is no shorter way to write them.
        var unit = new PlaceSequenceBuilder();
        for (var i = 1; i <= meshes; i++)
        {
            unit.Add(PlaceGen.Dc, 1 + (i % 100));
            unit.Add(PlaceGen.Space, 1);
        }

        var builder = new PlaceSequenceBuilder(long.MaxValue);
        builder.AddTimes(unit.Build(), 2);
        Assert.Equal(tooLong, builder.TooLong);
    }

    [Theory]
    [InlineData(3, 1)]
    [InlineData(200, 8)]
    public void A_repeat_within_a_repeat_is_written_in_the_shorter_way(int meshes, int segments)
    {
        var side = new PlaceSequenceBuilder();
        side.Add(PlaceGen.Sc, 1);
        side.AddTimes(PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]), meshes);
        var one = side.Build();
        var square = new PlaceSequenceBuilder();
        square.AddTimes(one, 4);
        var places = square.Build();
        Assert.Equal((4 * one.Count, segments), (places.Count, places.Segments.Count));
        Assert.Equal(PlaceGen.Flat(one.Then(one).Then(one).Then(one)), PlaceGen.Flat(places));
    }

    [Fact]
    public void Repeats_that_follow_each_other_are_one_and_runs_that_do_are_one()
    {
        var mesh = PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]);
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(mesh, 3);
        builder.AddTimes(mesh, 4);
        builder.Add(PlaceGen.Sc, 2);
        builder.Add(PlaceGen.Sc, 3);
        builder.Add(PlaceSequence.Of(PlaceGen.Sc, 4));
        var places = builder.Build();
        Assert.Equal([(2, 7), (1, 1)], places.Segments.Select(segment => (segment.Unit.Count, segment.Times)));
        Assert.Equal(9, places.Segments[1].Count);
    }

    [Fact]
    public void Nothing_none_times_and_less_than_nothing_add_nothing()
    {
        var builder = new PlaceSequenceBuilder();
        builder.Add(PlaceGen.Dc, 0);
        builder.Add(PlaceGen.Dc, -1);
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc]), 0);
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc]), -1);
        builder.AddTimes(PlaceSequence.Empty, 5);
        Assert.Same(PlaceSequence.Empty, builder.Build());
        Assert.Same(PlaceSequence.Empty, PlaceSequence.Of(PlaceGen.Dc, 0));
        Assert.Same(PlaceSequence.Empty, PlaceSequence.Of(PlaceGen.Dc, -1));
    }

    [Fact]
    public void The_same_places_written_down_alike_are_equal_and_one_more_or_another_is_not()
    {
        static PlaceSequence Mesh(int times, Place space)
        {
            var builder = new PlaceSequenceBuilder();
            builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, space]), times);
            return builder.Build();
        }

        Assert.Equal(Mesh(3, PlaceGen.Space), Mesh(3, PlaceGen.Space));
        Assert.Equal(Mesh(3, PlaceGen.Space).GetHashCode(), Mesh(3, PlaceGen.Space).GetHashCode());
        Assert.NotEqual(Mesh(3, PlaceGen.Space), Mesh(4, PlaceGen.Space));
        Assert.NotEqual(Mesh(3, PlaceGen.Space), Mesh(3, PlaceGen.Sc));
        Assert.NotEqual(PlaceSequence.Of(PlaceGen.Dc, 3), PlaceSequence.Of(PlaceGen.Dc, 4));
        Assert.False(PlaceSequence.Empty.Equals(null));
    }

    [Fact]
    public void As_many_places_in_another_order_are_not_equal()
    {
        static PlaceSequence Two((Place Place, int Times) first, (Place Place, int Times) second)
        {
            var builder = new PlaceSequenceBuilder();
            foreach (var (place, times) in new[] { first, second }) builder.AddTimes(PlaceGen.Of([place, PlaceGen.Space]), times);
            return builder.Build();
        }

        Assert.NotEqual(Two((PlaceGen.Dc, 2), (PlaceGen.Sc, 3)), Two((PlaceGen.Dc, 3), (PlaceGen.Sc, 2)));
        Assert.NotEqual(Two((PlaceGen.Dc, 2), (PlaceGen.Sc, 3)), Two((PlaceGen.Sc, 2), (PlaceGen.Dc, 3)));
        Assert.Equal(Two((PlaceGen.Dc, 2), (PlaceGen.Sc, 3)), Two((PlaceGen.Dc, 2), (PlaceGen.Sc, 3)));
    }

    [Fact]
    public void Long_repeats_together_are_too_long()
    {
        var (mesh, pairs) = (PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]), PlaceGen.Of([PlaceGen.Dc, PlaceGen.Sc]));
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(mesh, 3_000_000);
        Assert.False(builder.TooLong);
        builder.AddTimes(pairs, 3_000_000);
        Assert.True(builder.TooLong);
    }

    [Fact]
    public void A_repeat_taken_once_stays_a_repeat_and_a_run_repeated_is_a_run()
    {
        var mesh = new PlaceSequenceBuilder();
        mesh.AddTimes(PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]), 100);
        var once = new PlaceSequenceBuilder();
        once.AddTimes(mesh.Build(), 1);
        Assert.Equal(100, Assert.Single(once.Build().Segments).Times);
        var none = new PlaceSequenceBuilder();
        none.AddTimes(mesh.Build(), 0);
        Assert.Empty(none.Build().Segments);
        var run = new PlaceSequenceBuilder();
        run.AddTimes(PlaceSequence.Of(PlaceGen.Dc, 3), 4);
        Assert.Equal(12, Assert.Single(Assert.Single(run.Build().Segments).Unit).Count);
    }
}
