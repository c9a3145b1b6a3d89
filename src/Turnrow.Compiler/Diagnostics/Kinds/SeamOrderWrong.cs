using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam that would join a piece inside out.</summary>
public static class SeamOrderWrong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-order",
        "TR0351",
        Severity.Error,
        """
        Lay two pieces beside each other, both right sides up. A right edge and a left edge lie side by side with both first rows at the
        bottom. Two right edges only meet if one piece is turned upside down, so that its first row meets the other's last. The line says
        the opposite of what these edges can do, and one piece would be joined inside out. Change the order, or take the other edge; the
        order may also be left out, since it follows from the edges.
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

            seam front right edge with back right edge, in the same order: 2 sc in each row
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

            seam front right edge with back left edge, in the same order: 2 sc in each row
            """));

    internal static Diagnostic At(TextSpan span, bool opposite, Hand first, Hand second) =>
        new(Kind, span, $"{Edges(first, second)} can only lie side by side in {(opposite ? "opposite" : "the same")} row order")
        {
            Mends = [opposite ? new Mend("write `in opposite order`", span, "in opposite order") : new Mend("write `in the same order`", span, "in the same order")],
            Help = opposite
                ? "write `in opposite order` (the first row of one meets the last row of the other), or take the other edge of one piece"
                : "write `in the same order` (first row meets first row), or take the other edge of one piece",
        };

    private static string Edges(Hand first, Hand second) =>
        first == second ? $"two {Word(first)} edges" : "a right edge and a left edge";

    private static string Word(Hand hand) => hand == Hand.Right ? "right" : "left";
}
