namespace Turnrow.Compiler.Tests.Naive;

/// <content>Corners: markers that what is worked over them takes along.</content>
public sealed partial class RowWork
{
    private bool _removes;
    private bool _goesToCorner;

    private IEnumerable<Place> BelowAhead => below.Skip(_at);

    private static bool GoesIntoCorner(Word word) =>
        word is Into { Target.Place: PlaceWord.Corner or PlaceWord.NextCorner } or Group { Target.Place: PlaceWord.Corner or PlaceWord.NextCorner };

    private int BeforeCorner()
    {
        var before = BelowAhead.TakeWhile(place => !place.IsCorner).Count();
        // Behind the last side of a round is its first corner again.
        if (before == Remaining && isRound && below.Any(place => place.IsCorner))
            return Remaining + below.TakeWhile(place => !place.IsCorner).Count();
        return before < Remaining ? before : throw new UnworkableException("no corner is ahead");
    }

    private void TakeCorner()
    {
        _goesToCorner = true;
        if (!TakeAny().IsCorner)
            throw new UnworkableException("the next place is no corner");
    }

    private void PassOne()
    {
        if (TakeAny() is { IsCorner: true, Kind: not Place.Chain } && !_removes)
            throw new UnworkableException("a corner is passed over");
    }

    private void Mark()
    {
        if (_made.Count == 0)
            throw new UnworkableException("there is nothing to mark");
        _made[^1] = _made[^1] with { IsCorner = true };
    }

    /// <summary>Works once; if it took a corner, the middle of what it made is one.</summary>
    private void Carry(Action once, bool isTogether = false)
    {
        var (at, made) = (_at, _made.Count);
        _goesToCorner = false;
        once();
        var taken = below.Skip(at).Take(_at - at).ToList();
        var corners = Enumerable.Range(0, taken.Count).Where(i => taken[i].IsCorner).ToList();
        // The end of a foundation chain has no marker: what goes there as into a corner makes one.
        if (taken.Exists(place => place.IsCorner && place.Kind == Place.Chain) && !_goesToCorner)
            return;
        if (_removes || corners.Count == 0 || _made.Skip(made).Any(place => place.IsCorner))
            return;
        // Worked together, the corner is the middle one; on the way to a place that is looked for, it is that place, the last one taken.
        var expected = isTogether ? (taken.Count - 1) / 2.0 : taken.Count - 1;
        if (corners.Count > 1 || corners[0] != expected)
            throw new UnworkableException("a corner is worked together with others");
        var middle = Middle(made);
        _made[middle] = _made[middle] with { IsCorner = true };
    }

    /// <summary>The middle stitch of an odd number; of an even number the space between the halves.</summary>
    private int Middle(int from)
    {
        var stitches = Enumerable.Range(from, _made.Count - from).Where(i => !_made[i].IsSpace).ToList();
        if (stitches.Count % 2 == 1)
            return stitches[stitches.Count / 2];
        var (left, right) = (stitches[stitches.Count / 2 - 1], stitches[stitches.Count / 2]);
        return right - left == 2 ? left + 1 : throw new UnworkableException("an even number has no middle");
    }
}
