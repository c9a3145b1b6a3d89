using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Finds the sizes before anything else is read, since every number may be a list in sizes.</summary>
internal static class SizesFinder
{
    /// <summary>The most sizes that a pattern may have.</summary>
    public const int MostSizes = 60;

    /// <summary>The sizes' names; one empty name for a pattern in one size.</summary>
    public static IReadOnlyList<string> Find(SyntaxTree tree, UnreadLines unread, out bool inDoubt, out IReadOnlyList<Diagnostic> found)
    {
        var report = new List<Diagnostic>();
        found = report;
        SizesStatement? first = null;
        inDoubt = false;
        foreach (var line in tree.Lines)
        {
            if (line.Statement is not SizesStatement sizes || sizes.Names.Count == 0) continue;
            if (first is not null)
            {
                report.Add(SaidTwice.At(sizes, first.Span));
                continue;
            }

            first = sizes;
            inDoubt = line.Broken;
        }

        if (first is null) inDoubt = unread.Any("sizes");
        if (first is null && !inDoubt) return [string.Empty];
        if (first is null || (inDoubt && ListsSay(tree) != first.Names.Count)) return Guess(tree);
        if (!inDoubt) Check(first, report);
        var names = new string[Math.Min(first.Names.Count, MostSizes)];
        for (var i = 0; i < names.Length; i++) names[i] = first.Names[i].Text;
        return names;
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

    // The sizes line can't be read: the lists of values tell how many there are, so that the rest can still be checked.
    private static string[] Guess(SyntaxTree tree)
    {
        var count = Math.Min(ListsSay(tree), MostSizes);
        return count == 1 ? [string.Empty] : [.. Enumerable.Range(1, count).Select(i => $"size {i}")];
    }

    // How many values most lists have; 1 if there are no lists.
    private static int ListsSay(SyntaxTree tree)
    {
        var lengths = new Dictionary<int, int>();
        foreach (var line in tree.Lines)
        {
            var value = line.Statement switch
            {
                MeasureStatement measure => measure.Value,
                CountStatement count => count.Value,
                _ => null,
            };
            foreach (var list in value is null ? [] : ListsIn.Expression(value)) lengths[list.Values.Count] = lengths.GetValueOrDefault(list.Values.Count) + 1;
        }

        return lengths.Count == 0 ? 1 : lengths.OrderByDescending(l => l.Value).ThenBy(l => l.Key).First().Key;
    }
}
