using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <content>
/// Short rows: a row that turns before an edge leaves its last places waiting there, the next row starts at the turn, and every later row that
/// goes to that edge has the waiting places behind those of the row before it.
/// </content>
public sealed partial class PieceBuilder
{
    private readonly WaitingEdge _waitingRight = new();
    private readonly WaitingEdge _waitingLeft = new();

    /// <summary>
    /// Leaves so many stitches for later at an edge: the next row that goes there turns before them. They are counted from where that row would
    /// have ended, those that wait already not among them.
    /// </summary>
    public void LeaveForLater(Hand hand, int count, Origin origin)
    {
        if (count == 0) return;
        _events.Add(new LaterEvent(hand, count, origin));
        var edge = Waiting(hand);
        edge.Asked += count;
        edge.AskedBy = origin;
    }

    /// <summary>How many stitches wait at an edge.</summary>
    public int WaitingAt(Hand hand) => Waiting(hand).Count;

    /// <summary>The row that left the outermost stitches that wait at an edge; 0 if none wait.</summary>
    public int WaitingSince(Hand hand) => Waiting(hand).LeftBy;

    /// <summary>The line of that row.</summary>
    public Origin WaitingFrom(Hand hand) => Waiting(hand).Origin;

    /// <summary>How many stitches are to be left for later at an edge, and no row has gone there yet.</summary>
    public int AskedAt(Hand hand) => Waiting(hand).Asked;

    /// <summary>The line that asked for it last.</summary>
    public Origin AskedFrom(Hand hand) => Waiting(hand).AskedBy;

    private WaitingEdge Waiting(Hand hand) => hand == Hand.Right ? _waitingRight : _waitingLeft;

    // The places of the row before, and behind them what waits where the next row goes, unless it turns before; null if it turns before there is
    // anything to work.
    private PlaceSequence? Reachable(PlaceSequence ahead)
    {
        var edge = Waiting(HookAt.Opposite());
        if (edge.Asked > 0) return edge.Asked < ahead.Count ? ahead.Slice(0, ahead.Count - edge.Asked) : null;
        return edge.Places is { } waiting ? ahead.Then(waiting) : ahead;
    }

    // Of the places that the next row works over, those that wait behind the turn of the row below.
    private int BehindTurn(Step? end)
    {
        var edge = Waiting(HookAt.Opposite());
        return edge.Asked > 0 ? 0 : Math.Max(0, edge.Count + StepBook.GainOf(end));
    }

    private RowFault TooMuchForLater(PlaceSequence ahead)
    {
        var edge = Waiting(HookAt.Opposite());
        return new RowFault(RowFaultKind.NotEnough, new Leave(edge.Asked) { ForLater = true, Origin = edge.AskedBy }, edge.Asked, ahead.Count, 0);
    }

    // What short rows can't do: a foundation's first row turns nowhere, and nothing is shaped, left for good or added at an edge that the row does
    // not reach.
    private RowFault? TurnFault(RowPlan plan, IReadOnlyList<Word> words, Step? start, Step? end)
    {
        var edge = Waiting(HookAt.Opposite());
        var last = words.Count > 0 ? words[^1] as Leave : null;
        var turns = edge.Asked > 0 || last is { ForLater: true, Count: not 0 };
        Word? said = last is { ForLater: true } ? last : edge.Asked > 0 ? new Leave(edge.Asked) { ForLater = true, Origin = edge.AskedBy } : null;
        if (turns && _begins == RowBegins.Foundation) return new RowFault(RowFaultKind.TurnInFirstRow, said, 0, 0, 0);
        if (turns && (end is not null || Shapes(plan, HookAt.Opposite()) || (edge.Asked > 0 && last is { ForLater: false }))) return new RowFault(RowFaultKind.EdgeNotReached, said, 0, 0, 0);
        if (Waiting(HookAt).Count == 0) return null;
        var slips = words.Count > 0 ? words[0] as SlipOver : null;
        return start is not null || Shapes(plan, HookAt) || slips is { Count: > 0 } ? new RowFault(RowFaultKind.EdgeNotReached, slips, 0, 0, 0) : null;
    }

    private Origin AskedOrigin() => (_waitingRight.Asked > 0 ? _waitingRight : _waitingLeft).AskedBy;

    private static bool Shapes(RowPlan plan, Hand hand) => plan is ShapedPlan shaped && shaped.At(hand).Change != 0;

    private ShortWork TakeShortWork(ref RowWork work, Step? end, int number, Origin origin)
    {
        var (edge, startsAtTurn) = (Waiting(HookAt.Opposite()), Waiting(HookAt).Count > 0);
        var leave = work.Words.Count > 0 && work.Words[^1] is Leave { ForLater: true, Count: > 0 } last ? last : null;
        if (edge.Count + edge.Asked == 0 && !startsAtTurn && leave is null) return ShortWork.None;
        var asked = edge.Asked;
        var waitedBelow = asked > 0 ? 0 : edge.Count;
        var left = leave?.Count ?? 0;
        var fresh = Math.Max(0, left - waitedBelow);
        var kept = work.Below.Slice(work.Below.Count - left, fresh);
        if (asked > 0 && _course.Ahead is { } ahead) kept = kept.Then(ahead.Slice(ahead.Count - asked, asked));
        if (leave is not null) work = work with { Words = [.. work.Words.Take(work.Words.Count - 1)], Below = work.Below.Slice(0, work.Below.Count - left) };
        var over = edge.Work(number, Math.Max(0, waitedBelow - left), kept, leave is null ? edge.AskedBy : origin);
        edge.Asked = 0;
        return new ShortWork(startsAtTurn, fresh + asked, edge.Count, WithoutLast(over, StepBook.LeftBy(end))) { Said = asked };
    }

    // Of the waiting stitches that it met, the row works all but those that it leaves for good.
    private static IReadOnlyList<WaitingStitches> WithoutLast(IReadOnlyList<WaitingStitches> over, int left)
    {
        if (left == 0 || over.Count == 0) return over;
        var worked = over.ToList();
        while (left > 0 && worked.Count > 0)
        {
            var part = worked[^1];
            worked.RemoveAt(worked.Count - 1);
            if (part.Count > left) worked.Add(part with { Count = part.Count - left });
            left -= part.Count;
        }

        return worked;
    }

    /// <summary>
    /// From here on it is not known what waits: a line that may have left stitches for later can't be used. A claim tells how many stitches a row
    /// made, not what waits beside it; it is believed again once so many more rows have gone to both edges.
    /// </summary>
    public void DoubtTurns(int rows)
    {
        _events.Add(new TurnsDoubtEvent(rows));
        ForgetWaiting(rows);
    }

    private void ForgetWaiting(int rows)
    {
        _waitingRight.Clear();
        _waitingLeft.Clear();
        _doubts = _doubts with { Rows = true, TurnsBefore = Math.Max(_doubts.TurnsBefore, _rows.Count + rows) };
    }

    // Once a row is not known, neither is what waits and which edge a row reaches. What is asked for now is left in this row or the next, and worked
    // over two rows later.
    private void LoseWaiting(RowPlan? plan)
    {
        var turns = plan is WordsPlan { Words: [.., Leave { ForLater: true }] };
        // A round goes over all that waits, whatever else it does.
        if (InRounds && plan is not null && !turns)
        {
            _waitingRight.Clear();
            _waitingLeft.Clear();
            return;
        }

        if (!turns && _waitingRight.Count + _waitingRight.Asked + _waitingLeft.Count + _waitingLeft.Asked == 0) return;
        ForgetWaiting(4);
    }
}
