using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows in a piece that has not begun.</summary>
public static class NothingBegun
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "nothing-begun",
        "TR0315",
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
        new(Kind, span, $"{piece} has not begun: there is nothing to work into")
        {
            Help = "begin it first: begin with 40 stitches, or chain 42",
        };
}
