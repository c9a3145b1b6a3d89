using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece where an edge of it is needed.</summary>
public static class EdgeUnsaid
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-unsaid",
        "TR0345",
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
        new(Kind, span, $"which edge of {piece}?")
        {
            Help = $"name it: {piece} right edge, {piece} left edge, {piece} foundation, {piece} last row, or an edge by its name",
        };
}
