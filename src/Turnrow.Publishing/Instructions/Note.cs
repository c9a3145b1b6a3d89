namespace Turnrow.Publishing.Instructions;

/// <summary>What words of the work need explained once for the whole pattern: whatever is printed asks for its notes.</summary>
internal enum Note : byte
{
    /// <summary>Stitches that are held for another piece.</summary>
    HeldStitches,

    /// <summary>A chain that the first row skips, as against one made at a turn.</summary>
    BeginningChain,

    /// <summary>A chain and the stitch behind it that are one decrease.</summary>
    DecreaseAtStart,

    /// <summary>Stitches that wait beside the turn of a short row.</summary>
    WaitingStitches,

    /// <summary>Markers that stay with their corners.</summary>
    Markers,

    /// <summary>A piece that is joined to another while it is worked.</summary>
    JoinedAsWorked,

    /// <summary>The sides of a piece in rounds, by their numbers.</summary>
    Sides,

    /// <summary>Which edge is right and which is left.</summary>
    RightAndLeft,
}
