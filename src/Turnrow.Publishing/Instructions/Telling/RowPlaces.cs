using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Like places side by side that one phrase can name.</summary>
/// <param name="Count">How many.</param>
/// <param name="Name">What they are called.</param>
/// <param name="Top">If it is the top of a chain that stands for a stitch, which; else null.</param>
/// <param name="Added">True if they are chains of a separate length at the row's end.</param>
internal readonly record struct PlaceStretch(int Count, PlaceName Name, ChainTop? Top, bool Added)
{
    /// <summary>True if short rows left them for later.</summary>
    public bool Waited { get; init; }
}

/// <summary>Where the hook is along the row below, and what is ahead.</summary>
/// <param name="below">The places the row is worked over.</param>
/// <param name="openingBelow">How the row below opened; null if it is not known.</param>
/// <param name="firstIsDecrease">True if that chain is one decrease with the stitch beside it: then the place is the top of that stitch.</param>
/// <param name="waited">How many of the places, the last ones, short rows left for later.</param>
internal sealed class RowPlaces(PlaceSequence below, Opening? openingBelow, bool firstIsDecrease = false, int waited = 0)
{
    private PlaceCursor _cursor = new(below);

    /// <summary>The row that made one of the places left for later, by its number among them.</summary>
    public Func<int, Row?>? RowOfWaited { get; init; }

    /// <summary>True if the row below is a round: the chain that it began with is no turning chain.</summary>
    public bool IsOverRound { get; init; }

    /// <summary>True if any of the places is a corner.</summary>
    public bool HasCorners => below.HasCorners;

    /// <summary>Places not yet reached.</summary>
    public int Remaining => _cursor.Remaining;

    /// <summary>Places passed.</summary>
    public int Passed => below.Count - _cursor.Remaining;

    /// <summary>Places that the row before made and that are not yet reached, those left for later not among them.</summary>
    public int RemainingToTurn => Math.Max(0, _cursor.Remaining - waited);

    /// <summary>True if places left for later come behind those of the row before, and none of them is reached.</summary>
    public bool HasTurnAhead => waited > 0 && _cursor.Remaining >= waited;

    /// <summary>The place just passed; null at the beginning.</summary>
    public Place? Last { get; private set; }

    /// <summary>The place so many ahead; null beyond the end.</summary>
    public Place? At(int offset)
    {
        if (offset < 0 || offset >= _cursor.Remaining) return null;
        var ahead = _cursor;
        ahead.Pass(offset);
        return ahead.Next;
    }

    /// <summary>The places before the next corner, but for so many; where none is ahead in a round, its first one comes again behind the end.</summary>
    public int ToCorner(int remain)
    {
        var at = _cursor.ToCorner();
        if (at < 0) at = _cursor.Remaining + Math.Min(remain, new PlaceCursor(below).ToCorner());
        return Math.Max(0, at - remain);
    }

    /// <summary>The cursor, to come back to.</summary>
    public PlaceCursor Cursor => _cursor;

    /// <summary>How many more times the step from an earlier place to here meets the same places.</summary>
    public int LikeStepsAhead(PlaceCursor before) => _cursor.LikeStepsAhead(before);

    /// <summary>Passes places without a word.</summary>
    public void Pass(int count)
    {
        if (count <= 0) return;
        _cursor.Pass(count - 1);
        Last = _cursor.Next;
        _cursor.Pass(1);
    }

    /// <summary>The name of the places ahead, chain tops as the stitch that they stand for.</summary>
    public PlaceName NameOf(int count)
    {
        var ahead = _cursor;
        return Named(ref ahead, count);
    }

    /// <summary>The name of places that are passed over: where the top of a chain is one of several, as where two pieces meet, they are of no one kind.</summary>
    public PlaceName NameOfPassed(int count)
    {
        var name = NameOf(count);
        return count > 1 && name.Kind == PlaceNameKind.Stitch && UntilTop(count) < count ? PlaceName.AnyStitch : name;
    }

    /// <summary>What the place ahead is called where the hook is in it already: the top of a chain is a stitch of no kind.</summary>
    public PlaceName NameOfSame() => TopAt(0) is null ? NameOf(1) : PlaceName.AnyStitch;

    /// <summary>The name of all places from so many ahead on.</summary>
    public PlaceName NameOfFrom(int offset)
    {
        var ahead = _cursor;
        ahead.Pass(offset);
        return Named(ref ahead, ahead.Remaining);
    }

    /// <summary>The name of the spaces ahead: by their chains, if all are alike.</summary>
    public PlaceName SpaceName()
    {
        PlaceName? name = null;
        foreach (var kind in below.Kinds())
        {
            if (kind.Place.Kind == PlaceKind.Space) name = Together(name, kind.Place);
        }

        return name ?? new PlaceName(PlaceNameKind.AnySpace);
    }

    /// <summary>The top of a chain among the places ahead; null if there is none.</summary>
    public ChainTop? TopAt(int offset) => At(offset) is { } place ? TopOf(place, offset) : null;

    /// <summary>Passes as many of the places ahead as one phrase can name.</summary>
    public PlaceStretch Take(int atMost)
    {
        var (count, added) = Reach(atMost);
        var top = count == 1 ? TopAt(0) : null;
        var stretch = new PlaceStretch(count, NameOf(count), top, added) { Waited = waited > 0 && RemainingToTurn == 0 };
        Pass(count);
        return stretch;
    }

