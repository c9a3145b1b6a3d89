namespace Turnrow.Fabric.Stitches;

/// <summary>How rows that begin with a stitch are turned.</summary>
/// <param name="Chains">Length of the turning chain.</param>
/// <param name="Counts">Whether it stands for the row's first stitch.</param>
/// <param name="CountsInFoundation">Whether the chains skipped in the foundation count as a stitch.</param>
/// <param name="FirstStitchIn">Which chain from the hook the foundation's first stitch goes into.</param>
public sealed record TurnRule(int Chains, bool Counts, bool CountsInFoundation, int FirstStitchIn)
{
    /// <summary>
    /// A rule that is the same in the foundation, its first stitch in the chain after the turning chain's; but never in the one next to
    /// the hook, which can't be worked into.
    /// </summary>
    public static TurnRule Of(int chains, bool counts) => new(chains, counts, counts, Math.Max(chains, 1) + 1);

    /// <summary>The trade's custom; where print does both, the chain counts.</summary>
    public static TurnRule CustomOf(Stitch stitch) => Of(stitch.Height, stitch.TurningChainCounts ?? true);

    /// <summary>Chains to be made for a foundation of so many plain stitches: n + (k - 1) - s.</summary>
    public int ChainsFor(int stitches) => stitches + (FirstStitchIn - 1) - (CountsInFoundation ? 1 : 0);

    /// <summary>Plain stitches that a foundation of so many chains gives: c - (k - 1) + s.</summary>
    public int StitchesOf(int chains) => chains - (FirstStitchIn - 1) + (CountsInFoundation ? 1 : 0);
}
