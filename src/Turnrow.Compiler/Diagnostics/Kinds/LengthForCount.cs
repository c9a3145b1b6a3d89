using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length where a count is needed.</summary>
public static class LengthForCount
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "length-for-count",
        "TR0218",
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
        new(Kind, span, "a count is needed here, and this is a length")
        {
            Help = "turn the length into a count first: count hem is stitches for 40 cm (or rows for 40 cm)",
        };
}
