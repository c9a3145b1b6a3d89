using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>What a chart uses and its legend explains, in the order in which the legend lists it.</summary>
internal enum LegendSign
{
    /// <summary>One stitch.</summary>
    Stitch,

    /// <summary>Several in one place.</summary>
    Increase,

    /// <summary>Several together.</summary>
    Decrease,

    /// <summary>Several together in one place.</summary>
    Cluster,

    /// <summary>Several with a name of their own.</summary>
    Special,

    /// <summary>A yarn.</summary>
    Yarn,

    /// <summary>Under the back or front loop, round the post.</summary>
    Hook,

    /// <summary>A chain.</summary>
    Chain,

    /// <summary>Chains that stand for a row's first stitch.</summary>
    CountedChain,

    /// <summary>Chains that stand for the first leg of a decrease at a row's start.</summary>
    DecreasingChain,

    /// <summary>Chains that stand at a row's start and count for nothing.</summary>
    UncountedChain,

    /// <summary>Slip stitches over stitches that are left.</summary>
    SlipOver,

    /// <summary>A slip stitch that joins a round to its beginning.</summary>
    RoundJoin,

    /// <summary>A stitch into the piece that lies beside.</summary>
    JoinBeside,

    /// <summary>Stitches that stay unworked.</summary>
    Unworked,

    /// <summary>Stitches that wait for a later row.</summary>
    Waiting,

    /// <summary>A later row's stitches that stand on them.</summary>
    OverWaiting,

    /// <summary>The edge that a piece is worked on.</summary>
    Base,

    /// <summary>The ring in the middle.</summary>
    Ring,

    /// <summary>Where work starts.</summary>
    Start,

    /// <summary>Which way rounds are read.</summary>
    Way,

    /// <summary>Where yarn is joined.</summary>
    Join,

    /// <summary>Where yarn is cut.</summary>
    Cut,

    /// <summary>Right-side and wrong-side rows.</summary>
    Sides,

    /// <summary>A row's number and count.</summary>
    Number,

    /// <summary>Stitches not drawn.</summary>
    Fold,

    /// <summary>Rows not drawn.</summary>
    HiddenRows,
}

/// <summary>One entry of a legend.</summary>
internal readonly record struct LegendEntry(LegendSign Sign, Stitch? Stitch, HookInto Hook, int Count);

/// <summary>Gathers the entries while a chart is drawn.</summary>
internal sealed class Legend
{
    private readonly HashSet<LegendEntry> _known = [];
    private readonly List<LegendEntry> _entries = [];

    /// <summary>The entries, signs of one kind together, lower stitches first.</summary>
    public IEnumerable<LegendEntry> Entries => _entries
        .OrderBy(static entry => entry.Sign)
        .ThenBy(static entry => entry.Stitch?.Height ?? 0)
        .ThenBy(static entry => entry.Count)
        .ThenBy(static entry => entry.Hook);

    /// <summary>Adds an entry if it is not there.</summary>
    public void Add(LegendSign sign, Stitch? stitch = null, HookInto hook = HookInto.BothLoops, int count = 0)
    {
        var entry = new LegendEntry(sign, stitch, hook, count);
        if (_known.Add(entry)) _entries.Add(entry);
    }

    /// <summary>Adds a sign that is explained once, with the first number that is known of it as the sample.</summary>
    public void AddOnce(LegendSign sign, int sample)
    {
        var at = _entries.FindIndex(entry => entry.Sign == sign);
        if (at < 0) Add(sign, count: sample);
        else if (_entries[at].Count == 0) _entries[at] = _entries[at] with { Count = sample };
    }
}
