using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <content>Pieces that are joined to others while they are worked.</content>
public sealed partial class PieceBuilder
{
    private readonly List<JoinedAlong> _joined = [];

    /// <summary>The edges that the piece has been joined to so far.</summary>
    public IReadOnlyList<JoinedAlong> JoinedTo => _joined;

    /// <summary>Makes a piece of motifs that are put together: all that is there to go on from is their rim.</summary>
    public void Assemble(Places.PlaceSequence rim, Origin origin)
    {
        Begin(new AssembledStart(), RowBegins.Round, true);
        _course.InRounds = true;
        var work = new RowWork([], Places.PlaceSequence.Empty, rim, new Opening(null, 0, false, 0, 0));
        var row = new Row(1, true, RowBegins.Round, work, null, null, new WordsPlan([]), 0) { Origin = origin, IsRound = true, Yarn = Yarn };
        Lay(row);
        _course = Course.After(row, _course.Way);
        LastWork = work;
        _begins = RowBegins.Turned;
        FastenOff();
    }

    // Joins what a row joins. A row goes along the other piece with its end; a round lies all along it and runs past it.
    private RowFault? Join(RowWork work)
    {
        if (!work.Joins) return null;
        if (!InRounds && JoinWords.BeforeTheEnd(work.Words) is { } inside) return new RowFault(RowFaultKind.JoinInside, inside, 0, 0, 0);
        var against = HookAt == (InRounds ? Hand.Left : Hand.Right);
        RowFault? fault = null;
        foreach (var edge in JoinWords.EdgesOf(work.Words))
        {
            var at = _joined.FindIndex(j => j.Edge == edge);
            if (at < 0)
            {
                at = _joined.Count;
                var places = edge.Places(against);
                _joined.Add(new JoinedAlong(edge, against, places, places));
            }

            if (_joined[at].AgainstTheClock != against)
            {
                // Where rows may be missing, nobody knows at which end this one ends.
                if (!RowsInDoubt) fault ??= new RowFault(RowFaultKind.JoinOtherEnd, JoinWords.First(work.Words), 0, 0, 0);
                _joined[at] = _joined[at] with { Rest = null };
                continue;
            }

            (_joined[at], var wrong) = _joined[at].After(work.Words);
            fault ??= wrong;
        }

        return fault;
    }

    // How far it has come is not known any more.
    private void LoseJoins()
    {
        for (var i = 0; i < _joined.Count; i++) _joined[i] = _joined[i] with { Rest = null };
    }
}
