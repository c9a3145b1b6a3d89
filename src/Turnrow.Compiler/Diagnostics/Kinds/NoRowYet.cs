using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`straight` or `shape` before any row.</summary>
public static class NoRowYet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "no-row-yet",
        "TR0314",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` goes on with the stitch of the row before, and there is no row yet")
        {
            Help = "write the first row: row 1 RS: dc across",
        };
}
