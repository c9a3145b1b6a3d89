using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A pick-up that goes on along an edge that does not begin where the last one ends.</summary>
public static class PickUpApart
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-apart",
        "TR0381",
        Severity.Warning,
        """
        Stitches are picked up along several edges, one after the other, and two of them do not meet: where the first ends the second does not
        begin. Held with the right side facing you, the work is walked round against the clock: up a right edge, along the last row from right to left, down a
        left edge, along the foundation from left to right. Look whether an edge is missing between the two, whether right and left or two pieces
        are changed round, and whether the `seam` that joins the pieces stands above this line.
        """,
        SmallPattern.With("Vest",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along front right edge and front left edge: 2 dc in each row
              straight 1 row
            """),
        SmallPattern.With("Vest",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along front right edge and front last row and front left edge: 2 dc in each row, 1 dc in each st
              straight 1 row
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string first, string second) =>
        new(Kind, span, $"{second} does not begin where {first} ends{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "name the edges in the order in which you come to them, and write the seams between the pieces above this line",
        };

    internal static Diagnostic Open(Context context, TextSpan span, int[] sizes, string first, string last) =>
        new(Kind, span, $"the round is open: {first} does not begin where {last} ends{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "name all edges round the opening, and write the seams between the pieces above this line; for a band in rows, write `picked up along`",
        };
}
