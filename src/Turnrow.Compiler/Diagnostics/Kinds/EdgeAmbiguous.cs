using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that both edges have.</summary>
public static class EdgeAmbiguous
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-ambiguous",
        "TR0321",
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

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"both edges are called `{name}` here")
        {
            Help = "say `both edges`, `right edge` or `left edge`",
            Mends = [new Mend("both edges", span, "both edges"), new Mend("right edge", span, "right edge"), new Mend("left edge", span, "left edge")],
        };
}
