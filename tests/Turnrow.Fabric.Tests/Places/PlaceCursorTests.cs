using CsCheck;
using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Fabric.Tests.Places;

public sealed class PlaceCursorTests
{
    [Fact]
    public void However_it_passes_it_stands_before_the_place_that_the_list_has_there() =>
        Gen.Select(PlaceGen.Sequence, Gen.Int[0, 7].Array[0, 20]).Sample((places, steps) =>
        {
            var flat = PlaceGen.Flat(places);
            var cursor = new PlaceCursor(places);
            var at = 0;
            foreach (var step in steps)
            {
                var taken = Math.Min(step, cursor.Remaining);
                cursor.Pass(taken);
                at += taken;
                if (cursor.Remaining != flat.Count - at || (cursor.Remaining > 0 && cursor.Next != flat[at])) return false;
            }

            return true;
        });

    [Fact]
    public void The_run_ahead_is_all_alike_and_no_longer_than_asked() => Gen.Select(PlaceGen.Sequence, Gen.Int[0, 40], Gen.Int[1, 5]).Sample((places, start, most) =>
    {
        if (start >= places.Count) return true;
        var cursor = new PlaceCursor(places);
        cursor.Pass(start);
        var run = cursor.CurrentRun(most);
        return run.Count >= 1 && run.Count <= most && PlaceGen.Flat(places).Skip(start).Take(run.Count).All(p => p == run.Place);
    });

    [Fact]
    public void Like_steps_ahead_meet_exactly_the_same_places() => Gen.Select(PlaceGen.Sequence, Gen.Int[0, 40], Gen.Int[1, 8]).Sample((places, start, step) =>
    {
        if (start + step > places.Count) return true;
        var cursor = new PlaceCursor(places);
        cursor.Pass(start);
        var before = cursor;
        cursor.Pass(step);
        var flat = PlaceGen.Flat(places);
        var first = flat.GetRange(start, step);
        for (var i = 1; i <= cursor.LikeStepsAhead(before); i++)
        {
            if (start + ((i + 1) * step) > flat.Count || !flat.GetRange(start + (i * step), step).SequenceEqual(first)) return false;
        }

        return true;
    });

    [Fact]
    public void Like_steps_ahead_are_all_that_there_are_however_they_are_written() =>
        Gen.Select(PlaceGen.Sequence, Gen.Int[0, 20], Gen.Int[1, 8], Gen.Int[0, 4], Gen.Int[1, 6]).Sample((places, start, step, looks, atMost) =>
        {
            if (start + step > places.Count) return true;
            var cursor = new PlaceCursor(places);
            cursor.Pass(start);
            var before = cursor;
            cursor.Pass(step);
            var flat = PlaceGen.Flat(places);
            var again = 0;
            while (again < atMost && Enumerable.Range(start, ((again + 1) * step) + looks).All(i => i + step < flat.Count && flat[i] == flat[i + step])) again++;
            return cursor.LikeStepsAhead(before, looks, atMost) == again;
        });

    [Fact]
    public void The_chain_that_stands_for_a_stitch_is_that_stitch_to_a_step()
    {
        var cursor = new PlaceCursor(PlaceGen.Of([PlaceGen.Dc with { Kind = PlaceKind.TurningChain }, PlaceGen.Space, PlaceGen.Dc, PlaceGen.Space]));
        var before = cursor;
        cursor.Pass(2);
        Assert.Equal(1, cursor.LikeStepsAhead(before, 0, 9));
    }

    [Theory]
    [InlineData(10, 0, 3, 2)] // 3 of 10 taken: 3 and 3 more, and 1 is over
    [InlineData(10, 0, 5, 1)]
    [InlineData(10, 1, 3, 2)]
    [InlineData(10, 2, 4, 1)]
    [InlineData(10, 0, 10, 0)]
    [InlineData(10, 4, 0, 0)]
    [InlineData(10, 10, 0, 0)]
    public void Along_like_places_a_step_comes_again_as_often_as_they_last(int places, int start, int step, int again) =>
        Assert.Equal(again, Again(PlaceSequence.Of(PlaceGen.Dc, places), start, step));

    [Theory]
    [InlineData(0, 2, 9)]
    [InlineData(0, 4, 4)]
    [InlineData(0, 6, 2)]
    [InlineData(2, 2, 8)]
    [InlineData(1, 2, 8)] // from the middle of a unit to the middle of the next: the last unit can only be begun
    [InlineData(1, 4, 3)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 3, 0)]
    [InlineData(0, 20, 0)]
    [InlineData(18, 2, 0)]
    public void Along_a_repeat_a_step_of_whole_units_comes_again_as_often_as_they_last(int start, int step, int again)
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, PlaceGen.Space]), 10);
        Assert.Equal(again, Again(builder.Build(), start, step));
    }

    [Fact]
    public void A_repeat_is_ahead_only_at_the_beginning_of_a_unit_that_comes_again()
    {
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(PlaceGen.Of([PlaceGen.Dc, PlaceGen.Dc, PlaceGen.Space]), 3);
        var cursor = new PlaceCursor(builder.Build());
        var seen = new List<(bool, int)>();
        for (var i = 0; i <= 9; i++)
        {
            seen.Add((cursor.AtRepeat(out _, out var times), times));
            if (i < 9) cursor.Pass(1);
        }

        Assert.Equal([(true, 3), (false, 3), (false, 3), (true, 2), (false, 2), (false, 2), (false, 1), (false, 1), (false, 1), (false, 0)], seen);
    }

    private static int Again(PlaceSequence places, int start, int step)
    {
        var cursor = new PlaceCursor(places);
        cursor.Pass(start);
        var before = cursor;
        cursor.Pass(step);
        return cursor.LikeStepsAhead(before);
    }
}
