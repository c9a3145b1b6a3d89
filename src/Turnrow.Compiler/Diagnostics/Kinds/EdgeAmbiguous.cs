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
        Both edges of the piece have this name, and one of them has to be chosen, or both said. What is done at both would come out twice
        as much as at one, so it is not guessed. Write `both edges`, `right edge` or `left edge`, or give the two edges names of their
        own.
        """,
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              both edges are armhole
              row 1 RS: dc across
              leave 3 at armhole
              row 2: dc across
            """),
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              both edges are armhole
              row 1 RS: dc across
              leave 3 at both edges
              row 2: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"both edges are called `{name}` here")
        {
            Help = "say `both edges`, `right edge` or `left edge`",
            Mends = [new Mend("both edges", span, "both edges"), new Mend("right edge", span, "right edge"), new Mend("left edge", span, "left edge")],
        };
}
