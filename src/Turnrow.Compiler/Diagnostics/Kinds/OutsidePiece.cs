using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line that belongs in a piece stands outside one.</summary>
public static class OutsidePiece
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "outside-piece",
        "TR0228",
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
        new(Kind, span, "this line makes rows or edges, and no piece is open here")
        {
            Help = "open one above it: piece back",
        };
}
