using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that begins twice.</summary>
public static class BegunTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "begun-twice",
        "TR0316",
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

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} has begun already")
        {
            Help = "take this line out, or open another piece above it",
        };
}
