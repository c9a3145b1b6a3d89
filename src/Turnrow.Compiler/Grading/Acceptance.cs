using Turnrow.Compiler.Diagnostics;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Takes out the warnings that <c>accept</c> lines name, and says which lines name none.</summary>
internal sealed class Acceptance
{
    private readonly List<AcceptStatement> _lines = [];
    private readonly HashSet<AcceptStatement> _used = [];
    private readonly List<string> _unread;
    private readonly WarningSubjects _subjects;

    private Acceptance(SyntaxTree tree)
    {
        foreach (var line in tree.Lines)
        {
            if (!line.Broken && line.Statement is AcceptStatement accept) _lines.Add(accept);
        }

        // The line that says most is asked first: of one count among all that could be meant.
        _lines = [.. _lines.Where(static l => l.Of is not null), .. _lines.Where(static l => l.Of is null)];
        _unread = [.. tree.Lines.Where(l => l.Broken).Select(l => tree.Source.ToString(l.Span))];
        _subjects = new WarningSubjects(tree);
    }

    public static (IReadOnlyList<Diagnostic> Told, IReadOnlyList<AcceptedWarning> Accepted) Sort(SyntaxTree tree, IReadOnlyList<Diagnostic> found)
    {
        if (!tree.Lines.Any(static l => l.Broken || l.Statement is AcceptStatement)) return (found, []);
        return new Acceptance(tree).Sort(found);
    }

    private (List<Diagnostic> Told, List<AcceptedWarning> Accepted) Sort(IReadOnlyList<Diagnostic> found)
    {
        var told = new List<Diagnostic>();
        var accepted = new List<AcceptedWarning>();
        var warned = new List<Diagnostic>();
        foreach (var diagnostic in found)
        {
            var warning = diagnostic.Kind.Severity == Severity.Warning;
            if (warning) warned.Add(diagnostic);
            var line = warning ? _lines.Find(l => Accepts(l, diagnostic)) : null;
            if (line is not null)
            {
                _used.Add(line);
                accepted.Add(new AcceptedWarning(diagnostic, line.Reason.Text));
            }
            else if (!warning || !_unread.Exists(text => MayName(text, diagnostic.Kind) || "accept".StartsWith(text.Trim(), StringComparison.OrdinalIgnoreCase)))
            {
                told.Add(diagnostic);
            }
        }

        foreach (var line in _lines)
        {
            // What a line that can't be read would have brought up is not known.
            if (Fault(line, warned) is { } fault && !(fault.Kind == AcceptUnused.Kind && _unread.Count > 0)) told.Add(fault);
        }

        return (told, accepted);
    }

    private bool Accepts(AcceptStatement line, Diagnostic warning) =>
        Names(line, warning.Kind) && (line.Of is not { } of || _subjects.IsAbout(warning, of.Text));

    private Diagnostic? Fault(AcceptStatement line, List<Diagnostic> warned)
    {
        // What it accepts is a warning, and is not looked up among all.
        if (_used.Contains(line)) return null;
        var kind = CompilerDiagnostics.All.FirstOrDefault(k => Names(line, k));
        if (kind is null) return AcceptUnknown.At(line.Warning);
        if (kind.Severity == Severity.Error) return AcceptUnknown.Error(line.Warning);
        return AcceptUnused.At(line, [.. warned.Where(w => w.Kind == kind).Select(_subjects.Of).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)]);
    }

    // A line that accepts something and can't be read may accept this, and so may one that names it.
    private static bool MayName(string line, DiagnosticKind kind) =>
        line.StartsWith("accept", StringComparison.OrdinalIgnoreCase) || line.Contains(kind.Name, StringComparison.OrdinalIgnoreCase);

    private static bool Names(AcceptStatement line, DiagnosticKind kind) =>
        string.Equals(line.Warning.Text, kind.Name, StringComparison.OrdinalIgnoreCase) || string.Equals(line.Warning.Text, kind.Code, StringComparison.OrdinalIgnoreCase);
}
