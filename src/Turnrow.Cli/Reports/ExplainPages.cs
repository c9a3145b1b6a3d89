using Turnrow.Compiler;
using Turnrow.Compiler.Diagnostics;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Cli.Reports;

/// <summary>The pages of everything that can be found in a pattern.</summary>
internal static class ExplainPages
{
    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<DiagnosticKind> All { get; } = InOrder([.. SyntaxDiagnostics.All, .. CompilerDiagnostics.All]);

    /// <summary>The one with this name or code, however it is typed; null if there is none.</summary>
    public static DiagnosticKind? Find(string nameOrCode)
    {
        var wanted = nameOrCode.Trim('[', ']');
        foreach (var kind in All)
        {
            if (string.Equals(kind.Name, wanted, StringComparison.OrdinalIgnoreCase) || string.Equals(kind.Code, wanted, StringComparison.OrdinalIgnoreCase))
                return kind;
        }

        return null;
    }

    /// <summary>Writes one page.</summary>
    public static void Write(TextWriter writer, DiagnosticKind kind)
    {
        writer.WriteLine($"{kind.Name} [{kind.Code}], {(kind.Severity == Severity.Error ? "an error" : "a warning")}\n");
        writer.WriteLine(kind.Page.ReplaceLineEndings("\n").Trim('\n'));
        writer.WriteLine("\nThis gives it:\n");
        WriteExample(writer, kind.Bad);
        WriteFindings(writer, kind);
        writer.WriteLine("\nThis does not:\n");
        WriteExample(writer, kind.Good);
    }

    /// <summary>Writes the list of all.</summary>
    public static void WriteList(TextWriter writer)
    {
        writer.WriteLine("What can be found in a pattern; for a page with examples: turnrow explain NAME\n");
        var width = All.Count == 0 ? 0 : All.Max(kind => kind.Name.Length);
        foreach (var kind in All)
            writer.WriteLine($"  {kind.Name.PadRight(width)}  {kind.Code}  {(kind.Severity == Severity.Error ? "error" : "warning")}");
    }

    private static void WriteExample(TextWriter writer, string text)
    {
        foreach (var line in text.ReplaceLineEndings("\n").Trim('\n').Split('\n')) writer.WriteLine(line.Length == 0 ? line : "    " + line);
    }

    // What turnrow says of the bad example, as it would say it of a designer's file. An example that can't be printed has none.
    private static void WriteFindings(TextWriter writer, DiagnosticKind kind)
    {
        if (kind.BadFile is not null) return;
        var compilation = Compilation.Of(new SourceText("example.turnrow", kind.Bad.ReplaceLineEndings("\n").Trim('\n') + "\n"));
        if (compilation.Diagnostics.Count == 0) return;
        writer.WriteLine("\nIt says:\n");
        foreach (var finding in compilation.Diagnostics) WriteExample(writer, DiagnosticPrinter.Print(finding, compilation.Tree.Source, false));
    }

    private static DiagnosticKind[] InOrder(DiagnosticKind[] kinds)
    {
        Array.Sort(kinds, static (a, b) => string.CompareOrdinal(a.Code, b.Code));
        return kinds;
    }
}
