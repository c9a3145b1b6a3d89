using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A stitch of an earlier piece's last row, by its number.</summary>
/// <param name="RightSide">True if the right side faces.</param>
/// <param name="Piece">The earlier piece.</param>
/// <param name="Nth">Which stitch …</param>
/// <param name="From">… counted from which edge.</param>
/// <param name="OfRound">True if that row is a round: it has no edge, but a beginning.</param>
internal sealed record StitchOfLast(bool RightSide, string Piece, Sized<int> Nth, Hand From, bool OfRound)
{
    /// <summary>True if chains of a bridge are among the stitches counted: a maker would pass them by.</summary>
    public bool OverBridge { get; init; }

    /// <summary>True of the first place of a blanket's rim, which is no round that anyone worked.</summary>
    public bool IsRim { get; init; }

    /// <summary>Both over the sizes of both; null if they are not alike.</summary>
    public StitchOfLast? And(StitchOfLast other) =>
        this with { Nth = other.Nth } == other ? this with { Nth = Nth.And(other.Nth) } : null;

    /// <summary>Which side of the piece faces: <c>with RS of Back facing</c>.</summary>
    public string Facing(Wording words) => $"with {words.Side(RightSide)} of {Names.Title(Piece)} facing";

    /// <summary>The stitch: <c>the 9th st of its last row, counted from its left edge</c>.</summary>
    public string Written(Wording words)
    {
        if (IsRim) return "the top left corner of its rim";
        var nth = Nth.All(static n => n == 1) ? "first" : Nth.WrittenNth();
        var bridged = OverBridge ? $" (each bridging {words.Ch} counts as a {words.St} here)" : string.Empty;
        return $"the {nth} {words.St} {Counted(words)}{bridged}";
    }

    private string Counted(Wording words) => !OfRound ? $"of its last row, counted from its {words.Edge(From)}"
        : From == Hand.Right ? "of its last round" : "of its last round, counted back from where that was joined";
}
