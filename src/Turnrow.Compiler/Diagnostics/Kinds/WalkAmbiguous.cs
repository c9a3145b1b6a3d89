using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that both edges of the piece have.</summary>
public static class WalkAmbiguous
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-both",
        "TR0347",
        Severity.Error,
        """
        Both edges of the piece have this name, and a seam or a border needs to know at which of them it is. Put `right` or `left` in
        front of the name. Right and left are as the piece lies with its right side facing you and its first row at the bottom, whatever
        they are on the body.
        """,
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              both edges are side
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along cuff side: 2 sc in each row
              row 2: sc across
            """),
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              both edges are side
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along cuff right side: 2 sc in each row
              row 2: sc across
            """));

    internal static Diagnostic At(TextSpan span, string piece, string name) =>
        new(Kind, span, $"both edges of {piece} are called `{name}`")
        {
            Help = $"say which: `{piece} right {name}`, or `{piece} left {name}`",
            Mends = [new Mend($"right {name}", span, $"right {name}"), new Mend($"left {name}", span, $"left {name}")],
        };
}
