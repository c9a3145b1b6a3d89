using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>The way through the places below.</content>
internal sealed partial class RowRun
{
    // Goes to the place that is meant. Returns the places passed over, or -1 if it can't be reached.
    private int GoTo(Word word, Target target)
    {
        switch (target.Aim)
        {
            case Aim.First when Taken > 0:
                Fail(RowFaultKind.NotFirst, word, 0, Taken);
                return -1;
            case Aim.Last when _cursor.Remaining != 1:
                Fail(RowFaultKind.NotLast, word, 1, _cursor.Remaining);
                return -1;
            case Aim.Same when !_worked:
                Fail(RowFaultKind.NothingBefore, word, 0, 0);
                return -1;
            case Aim.Same when _last.IsCorner && !_removes:
                Fail(RowFaultKind.CornerAgain, word, 0, 0);
                return -1;
            case Aim.Corner:
                return AtCorner(word) ? 0 : -1;
            case Aim.Ring:
                return AtRing(word) ? 0 : -1;
            case Aim.NextOfKind:
                return PassTo(word, target);
            default:
                return 0;
        }
    }

    private int PassTo(Word word, Target target)
    {
        var (passed, inTheWay) = (0, 0);
        while (_cursor.Remaining > 0)
        {
            var run = _cursor.CurrentRun(int.MaxValue);
            if (target.Filter.Has(run.Place)) return passed;
            if (run.Place.IsCorner && !_removes && !EndsOfChain)
            {
                Fail(RowFaultKind.CornerPassed, word, 0, 1);
                return -1;
            }

            // "Next ch-3 sp" never passes over another space: that is left to the designer to say.
            if (target is { OverOthers: false, Filter.Kind: PlaceFilterKind.SpaceOf } && run.Place.Kind == PlaceKind.Space)
            {
                inTheWay = run.Place.Chains;
                break;
            }

            _cursor.Pass(run.Count);
            passed += run.Count;
            if (++_steps > MostSteps) break;
        }

        Fail(RowFaultKind.NoneOfKind, word, 1, inTheWay);
        return -1;
    }

    // Uses up places for stitches; a space among them stops the row unless the word asks for one.
    private bool TakePlaces(Work work, int count)
    {
        if (work.Target.Aim == Aim.Same) return HasLoops(work, _last);
        if (work.Target.Aim == Aim.Ring) return true;
        if (count > _cursor.Remaining)
        {
            Fail(RowFaultKind.NotEnough, work, count, _cursor.Remaining);
            return false;
        }

        var filter = work.Target.Filter;
        while (count > 0)
        {
            if (_cursor.AtRepeat(out var segment, out var units) && segment.UnitCount <= count && AllOf(segment, filter))
            {
                units = Math.Min(units, count / segment.UnitCount);
                if (!HasLoops(work, segment)) return false;
                _last = segment.Unit[^1].Place;
                _cursor.Pass(units * segment.UnitCount);
                count -= units * segment.UnitCount;
                continue;
            }

            var run = _cursor.CurrentRun(count);
            if (!filter.Has(run.Place))
            {
                Fail(AheadOf(run.Place), work, run.Place.Chains, count);
                return false;
            }

            if (!HasLoops(work, run.Place)) return false;
            _last = run.Place;
            _cursor.Pass(run.Count);
            count -= run.Count;
            if (++_steps > MostSteps) Fail(RowFaultKind.TooLong, work, 0, 0);
        }

        return _fault is null;
    }

    private bool HasLoops(Word word, PlaceSegment segment)
    {
        foreach (var run in segment.Unit)
        {
            if (!HasLoops(word, run.Place)) return false;
        }

        return true;
    }

    // A space has no post and no loops of its own: what goes there goes under its chains.
    private bool HasLoops(Word word, Place place) =>
        place.Kind != PlaceKind.Space || !NeedsStitch(word) || Failed(RowFaultKind.SpaceWithoutLoops, word, place.Chains);

    private static bool NeedsStitch(Word word) => word switch
    {
        Work { Stitch: { Takes: 1, Form: { } form } } work => work.Hook.NeedsStitch() || form.Parts.Any(static part => part.Worked is not null && part.Hook.NeedsStitch()),
        Work work => work.Hook.NeedsStitch(),
        Group group => group.Words.Any(NeedsStitch),
        _ => false,
    };

    private static bool AllOf(PlaceSegment segment, PlaceFilter filter)
    {
        foreach (var run in segment.Unit)
        {
            if (!filter.Has(run.Place)) return false;
        }

        return true;
    }

    // The places of a kind up to the last one, and what is passed over on the way. What stands after that one is not passed: it
    // must be worked, skipped or left in words. Up to a corner all is passed: that is said.
    private (int Found, int Passed, int Before) CountAhead(Word word, Target target)
    {
        var filter = target.Filter;
        if (Stretch(word, target) is not (>= 0 and var length)) return (0, 0, 0);
        var ahead = below.Slice(Taken, length);
        var found = ahead.CountWhere(filter.Has);
        if (found > 0 && !HasLoopsEach(word, ahead, filter)) return (0, 0, 0);
        if (target.ToCorner && found == 0 && length > 0) Fail(RowFaultKind.NoneOfKind, word, 1, 0);
        if (found == 0) return (0, 0, 0);
        if (target.ToCorner) return (found, length - found, BeforeFirst(ahead, filter));
        return (found, ahead.Count - found - BeforeFirst(ahead.Reversed(), filter), BeforeFirst(ahead, filter));
    }

    private bool HasLoopsEach(Word word, PlaceSequence ahead, PlaceFilter filter)
    {
        if (!NeedsStitch(word)) return true;
        foreach (var kind in ahead.Kinds())
        {
            if (filter.Has(kind.Place) && !HasLoops(word, kind.Place)) return false;
        }

        return true;
    }

    // How many places lie before the row's end or the next corner, but for those that are to remain; below 0, and a fault, if that can't be.
    private int Stretch(Word word, Target target)
    {
        if (target.ToCorner) return UpToCorner(word, target.Remain);
        if (target.Remain <= _cursor.Remaining) return _cursor.Remaining - target.Remain;
        Fail(RowFaultKind.NotEnough, word, target.Remain, _cursor.Remaining);
        return -1;
    }

    // There is one of the kind.
    private static int BeforeFirst(PlaceSequence places, PlaceFilter filter)
    {
        var cursor = new PlaceCursor(places);
        while (cursor.CurrentRun(int.MaxValue) is var run && !filter.Has(run.Place)) cursor.Pass(run.Count);
        return places.Count - cursor.Remaining;
    }
}