    /// <summary>How far the next chain top is; the number of places ahead if there is none within so many.</summary>
    public int UntilTop(int within)
    {
        var ahead = _cursor;
        var count = 0;
        while (count < within)
        {
            if (ahead.AtRepeat(out var segment, out var times) && !HasTop(segment))
            {
                var all = Math.Min((within - count) / segment.UnitCount, times) * segment.UnitCount;
                if (all > 0)
                {
                    ahead.Pass(all);
                    count += all;
                    continue;
                }
            }

            var run = ahead.CurrentRun(within - count);
            if (IsTop(run.Place, count)) return count;
            ahead.Pass(run.Count);
            count += run.Count;
        }

        return within;
    }

    /// <summary>How many of the places ahead do not satisfy a condition before the first that does.</summary>
    public int Until(Func<Place, bool> condition)
    {
        var ahead = _cursor;
        var count = 0;
        while (ahead.Remaining > 0 && !condition(ahead.Next))
        {
            var run = ahead.CurrentRun(int.MaxValue);
            ahead.Pass(run.Count);
            count += run.Count;
        }

        return count;
    }

    /// <summary>How many places there are ahead up to the last that satisfies a condition, so many at the end aside; 0 if none does.</summary>
    public int UpToLast(Func<Place, bool> condition, int aside)
    {
        var ahead = new PlaceCursor(below.Slice(Passed, Remaining - aside).Reversed());
        while (ahead.Remaining > 0 && ahead.CurrentRun(int.MaxValue) is var run && !condition(run.Place)) ahead.Pass(run.Count);
        return ahead.Remaining;
    }

    /// <summary>The name of those among so many places ahead that satisfy a condition.</summary>
    public PlaceName NameOfThose(Func<Place, bool> condition, int count)
    {
        PlaceName? name = null;
        foreach (var kind in below.Slice(Passed, count).Kinds())
        {
            if (condition(kind.Place)) name = Together(name, kind.Place);
        }

        return name ?? PlaceName.AnyStitch;
    }

    /// <summary>How many of so many places ahead satisfy a condition.</summary>
    public int CountOf(Func<Place, bool> condition, int count) => below.Slice(Passed, count).CountWhere(condition);

    /// <summary>True if any of the places from so many ahead on satisfies a condition.</summary>
    public bool AnyFrom(int offset, Func<Place, bool> condition) =>
        offset < Remaining && below.Slice(Passed + offset, Remaining - offset).CountWhere(condition) > 0;

    /// <summary>True if any of the places ahead was added as chains.</summary>
    public bool HasAddedAhead => _cursor.Remaining > 0 && below.Last.Kind == PlaceKind.AddedChain;

    // One chain top alone; else stitches up to the next top, chains before them taken in, chains added behind them not.
    private (int Count, bool Added) Reach(int atMost)
    {
        if (IsTop(_cursor.Next, 0)) return (1, false);
        if (waited > 0 && RemainingToTurn is > 0 and var toTurn) atMost = Math.Min(atMost, toTurn);
        var count = UntilTop(atMost);
        var added = below.Last.Kind == PlaceKind.AddedChain ? below.Segments[^1].Unit[^1].Count : 0;
        if (added == 0) return (count, false);
        var beforeAdded = _cursor.Remaining - added;
        return beforeAdded > 0 ? (Math.Min(count, beforeAdded), false) : (count, beforeAdded == 0 && count == added);
    }

    private static PlaceName Named(ref PlaceCursor ahead, int count)
    {
        PlaceName? name = null;
        var left = Math.Min(count, ahead.Remaining);
        while (left > 0)
        {
            if (ahead.AtRepeat(out var segment, out var times) && segment.UnitCount <= left)
            {
                foreach (var part in segment.Unit) name = Together(name, part.Place);
                var all = Math.Min(left / segment.UnitCount, times) * segment.UnitCount;
                ahead.Pass(all);
                left -= all;
                continue;
            }

            var run = ahead.CurrentRun(left);
            name = Together(name, run.Place);
            ahead.Pass(run.Count);
            left -= run.Count;
        }

        return name ?? PlaceName.AnyStitch;
    }

    private static PlaceName Together(PlaceName? name, Place place) =>
        name is { } known ? known.With(PlaceName.Of(place)) : PlaceName.Of(place);

    private ChainTop? TopOf(Place place, int offset)
    {
        if (!IsTop(place, offset)) return null;
        var beginning = place.Kind == PlaceKind.SkippedChains;
        var (opening, ofRound) = (openingBelow, IsOverRound);
        if (InWaited(offset) is >= 0 and var waiting) (opening, ofRound) = RowOfWaited?.Invoke(waiting) is { } made ? (made.Work?.Opening, made.IsRound) : (null, false);
        if (ofRound && !beginning && opening is { Counts: true } round)
            return new ChainTop(false, round.Space > 0 ? round.Chains - round.Space : 0, round.Chains) { OfRound = true };
        if (opening is not { Space: > 0, Counts: true } longer) return new ChainTop(beginning, 0, 0);
        var chains = beginning ? longer.FirstStitchIn - 1 : longer.Chains;
        return new ChainTop(beginning, chains - longer.Space, chains);
    }

    // Its number among the places left for later, which have the chains of their own rows; below 0 for a place of the row before.
    private int InWaited(int offset) => waited > 0 ? Passed + offset - below.Count + waited : -1;

    private static bool HasTop(PlaceSegment segment)
    {
        foreach (var run in segment.Unit)
        {
            if (IsChain(run.Place)) return true;
        }

        return false;
    }

    private bool IsTop(Place place, int offset)
    {
        if (!IsChain(place)) return false;
        return InWaited(offset) is >= 0 and var waiting ? !RowContext.BeginsWithDecrease(RowOfWaited?.Invoke(waiting)?.Work) : !firstIsDecrease;
    }

    private static bool IsChain(Place place) => place.Kind is PlaceKind.TurningChain or PlaceKind.SkippedChains;
}
