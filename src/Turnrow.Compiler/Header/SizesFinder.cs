using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Finds the sizes before anything else is read, since every number may be a list in sizes.</summary>
internal static class SizesFinder
{
    /// <summary>The most sizes that a pattern may have.</summary>
    public const int MostSizes = 60;

    /// <summary>The sizes' names; one empty name for a pattern in one size.</summary>
    public static IReadOnlyList<string> Find(SyntaxTree tree, out bool inDoubt, out IReadOnlyList<Diagnostic> found)
    {
        var report = new List<Diagnostic>();
        found = report;
        inDoubt = tree.Lines.Any(l => l.Broken && l.Keyword is null or "sizes");
        SizesStatement? first = null;
        foreach (var line in tree.Lines)
        {
            if (line.Statement is not SizesStatement sizes || sizes.Names.Count == 0) continue;
            if (first is not null) report.Add(SaidTwice.At(sizes, first.Span));
            else first = sizes;
        }

        if (first is null) return inDoubt ? Guess(tree) : [string.Empty];
        Check(first, report);
        return [.. first.Names.Take(MostSizes).Select(n => n.Text)];
    }

    private static void Check(SizesStatement sizes, List<Diagnostic> report)
    {
        if (sizes.Names.Count > MostSizes) report.Add(SizesTooMany.At(sizes.Names[MostSizes].Span, MostSizes));
        var known = new Dictionary<string, NameSyntax>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in sizes.Names)
        {
            if (!known.TryAdd(name.Text, name)) report.Add(DefinedTwice.At(name.Span, name.Text, known[name.Text].Span));
        }
    }

    // The sizes line can't be read: the longest list of values tells how many there are, so that the rest can still be checked.
    private static string[] Guess(SyntaxTree tree)
    {
        var count = 1;
        foreach (var line in tree.Lines)
        {
            if (line.Statement is MeasureStatement { Value: SizesExpression m }) count = Math.Max(count, m.Values.Count);
            if (line.Statement is CountStatement { Value: SizesExpression c }) count = Math.Max(count, c.Values.Count);
        }

        count = Math.Min(count, MostSizes);
        return count == 1 ? [string.Empty] : [.. Enumerable.Range(1, count).Select(i => $"size {i}")];
    }
}
