using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler;

/// <summary>Collects what is found, and knows the sizes' names.</summary>
internal sealed class Findings(IReadOnlyList<string> sizes)
{
    private readonly List<Func<Diagnostic>> _found = [];
    private readonly HashSet<(string Code, TextSpan Span)> _told = [];
    private bool _quiet;

    /// <summary>The sizes' names; one empty name for a pattern without sizes.</summary>
    public IReadOnlyList<string> SizeNames { get; } = sizes;

    /// <summary>Number of sizes, at least 1.</summary>
    public int Sizes => SizeNames.Count;

    /// <summary>All that was found, in the order in which it was found.</summary>
    public IReadOnlyList<Diagnostic> All => [.. _found.Select(f => f())];

    /// <summary>Does something of which nothing is to be told.</summary>
    public void Quietly(Action work)
    {
        var before = _quiet;
        _quiet = true;
        work();
        _quiet = before;
    }

    /// <summary>Adds a finding; the same fault of the same words is told once.</summary>
    public void Add(Diagnostic diagnostic)
    {
        if (!_quiet && _told.Add((diagnostic.Kind.Code, diagnostic.Span))) _found.Add(() => diagnostic);
    }

    /// <summary>Adds a finding whose text is known only at the end.</summary>
    public void AddLater(Func<Diagnostic> diagnostic)
    {
        if (!_quiet) _found.Add(diagnostic);
    }

    /// <summary>Names of sizes; none if it is all of them, since then there is nothing to tell apart.</summary>
    public IReadOnlyList<string> Names(IReadOnlyList<int> indexes) =>
        indexes.Count == Sizes ? [] : [.. indexes.Select(i => SizeNames[i])];

    /// <summary>"in L", or nothing if all sizes are meant; for the middle of a sentence, with a space before it.</summary>
    public string InSizes(IReadOnlyList<int> indexes) =>
        indexes.Count == Sizes
        ? (Sizes > 1 ? " in every size" : string.Empty)
        : $" in {(AreNumbers ? indexes.Count == 1 ? "size " : "sizes " : string.Empty)}{Join([.. indexes.Select(i => SizeNames[i])])}";

    /// <summary>" in L" for one size; nothing for a pattern in one size.</summary>
    public string InSize(int index) => Sizes == 1 ? string.Empty : $" in {SizeName(index)}";

    /// <summary>" in L" for the first of the sizes, where each has a value of its own; the same of all of them is said of all.</summary>
    public string InSizes<T>(IReadOnlyList<int> indexes, Func<int, T> value) =>
        AreAlike(indexes, value) ? InSizes(indexes) : InSize(indexes[0]);

    /// <summary>A line with each size's value; none where there is one size, or where all of them have the same.</summary>
    public IReadOnlyList<string> Unlike(IReadOnlyList<int> indexes, Func<int, string> value) =>
        AreAlike(indexes, value) ? [] : [Each(indexes, value)];

    /// <summary>"XS, S and M".</summary>
    public static string Join(IReadOnlyList<string> names) => names.Count switch
    {
        0 => string.Empty,
        1 => names[0],
        _ => string.Join(", ", names.Take(names.Count - 1)) + " and " + names[^1],
    };

    /// <summary>"L 4, 1X 1": a value beside each size's name.</summary>
    public string Each(IReadOnlyList<int> indexes, Func<int, string> value) =>
        string.Join(", ", indexes.Select(i => Sizes == 1 ? value(i) : $"{SizeName(i)}{(AreNumbers ? ":" : string.Empty)} {value(i)}"));

    // "4 24 rows" and "in 4" would be read as numbers.
    private bool AreNumbers => SizeNames.Any(name => name.Length > 0 && char.IsAsciiDigit(name[0]) && char.IsAsciiDigit(name[^1]));

    private string SizeName(int index) => AreNumbers ? $"size {SizeNames[index]}" : SizeNames[index];

    private static bool AreAlike<T>(IReadOnlyList<int> indexes, Func<int, T> value) =>
        indexes.All(i => EqualityComparer<T>.Default.Equals(value(i), value(indexes[0])));

    /// <summary>As print writes numbers in sizes: <c>5</c>, or <c>5 (6, 7, 8)</c>.</summary>
    public static string InBrackets<T>(IReadOnlyList<T> values)
    {
        var texts = values.Select(v => v?.ToString() ?? "?").ToList();
        return texts.TrueForAll(t => t == texts[0]) ? texts[0] : $"{texts[0]} ({string.Join(", ", texts.Skip(1))})";
    }
}
