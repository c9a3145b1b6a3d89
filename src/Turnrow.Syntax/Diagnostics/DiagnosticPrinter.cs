using System.Globalization;
using Turnrow.Syntax.Diagnostics.Showing;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics;

/// <summary>
/// Shows a diagnostic as a person reads it: what and where, the source itself with the words marked, the arithmetic, what to do.
/// A pure function; whether there is colour the command decides.
/// </summary>
public static class DiagnosticPrinter
{
    private const int MostLines = 3;
    private const string Gutter = "      | ";
    private const string Indent = "      ";

    /// <summary>The diagnostic in lines, each ended by a line feed.</summary>
    /// <param name="diagnostic">What was found.</param>
    /// <param name="source">The text it was found in.</param>
    /// <param name="colour">True to colour it for a terminal.</param>
    public static string Print(Diagnostic diagnostic, SourceText source, bool colour = false)
    {
        var ink = new Ink(colour);
        Head(ink, diagnostic, source);
        Source(ink, source, diagnostic.Span, MarkInk(diagnostic));
        foreach (var line in diagnostic.Ledger) ink.Write(Indent).Write(Shown.Plain(line)).EndLine();
        foreach (var related in diagnostic.Related) Second(ink, related, source);
        if (diagnostic.Sizes.Count > 0) Note(ink, "sizes", string.Join(", ", diagnostic.Sizes));
        if (diagnostic.Help is { } help) Note(ink, "help", help);
        foreach (var mend in diagnostic.Mends)
        {
            if (!IsSaid(diagnostic.Help, mend)) Note(ink, "mend", mend.Title);
        }

        Note(ink, "more", "turnrow explain " + diagnostic.Kind.Name);
        return ink.ToString();
    }

    private static void Head(Ink ink, Diagnostic diagnostic, SourceText source)
    {
        var severity = diagnostic.Kind.Severity == Severity.Error ? "error" : "warning";
        ink.Write(severity, MarkInk(diagnostic)).Write(" ").Write(diagnostic.Kind.Name, Ink.Bold)
            .Write($" [{diagnostic.Kind.Code}] ").Write(Place(source, diagnostic.Span)).Write(": ")
            .Write(Shown.Plain(diagnostic.Message), Ink.Bold).EndLine();
    }

    private static void Second(Ink ink, Related related, SourceText source)
    {
        Note(ink, "see", Place(source, related.Span) + ": " + related.Message);
        Source(ink, source, related.Span, Ink.Cyan);
    }

    private static void Source(Ink ink, SourceText source, TextSpan span, string marks)
    {
        var first = source.PositionOf(span.Start).Line;
        var last = span.Length == 0 ? first : source.PositionOf(span.End - 1).Line;
        for (var line = first; line <= last; line++)
        {
            if (line == first + MostLines)
            {
                ink.Write(Gutter, Ink.Blue).Write("…").EndLine();
                return;
            }

            var excerpt = Excerpt.Of(source, line, span);
            ink.Write(string.Create(CultureInfo.InvariantCulture, $"{line,5} | "), Ink.Blue).Write(excerpt.Source).EndLine();
            ink.Write(Gutter, Ink.Blue).Write(excerpt.Marks, marks).EndLine();
        }
    }

    private static void Note(Ink ink, string label, string text) =>
        ink.Write("   ").Write(label + ":", Ink.Cyan).Write(" ").Write(Shown.Plain(text)).EndLine();

    private static string Place(SourceText source, TextSpan span)
    {
        var (line, column) = source.PositionOf(span.Start);
        return string.Create(CultureInfo.InvariantCulture, $"{Shown.Plain(source.FileName)}:{line}:{column}");
    }

    private static string MarkInk(Diagnostic diagnostic) =>
        diagnostic.Kind.Severity == Severity.Error ? Ink.Red : Ink.Yellow;

    // A help that already holds the text to be put in needs no line for the mend.
    private static bool IsSaid(string? help, Mend mend)
    {
        var text = mend.NewText.Trim();
        return help is not null && text.Length > 1 && help.Contains(text, StringComparison.Ordinal);
    }
}
