using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An edge of a seam that goes on along another that does not begin where the last one ends.</summary>
public static class SeamApart
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-apart",
        "TR0382",
        Severity.Warning,
        """
        One side of the seam is put together of several edges, and two of them do not meet: where the first ends the second does not begin. Name
        those of the first side as you come to them against the clock, the right side facing you: up a right edge, along the last row from right to
        left, down a left edge. Those of the second side lie along them, and go the other way. Look whether an edge is missing between the two, whether
        right and left or two pieces are changed round, and whether the `seam` that joins the pieces stands above this line.
        """,
        SmallPattern.With("Cushion",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front right edge and front left edge with back left edge and back last row, easing 0 to 5 cm
            """),
        SmallPattern.With("Cushion",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front right edge and front last row with back left edge and back last row, easing 0 to 5 cm
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string first, string second) =>
        new(Kind, span, $"`{second}` does not begin where `{first}` ends{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "name the edges in the order in which you come to them, and write the seams between the pieces above this line",
        };
}
