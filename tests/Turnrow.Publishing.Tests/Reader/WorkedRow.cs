namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A row that is done.</summary>
/// <param name="Made">Its places in working order.</param>
/// <param name="Slipped">Stitches at its beginning that were only slipped over.</param>
/// <param name="Left">Stitches at its end that were left.</param>
/// <param name="SkippedChains">Chains from the hook that were skipped.</param>
/// <param name="PassedChains">Of those, the ones that belong to the edge and are only passed over.</param>
/// <param name="Reached">Behind the last place of the row below that was used.</param>
internal sealed record WorkedRow(IReadOnlyList<Place> Made, int Slipped, int Left, int SkippedChains, int PassedChains, int Reached)
{
    /// <summary>What is held and bridged in it.</summary>
    public IReadOnlyList<InnerPart> Inner { get; init; } = [];

    /// <summary>What it joins to other pieces, in working order.</summary>
    public IReadOnlyList<JoinBeside> Joins { get; init; } = [];

    /// <summary>True if its end is joined to its beginning, false if it is left open; null if neither is said.</summary>
    public bool? IsJoined { get; init; }

    /// <summary>What it leaves for a later row, in working order.</summary>
    public IReadOnlyList<Place> Waiting { get; init; } = [];

    /// <summary>Chains that its stitches made at their own feet.</summary>
    public int OwnChains { get; init; }

    /// <summary>What it leaves to the next round of a spiral, in working order.</summary>
    public IReadOnlyList<Place> Unworked { get; init; } = [];

    /// <summary>True if it says that no round is joined from here on.</summary>
    public bool IsSpiral { get; init; }

    /// <summary>True if the ring that it is worked into is closed.</summary>
    public bool ClosesRing { get; init; }

    /// <summary>Yarns taken up, and how many places are made before.</summary>
    public IReadOnlyList<(string Yarn, int From)> Yarns { get; init; } = [];
}
