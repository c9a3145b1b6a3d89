using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A bracket without its other half.</summary>
public static class BracketPair
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "bracket",
        "TR0104",
        Severity.Error,
        """
        Each bracket that opens has to be closed in the same line, and none can be closed that was not opened. While a bracket is open the line goes on in
        the next one, but never past a blank line nor past a line that begins a statement, so that a forgotten bracket spoils one line only.
        """,
        Coaster.With("row 2: (dc 4, dc across"),
        Coaster.With("row 2: (dc 4) 5 times"));

    internal static Diagnostic NotClosed(TextSpan bracket, int end) =>
        new(Kind, bracket, "this bracket is not closed")
        {
            Help = "put `)` where the repeat, the group or the list in sizes ends",
            Mends = [new Mend("close it at the line's end", new TextSpan(end, 0), ")")],
        };

    internal static Diagnostic NotOpened(TextSpan bracket) =>
        new(Kind, bracket, "this bracket closes, but none is open")
        {
            Help = "put `(` where the repeat, the group or the list in sizes begins, or leave this one out",
            Mends = [new Mend("leave it out", bracket, "")],
        };
}
