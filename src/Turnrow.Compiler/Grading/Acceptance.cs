using Turnrow.Compiler.Diagnostics;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Takes out the warnings that <c>accept</c> lines name, and says which lines name none.</summary>
internal static class Acceptance
{
    public static (IReadOnlyList<Diagnostic> Told, IReadOnlyList<AcceptedWarning> Accepted) Sort(SyntaxTree tree, IReadOnlyList<Diagnostic> found)
    {
        var lines = Lines(tree);
        var unread = Unread(tree);
        if (lines.Count == 0 && unread.Count == 0) return (found, []);
        var told = new List<Diagnostic>();
        var accepted = new List<AcceptedWarning>();
        foreach (var diagnostic in found)
        {
            var line = diagnostic.Kind.Severity == Severity.Warning ? lines.Find(l => Names(l, diagnostic.Kind)) : null;
            if (line is null && diagnostic.Kind.Severity == Severity.Warning && unread.Exists(text => MayName(text, diagnostic.Kind))) continue;
            if (line is null) told.Add(diagnostic);
            else accepted.Add(new AcceptedWarning(diagnostic, line.Reason.Text));
        }

        foreach (var line in lines)
        {
            // What a line that can't be read would have brought up is not known.
            if (Fault(line, accepted) is { } fault && !(fault.Kind == AcceptUnused.Kind && unread.Count > 0)) told.Add(fault);
        }

        return (told, accepted);
    }

    private static List<AcceptStatement> Lines(SyntaxTree tree)
    {
        var lines = new List<AcceptStatement>();
        foreach (var line in tree.Lines)
        {
            if (!line.Broken && line.Statement is AcceptStatement accept) lines.Add(accept);
        }

        return lines;
    }

    private static List<string> Unread(SyntaxTree tree) =>
        [.. tree.Lines.Where(l => l.Broken).Select(l => tree.Source.ToString(l.Span))];

    // A line that accepts something and can't be read may accept this, and so may one that names it.
    private static bool MayName(string line, DiagnosticKind kind) =>
        line.StartsWith("accept", StringComparison.OrdinalIgnoreCase) || line.Contains(kind.Name, StringComparison.OrdinalIgnoreCase);

    private static Diagnostic? Fault(AcceptStatement line, List<AcceptedWarning> accepted)
    {
        var kind = CompilerDiagnostics.All.FirstOrDefault(k => Names(line, k));
        if (kind is null) return AcceptUnknown.At(line.Warning);
        if (kind.Severity == Severity.Error) return AcceptUnknown.Error(line.Warning);
        return accepted.Exists(a => a.Warning.Kind == kind) ? null : AcceptUnused.At(line.Warning);
    }

    private static bool Names(AcceptStatement line, DiagnosticKind kind) =>
        string.Equals(line.Warning.Text, kind.Name, StringComparison.OrdinalIgnoreCase) || string.Equals(line.Warning.Text, kind.Code, StringComparison.OrdinalIgnoreCase);
}
