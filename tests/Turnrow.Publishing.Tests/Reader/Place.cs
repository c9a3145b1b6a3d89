namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What the maker sees before her hook.</summary>
internal enum Seen
{
    /// <summary>The top of a stitch.</summary>
    Stitch,

    /// <summary>The ch at the beginning of a row that stands for its first stitch.</summary>
    TurningChain,

    /// <summary>Chains skipped at the beginning of a row worked into a chain, that stand for its first stitch.</summary>
    BeginningChain,

    /// <summary>A chain and the stitch beside it, which together are one decrease.</summary>
    ChainAndStitch,

    /// <summary>A chain of the foundation or of chains made where the hook was.</summary>
    Chain,

    /// <summary>A chain of a separate length, joined at the edge.</summary>
    AddedChain,

    /// <summary>The gap under chains.</summary>
    Space,

    /// <summary>A chain of a bridge over stitches that are held.</summary>
    BridgeChain,

    /// <summary>A slip stitch worked to get over the stitches at the edge.</summary>
    SlipStitch,

    /// <summary>The end of a row, at an edge.</summary>
    RowEnd,

    /// <summary>The ring that a piece begins with.</summary>
    Ring,
}

/// <summary>One special stitch, as it was made: its places know it.</summary>
internal sealed class MadeSpecial(string name)
{
    public string Name { get; } = name;
}

/// <summary>One place.</summary>
/// <param name="Seen">What it is.</param>
/// <param name="Stitch">US word of the stitch that it is or stands for.</param>
/// <param name="Chains">Chains of a space, or of the chain that stands for a stitch.</param>
/// <param name="Top">Of a chain that stands for a stitch, the number of its chains that do.</param>
internal sealed record Place(Seen Seen, string Stitch = "", int Chains = 0, int Top = 0)
{
    /// <summary>True if a marker hangs in it.</summary>
    public bool IsMarked { get; init; }

    /// <summary>The special stitch that it was made with; null for none.</summary>
    public MadeSpecial? With { get; init; }

    /// <summary>True of the ch that a round began with.</summary>
    public bool OfRound { get; init; }

    /// <summary>True if the count of a row takes it in.</summary>
    public bool Counts => Seen is Seen.Stitch or Seen.TurningChain or Seen.BeginningChain or Seen.ChainAndStitch;

    /// <summary>True if `last 4 sts` may mean it: a stitch, or what is worked like one.</summary>
    public bool IsLikeAStitch => Seen is not (Seen.Space or Seen.SlipStitch);

    public override string ToString() => Seen switch
    {
        Seen.Stitch => Stitch,
        Seen.Space => $"ch-{Chains} sp",
        Seen.TurningChain => "top of turning ch",
        Seen.BeginningChain => "top of beginning ch",
        Seen.ChainAndStitch => $"ch and {Stitch} together",
        Seen.SlipStitch => "sl st",
        Seen.AddedChain => "added ch",
        Seen.RowEnd => "row-end",
        Seen.Ring => "ring",
        Seen.BridgeChain => "ch of a bridge",
        _ => "ch",
    };
}
