using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Motifs;

/// <summary>Motifs in rows, each joined in its last round to those that lie before it and below it; in one size.</summary>
/// <param name="Name">What the whole is called.</param>
/// <param name="Motifs">The kinds of motif, each worked by itself; the first one of all is of the first kind.</param>
/// <param name="Layout">How they lie.</param>
/// <param name="Joined">The others, by the sides on which they are joined.</param>
/// <param name="Rim">The places all round, from the top left corner.</param>
public sealed record Blanket(string Name, IReadOnlyList<Piece> Motifs, MotifLayout Layout, IReadOnlyList<JoinedMotif> Joined, PlaceSequence Rim)
{
    /// <summary>The motif that is worked first, by itself.</summary>
    public Piece Motif => Motifs[0];

    /// <summary>True if each motif stands as the piece does that it is picked up around.</summary>
    public bool IsUpright { get; init; }
}

/// <summary>A motif that is joined in its last round, and how many are so.</summary>
/// <param name="Piece">The motif; only its last round is another one.</param>
/// <param name="To">What lies beside it, along each side that is joined.</param>
/// <param name="Count">How many.</param>
public sealed record JoinedMotif(Piece Piece, IReadOnlyList<Neighbour> To, long Count)
{
    /// <summary>Which kind of motif it is, from 0.</summary>
    public int Kind { get; init; }
}

/// <summary>Which motif lies beside another one where it is joined.</summary>
public enum Neighbour : byte
{
    /// <summary>The one before it in its row.</summary>
    Before,

    /// <summary>The one in the row below.</summary>
    Below,

    /// <summary>Of two in a row below that is set off, the left one.</summary>
    BelowLeft,

    /// <summary>Of two in a row below that is set off, the right one.</summary>
    BelowRight,

    /// <summary>Whichever is there: the motif looks alike from all its sides.</summary>
    Beside,

    /// <summary>Of two that are there, the one that is met behind the other.</summary>
    NextBeside,
}

/// <summary>Why motifs can't be joined to a blanket.</summary>
public enum BlanketFaultKind : byte
{
    /// <summary>The last row is no round with four or six corners, or has the wrong side facing.</summary>
    NoSuchSides,

    /// <summary>Rows with different numbers of motifs: squares lie in rows of one length, hexagons in rows that differ by one motif at most.</summary>
    RowsUnlike,

    /// <summary>Sides that would meet are not alike.</summary>
    SidesUnlike,

    /// <summary>Sides of two kinds of motif are not alike, so that they can't lie in each other's place.</summary>
    KindsUnlike,

    /// <summary>There are fewer motifs than kinds that take turns.</summary>
    KindsMissing,

    /// <summary>Along the sides there is nothing of the kind to join in.</summary>
    NothingToJoin,

    /// <summary>The last round goes over its corners by words that leave no place for the stitch that joins.</summary>
    CornersPassed,

    /// <summary>Stitches are to be joined one by one where several are made at once.</summary>
    SeveralAtOnce,

    /// <summary>The joined round does not come out.</summary>
    NotWorked,
}

/// <summary>Why motifs can't be joined.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Side">Of unlike sides the first of the two, from 0.</param>
public sealed record BlanketFault(BlanketFaultKind Kind, int Side = 0)
{
    /// <summary>Of unlike kinds the one that is not like the first, from 0.</summary>
    public int Motif { get; init; }
}
