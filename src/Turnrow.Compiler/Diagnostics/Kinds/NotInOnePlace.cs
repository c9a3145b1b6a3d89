using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Something that can't be worked in one place with the rest of a bracket.</summary>
public static class NotInOnePlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-in-one-place",
        "TR0232",
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
        new(Kind, span, "this can't be worked in one place together with the rest of the bracket")
        {
            Help = "a bracket in one place holds stitches and chains: (2 dc, ch 2, 2 dc) in next sp",
        };
}
