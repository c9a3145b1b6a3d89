using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Colours;

/// <summary>The yarns that a pattern has, and which of them its lines name.</summary>
internal sealed class YarnBook(Findings findings)
{
    private readonly List<NameSyntax> _yarns = [];
    private YarnBook? _of;

    /// <summary>True if a line that may have named one could not be read: an unknown name then says nothing new.</summary>
    public bool InDoubt { get; set; }

    /// <summary>True once a line says which yarn is worked with.</summary>
    public bool IsSaid { get; private set; }

    /// <summary>True if a line names a yarn wrongly: that one is not used then says nothing new.</summary>
    public bool IsMisnamed { get; private set; }

    /// <summary>The most stitches that a yarn may be carried over.</summary>
    public int MostFloat { get; set; } = FloatLong.Customary;

    /// <summary>The yarns, in the file's order.</summary>
    public IReadOnlyList<NameSyntax> All => _yarns;

    /// <summary>The yarn that a piece begins with; null if the pattern names none.</summary>
    public string? First => _yarns.Count > 0 ? _yarns[0].Text : null;

    /// <summary>The same yarns where what is found is told elsewhere.</summary>
    public YarnBook Telling(Findings elsewhere)
    {
        var same = new YarnBook(elsewhere) { InDoubt = InDoubt, _of = this };
        same._yarns.AddRange(_yarns);
        return same;
    }

    /// <summary>The yarns that seams are made with.</summary>
    public HashSet<string> OfSeams { get; } = new(StringComparer.Ordinal);

    /// <summary>Adds a yarn that a line names.</summary>
    public void Add(NameSyntax name)
    {
        if (Find(name.Text) is null) _yarns.Add(name);
    }

    /// <summary>The yarn that a line names, as its own line spells it; null, and reported, if there is none.</summary>
    public string? Use(NameSyntax name)
    {
        for (var book = this; book is not null; book = book._of) book.IsSaid = true;
        if (Find(name.Text) is { } yarn) return yarn;
        if (!InDoubt) findings.Add(YarnUnknown.At(name.Span, name.Text, [.. _yarns.Select(static y => y.Text)]));
        // It may have been any of them, and was told.
        Misname();
        return null;
    }

    /// <summary>A yarn is named where nothing is worked with it, and that is told.</summary>
    public void Misname()
    {
        for (var book = this; book is not null; book = book._of) book.IsMisnamed = true;
    }

    /// <summary>True if a yarn of the pattern has this name.</summary>
    public bool Has(string name) => Find(name) is not null;

    private string? Find(string name) => _yarns.Find(y => string.Equals(y.Text, name, StringComparison.OrdinalIgnoreCase))?.Text;
}
