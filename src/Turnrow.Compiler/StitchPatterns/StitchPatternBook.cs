using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>The stitch patterns that a file defines or takes from others, by name.</summary>
internal sealed class StitchPatternBook(Findings findings)
{
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, TextSpan> _later = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>True if a line that may have defined one could not be read: an unknown name then says nothing new.</summary>
    public bool InDoubt { get; set; }

    /// <summary>True if the file has any, or may have.</summary>
    public bool AreThere => InDoubt || _entries.Count > 0;

    /// <summary>The names known so far.</summary>
    public IEnumerable<string> Names => _entries.Keys;

    /// <summary>Says that a definition stands further down.</summary>
    public void Announce(NameSyntax name) => _later.TryAdd(name.Text, name.Span);

    /// <summary>True if a definition of this name stands further down and nowhere above.</summary>
    public bool IsLater(string name) => _later.ContainsKey(name) && !_entries.ContainsKey(name);

    /// <summary>Adds a stitch pattern; without its rows where an error leaves them in doubt. A second one of the name is reported.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="span">Where it is defined.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="inRounds">Makes of it what is worked in rounds; null if it can't be.</param>
    public void Define(string name, TextSpan span, StitchPattern? pattern, Func<RoundWay, PictureInRounds>? inRounds = null)
    {
        if (IsNew(name, span)) _entries[name] = new Entry(span, pattern) { MakeRounds = inRounds };
    }

    /// <summary>Adds a stitch pattern of another file, of which only those are looked into that are asked for: a library costs what is taken from it.</summary>
    public void Define(string name, TextSpan span, Func<StitchPattern?> make, Func<RoundWay, PictureInRounds>? inRounds)
    {
        if (IsNew(name, span)) _entries[name] = new Entry(span, null) { Make = make, MakeRounds = inRounds };
    }

    /// <summary>The same pattern in rounds that follow each other in some way; null if its rows are written for one way of working.</summary>
    public PictureInRounds? InRounds(string name, RoundWay way)
    {
        if (!_entries.TryGetValue(name, out var entry) || entry.MakeRounds is not { } make || Made(entry) is null) return null;
        // A spiral is read as joined rounds are.
        if (way == RoundWay.Spiral) way = RoundWay.Joined;
        return entry.Rounds.TryGetValue(way, out var made) ? made : entry.Rounds[way] = make(way);
    }

    /// <summary>Where a name is defined; null if it is not.</summary>
    public TextSpan? SpanOf(string name) => _entries.TryGetValue(name, out var entry) ? entry.Span : null;

    /// <summary>The stitch pattern of a name, if it is known and sound.</summary>
    public StitchPattern? Find(string name) => _entries.TryGetValue(name, out var entry) ? Made(entry) : null;

    /// <summary>The stitch pattern that a line names; null, and reported, if there is none.</summary>
    /// <param name="name">The name.</param>
    /// <param name="isStitch">True if it names a stitch.</param>
    public StitchPattern? Use(NameSyntax name, bool isStitch)
    {
        if (_entries.TryGetValue(name.Text, out var entry)) return Made(entry);
        if (!InDoubt) findings.Add(PatternUnknown.At(name.Span, name.Text, isStitch, Names, _later.TryGetValue(name.Text, out var later) ? later : null));
        return null;
    }

    private bool IsNew(string name, TextSpan span)
    {
        if (!_entries.TryGetValue(name, out var earlier)) return true;
        findings.Add(DefinedTwice.At(span, name, earlier.Span));
        return false;
    }

    private static StitchPattern? Made(Entry entry)
    {
        if (entry.Make is not { } make) return entry.Pattern;
        entry.Make = null;
        return entry.Pattern = make();
    }

    private sealed class Entry(TextSpan span, StitchPattern? pattern)
    {
        public TextSpan Span => span;

        public StitchPattern? Pattern { get; set; } = pattern;

        public Func<StitchPattern?>? Make { get; set; }

        public Func<RoundWay, PictureInRounds>? MakeRounds { get; init; }

        // Made when they are first asked for: most pictures are worked in rows.
        public Dictionary<RoundWay, PictureInRounds> Rounds { get; } = [];
    }
}
