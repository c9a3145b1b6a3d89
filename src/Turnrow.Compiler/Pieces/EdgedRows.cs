using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Shaping;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// Plans rows of a stitch pattern between plain edges, in one size. In each row a repeat joins the pattern at an edge that has room for one; it
/// leaves as late as may be, where the stitches of the edge are used up. Where that leads to a row that can't be worked, it leaves in an earlier one.
/// </summary>
/// <param name="pattern">The pattern and its edges.</param>
/// <param name="changes">What is done at the edges, by the row's number from 1.</param>
/// <param name="rows">How many rows.</param>
/// <param name="gains">Stitches that steps said before add at the right and the left edge, by the row's number from 1.</param>
internal sealed class EdgedRows(EdgedPattern pattern, EdgeChanges changes, int rows, Func<int, (int Right, int Left)> gains)
{
    private const int TrialsPerRow = 12;
    private const int MoreTrials = 5_000;

    private readonly List<Step> _done = [];
    private int _lastRight = -1;
    private int _lastLeft = -1;

    /// <summary>Number of the row that can't be worked, if there is one.</summary>
    public int Stuck { get; private set; }

    /// <summary>The plan of each row; null if there is none for all of them.</summary>
    /// <param name="state">Where the piece stands, steps left out.</param>
    /// <param name="before">Index of the pattern's row below; below 0 for none.</param>
    /// <param name="ahead">What the first row is worked over, in its working order.</param>
    /// <param name="start">The edge where it starts.</param>
    public IReadOnlyList<WordsPlan>? Plan(EdgedState state, int before, PlaceSequence ahead, Hand start)
    {
        var trials = (long)rows * TrialsPerRow + MoreTrials;
        if (pattern.Stepped(state, before, gains(1).Right, gains(1).Left) is not { } first) return null;
        var step = new Step(first, start, MovesFor(first, 1));
        while (_done.Count < rows)
        {
            if (--trials < 0) return null;
            if (step.Next() is not { } move)
            {
                Stuck = Math.Max(Stuck, _done.Count + 1);
                if (_done.Count == 0) return null;
                step = _done[^1];
                _done.RemoveAt(_done.Count - 1);
                continue;
            }

            var (right, left) = changes.Of(_done.Count + 1);
            var below = _done.Count == 0 ? ahead : null;
            var lastIndex = _done.Count == 0 ? 0 : _done[^1].State.Next;
            if (pattern.Row(step.State, below, lastIndex, step.Start, right.Change, left.Change, move) is not { } row) continue;
            var (addedRight, addedLeft) = _done.Count + 1 < rows ? gains(_done.Count + 2) : (0, 0);
            if (pattern.Stepped(row.State, step.State.Next, addedRight, addedLeft) is not { } next) continue;
            step.Plan = row.Plan;
            _done.Add(step);
            step = new Step(next, step.Start.Opposite(), _done.Count < rows ? MovesFor(next, _done.Count + 1) : []);
        }

        return [.. _done.Select(static s => s.Plan!)];
    }

    // At each edge: join where there is room, else stay, else leave. An edge that is shaped again keeps a stitch to be shaped in.
    private RepeatMove[] MovesFor(EdgedState state, int row)
    {
        var moves = new List<RepeatMove>();
        foreach (var right in MovesAt(state, Hand.Right, row))
        {
            foreach (var left in MovesAt(state, Hand.Left, row)) moves.Add(new RepeatMove(right, left));
        }

        return [.. moves];
    }

    private IEnumerable<int> MovesAt(EdgedState state, Hand hand, int row)
    {
        var shapedAgain = LastChange(hand) >= row;
        if (state.At(hand) >= pattern.Pattern.Multiple + (shapedAgain ? 1 : 0)) yield return 1;
        yield return 0;
        if (shapedAgain) yield return -1;
    }

    private int LastChange(Hand hand)
    {
        var known = hand == Hand.Right ? _lastRight : _lastLeft;
        if (known >= 0) return known;
        for (known = rows; known > 0; known--)
        {
            var (right, left) = changes.Of(known);
            if ((hand == Hand.Right ? right : left).Change.Change != 0) break;
        }

        if (hand == Hand.Right) _lastRight = known;
        else _lastLeft = known;
        return known;
    }

    // A row with the ways to work it that are not tried yet.
    private sealed class Step(EdgedState state, Hand start, RepeatMove[] moves)
    {
        private int _tried;

        public EdgedState State => state;

        public Hand Start => start;

        public WordsPlan? Plan { get; set; }

        public RepeatMove? Next() => _tried < moves.Length ? moves[_tried++] : null;
    }
}
