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
        A seam joins edges, and edges are picked up along; here only the piece is named. Say which edge of it: `right edge`, `left edge`,
        `foundation` (where it begins), `last row` (where it ends), or an edge by the name that you gave it. Right and left are as the
        piece lies with its right side facing you and its first row at the bottom.
        """,
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front with back left edge: 2 sc in each row
            """),
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front right edge with back left edge: 2 sc in each row
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"which edge of {piece} is not said")
        {
            Help = $"write `{piece} right edge`, `{piece} left edge`, `{piece} foundation` or `{piece} last row`, or the edge by its name",
        };
}
