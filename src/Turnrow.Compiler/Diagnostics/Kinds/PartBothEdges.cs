using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that would begin at both edges.</summary>
public static class PartBothEdges
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-both-edges",
        "TR0340",
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
        new(Kind, span, "a part begins at one edge")
        {
            Help = "say `right edge` or `left edge`; the other part is another piece, or `mirrored`",
            Mends = [new Mend("right edge", span, "right edge"), new Mend("left edge", span, "left edge")],
        };
}
