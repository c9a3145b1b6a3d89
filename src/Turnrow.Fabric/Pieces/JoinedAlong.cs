using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>An edge that a piece has been joined to while it was worked, and how far along it.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="AgainstTheClock">True if its places are met as one goes round the other piece against the clock, its right side facing.</param>
/// <param name="Places">All its places in that order; null if they are not known.</param>
/// <param name="Rest">Those that are left; null if that is not known.</param>
public sealed record JoinedAlong(JoinedEdge Edge, bool AgainstTheClock, PlaceSequence? Places, PlaceSequence? Rest)
{
    /// <summary>True if it is met from its first row to its last, or from the right edge to the left, or in working order.</summary>
    public bool Forwards => Edge.Side.Hand switch
    {
        Rows.Hand.Right => AgainstTheClock,
        Rows.Hand.Left => !AgainstTheClock,
        null when Edge.Side.Stretches is [{ Kind: StretchKind.Foundation }] => !AgainstTheClock,
        _ => AgainstTheClock == (Edge.Side.Stretches is not [{ Kind: StretchKind.Side }] || Edge.Side.Piece.EndsOnRightSide),
    };

    /// <summary>The same after a row, and what of the row can't be worked; null if all can.</summary>
    internal (JoinedAlong After, RowFault? Fault) After(IReadOnlyList<Word> words)
    {
        if (Rest is not { } there) return (this, null);
        var worked = RowWorker.Work(JoinWords.Along(words, Edge), there);
        if (worked.Fault is { } fault) return (this with { Rest = null }, FaultOf(fault, there));
        var left = worked.Words is [.., Leave rest] ? rest.Count : 0;
        return (this with { Rest = there.Slice(there.Count - left, left) }, null);
    }

    // What is told of a row below is told of the edge.
    private RowFault FaultOf(RowFault fault, PlaceSequence there)
    {
        var word = fault.Word is Work { To: not null } work ? work : FirstIn(fault.Word);
        var beyond = fault.Kind == RowFaultKind.NotEnough || there.Count == 0;
        return fault with { Kind = beyond ? RowFaultKind.JoinBeyond : RowFaultKind.JoinElsewhere, Word = word, Needed = Places!.Count, There = there.Count };
    }

    // A skip is told by the line that it stands in.
    private Work FirstIn(Word? word) =>
        JoinWords.Of(Stitches.StitchBook.Slip, new JoinTo(Edge, Target.Next, (word as Skip)?.Count ?? 0)) with { Origin = word?.Origin ?? default };
}
