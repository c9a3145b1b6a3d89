using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>One row being worked: how far it has come over the places below, and what it has made.</summary>
internal sealed partial class RowRun(PlaceSequence below, bool isRound, int waiting, int begunAt)
{
    private const int MostSteps = 200_000;

    private PlaceCursor _cursor = new(below);
    private PlaceSequenceBuilder _tops = new();
    private RowFault? _fault;
    private int _steps;
    private bool _worked;
    private bool _chained;
    private bool _left;

    private int Taken => below.Count - _cursor.Remaining;

    public WorkedRow Row(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++) _removes |= words[i] is RemoveCorners;
        var done = InOrder(words);
        if (_fault is null && _tops.TooLong) Fail(RowFaultKind.TooLong, null, 0, 0);
        EndRing();
        EndRound(done);
        if (_fault is null && _cursor.Remaining > 0) Fail(RowFaultKind.LeftOver, null, 0, _cursor.Remaining);
        return new WorkedRow(done, _tops.Build(), _fault);
    }

    private List<Word> InOrder(IReadOnlyList<Word> words)
    {
        var done = new List<Word>(words.Count);
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i];
            if (++_steps > MostSteps || _tops.TooLong) Fail(RowFaultKind.TooLong, word, 0, 0);
            if (_left && _fault is null) Fail(RowFaultKind.AfterLeave, word, 0, 0);
            if (_fault is not null) break;
            One(word, done);
        }

        return done;
    }

    private void One(Word word, List<Word> done)
    {
        switch (word)
        {
            case Work work: Stitches(work, done); break;
            case Group group: InOnePlace(group, done); break;
            case Repeat repeat: Times(repeat, done); break;
            case Chains chains: Chain(chains, done); break;
            case Skip skip when MeetsCorner(skip.Count): Fail(RowFaultKind.CornerPassed, skip, 0, 1); break;
            case Skip skip: PassOver(skip, skip.Count, done); break;
            case SlipOver slip: Slip(slip, done); break;
            case Leave leave: LeaveUnworked(leave, done); break;
            case Hold hold when MeetsCorner(hold.Count): Fail(RowFaultKind.CornerPassed, hold, 0, 1); break;
            case Hold hold: PassOver(hold, hold.Count, done); break;
            case Bridge bridge: _tops.Add(new Place(PlaceKind.BridgeChain, null, 0), bridge.Count); done.Add(bridge); break;
            case MarkCorner mark: Mark(mark, done); break;
            case MarkerHere: Fail(RowFaultKind.MarkerMoved, word, 0, 1); break;
            case RemoveCorners or ChangeYarn: done.Add(word); break;
            case Spread spread: SpreadOut(spread, done); break;
            case ByPlace each: PlaceByPlace(each, done); break;
        }
    }

    private void Chain(Chains chains, List<Word> done)
    {
        if (JoinWords.GoesOnSpace(done, done.Count)) _tops.WidenLast(chains.Count);
        else _tops.Add(Place.SpaceOf(chains.Count), 1);
        _chained = true;
        done.Add(chains);
    }

    private void Fail(RowFaultKind kind, Word? word, int needed, int there) =>
        _fault ??= new RowFault(kind, word, needed, there, Taken);

    private void PassOver(Word word, int count, List<Word> done)
    {
        if (count > _cursor.Remaining)
        {
            Fail(RowFaultKind.NotEnough, word, count, _cursor.Remaining);
            return;
        }

        _named = null;
        _cursor.Pass(count);
        done.Add(word);
    }

    private void Slip(SlipOver slip, List<Word> done)
    {
        if (Taken > 0) Fail(RowFaultKind.SlipOverInside, slip, slip.Count, _cursor.Remaining);
        else PassOver(slip, slip.Count, done);
    }

    private void LeaveUnworked(Leave leave, List<Word> done)
    {
        var count = leave.Count < 0 ? _cursor.Remaining : leave.Count;
        _left = count > 0;
        PassOver(leave with { Count = count }, count, done);
    }
}
