namespace Turnrow.Compiler.Tests.Naive;

/// <content>
/// Stitches left for later: each edge has a pile of them, the innermost first. A row that goes to an edge meets the pile behind the places of the
/// row before; one that was asked to turn puts its own last places on the pile first, and meets none.
/// </content>
public sealed partial class PieceWork
{
    private readonly List<Place>[] _waiting = [[], []];
    private readonly int[] _asked = [0, 0];

    private List<Place> WaitingAt(Hand hand) => _waiting[(int)hand];

    private void LeaveForLater(Hand hand, int count) => _asked[(int)hand] += count;

    /// <summary>How many of the places that the next row meets wait behind the turn of the row before; asked before it meets them.</summary>
    private int BehindTurn()
    {
        var end = Frame.Opposite(Frame.StartOf(_side));
        return _asked[(int)end] > 0 ? 0 : WaitingAt(end).Count;
    }

    /// <summary>The places that the next row meets, from right to left; taken from the piles, or put there.</summary>
    private List<Place> Meet()
    {
        var end = Frame.Opposite(Frame.StartOf(_side));
        if (_asked.Sum() + _waiting.Sum(pile => pile.Count) == 0)
            return _places;
        if (result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row == NextRow))
            throw new UnclearException("a step beside stitches that wait");
        var asked = _asked[(int)end];
        _asked[(int)end] = 0;
        if (asked > 0)
        {
            if (asked >= _places.Count)
                throw new UnworkableException("no stitch would remain before the turn");
            if (result.Rows.Count == 0 && result.FoundationChains is not null)
                throw new UnworkableException("the first row over a chain goes over all of it");
            WaitingAt(end).InsertRange(0, LastAt(end, asked));
            _places.RemoveRange(end == Hand.Right ? 0 : _places.Count - asked, asked);
            return _places;
        }
        _places = Ahead();
        WaitingAt(end).Clear();
        return _places;
    }

    /// <summary>What the next row would meet as it stands, and nothing done about it.</summary>
    private List<Place> Ahead()
    {
        var end = Frame.Opposite(Frame.StartOf(_side));
        var asked = _asked[(int)end];
        if (asked > 0)
            return (end == Hand.Right ? _places.Skip(asked) : _places.SkipLast(asked)).ToList();
        return end == Hand.Right
            ? Enumerable.Reverse(WaitingAt(end)).Concat(_places).ToList()
            : _places.Concat(WaitingAt(end)).ToList();
    }

    /// <summary>The places at an edge, the innermost first.</summary>
    private List<Place> LastAt(Hand hand, int count)
    {
        var last = (hand == Hand.Right ? _places.Take(count).Reverse() : _places.TakeLast(count)).ToList();
        return last;
    }

    /// <summary>Of the places just met, those that words leave at the end of the row wait.</summary>
    private void PileUp(int count)
    {
        var end = Frame.Opposite(Frame.StartOf(_side));
        if (count > 0 && result.Rows.Count == 0 && result.FoundationChains is not null)
            throw new UnworkableException("the first row over a chain goes over all of it");
        WaitingAt(end).InsertRange(0, LastAt(end, count));
    }

    private void CheckNothingWaits()
    {
        if (_asked.Sum() + _waiting.Sum(pile => pile.Count) > 0)
            throw new UnworkableException("stitches left for later are never worked over");
    }
}
