using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Whether what was asked of the ease could be looked at: only a finished measure of the same name tells what it came to.</summary>
internal static class EaseCheck
{
    public static void Add(Context context, SyntaxTree tree, IReadOnlyList<(FinishedStatement Line, FinishedMeasure Measure)> measured)
    {
        // A line that can't be read may be the one that says the finished measure.
        if (tree.Lines.Any(static l => l.Broken)) return;
        if (context.Eases.Count == 0) return;
        var finished = tree.Lines.Select(static l => l.Statement).OfType<FinishedStatement>().Select(static s => s.Name.Text)
            .Concat(measured.Select(static m => m.Measure.Name)).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        foreach (var ease in context.Eases.Values.OrderBy(static e => e.Span.Start))
        {
            if (!finished.Contains(ease.Name, StringComparer.OrdinalIgnoreCase)) context.Findings.Add(EaseUnused.At(ease, finished));
        }
    }
}
