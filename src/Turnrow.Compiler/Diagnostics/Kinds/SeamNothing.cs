using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam along no rows and no stitches.</summary>
public static class SeamNothing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-nothing",
        "TR0353",
        Severity.Error,
        """
        The part of an edge that this seam names has no rows and no stitches, so the line joins nothing and the pieces stay open there. Look at
        the number of rows: `last 0 rows` is none of them, and `all but` leaves out what follows it. To leave the pieces open, take the line out.
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

            seam front right edge, last 0 rows, with back left edge, last 0 rows
            seam front left edge with back right edge
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

            seam front right edge, last 4 rows, with back left edge, last 4 rows
            seam front left edge with back right edge
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"this part of the edge has no rows{context.Findings.InSizes(sizes)}, so the seam joins nothing")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take more rows, or leave the choice of rows out for the whole edge",
        };
}
