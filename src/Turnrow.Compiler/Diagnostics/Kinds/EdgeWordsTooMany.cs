using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More words than an edge has.</summary>
public static class EdgeWordsTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-words",
        "TR0346",
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

    internal static Diagnostic At(TextSpan span, string before) =>
        new(Kind, span, $"after `{before}` nothing more can name an edge")
        {
            Help = "an edge is: the piece, `right` or `left` if need be, and the edge's name",
        };
}
