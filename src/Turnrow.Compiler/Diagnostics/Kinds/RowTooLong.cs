using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row with more than can be laid out.</summary>
public static class RowTooLong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-too-long",
        "TR0308",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this row is longer than any row can be")
        {
            Help = "look for a digit too many",
        };
}
