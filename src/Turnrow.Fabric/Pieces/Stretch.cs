using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>What an edge is made of.</summary>
public enum StretchKind : byte
{
    /// <summary>Ends of rows.</summary>
    RowEnds,

    /// <summary>Stitches left unworked or slipped over at a step.</summary>
    LeftStitches,

    /// <summary>The free loops of chains added at a step.</summary>
    AddedChain,

    /// <summary>The foundation, or the place where the piece was picked up.</summary>
    Foundation,

    /// <summary>Stitches of the last row.</summary>
    LastRow,

    /// <summary>Stitches of the last row that no part goes on from, where others do.</summary>
    OpenStitches,

    /// <summary>Stitches held inside a row.</summary>
    HeldStitches,

    /// <summary>The other side of a bridge of chains.</summary>
    BridgeChain,

    /// <summary>Of a last round with corners, what lies between two of them, and both.</summary>
    Side,

    /// <summary>Loops of a row in the middle that the row above left free, since it goes through the other loop of each.</summary>
    FreeLoops,
}

/// <summary>A part of an edge that is all of one kind and has one name.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="FirstRow">Of row-ends the first row; of a step the row before it; of what is held or bridged the row that does so; of free loops the row that they are of.</param>
/// <param name="Count">Number of row-ends, stitches or chains.</param>
/// <param name="Stitch">Of row-ends, the stitch at the rows' ends; else null.</param>
/// <param name="Name">The edge's name there; null if it has none.</param>
public sealed record Stretch(StretchKind Kind, int FirstRow, int Count, Stitch? Stitch, string? Name)
{
    /// <summary>Of a part of a last row that has a name, the stitches between it and the right edge; of a side those before it in the round.</summary>
    public int FromRight { get; init; }

    /// <summary>Of row-ends, the last row.</summary>
    public int LastRow => Kind == StretchKind.RowEnds ? FirstRow + Count - 1 : FirstRow;
}

/// <summary>An edge from the first row to the last: a walk of stretches.</summary>
/// <param name="Hand">Which edge.</param>
/// <param name="Stretches">Its stretches, first row first.</param>
public sealed record EdgeWalk(Hand Hand, IReadOnlyList<Stretch> Stretches)
{
    /// <summary>The names it has, in order, each once.</summary>
    public IEnumerable<string> Names => Stretches.Select(s => s.Name).OfType<string>().Distinct();
}
