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
        // What a line that can't be read may have accepted is not told: that line is.
        if (tree.Lines.Any(static l => l is { Broken: true, Keyword: "accept" })) found = [.. found.Where(static d => d.Kind.Severity == Severity.Error)];
        if (lines.Count == 0) return (found, []);
        var told = new List<Diagnostic>();
        var accepted = new List<AcceptedWarning>();
        foreach (var diagnostic in found)
        {
            var line = diagnostic.Kind.Severity == Severity.Warning ? lines.Find(l => Names(l, diagnostic.Kind)) : null;
            if (line is null) told.Add(diagnostic);
            else accepted.Add(new AcceptedWarning(diagnostic, line.Reason.Text));
        }

        foreach (var line in lines)
        {
            if (Fault(line, accepted) is { } fault) told.Add(fault);
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
