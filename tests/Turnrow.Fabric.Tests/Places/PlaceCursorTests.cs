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
}
