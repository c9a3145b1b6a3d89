using Turnrow.Compiler.Joins;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows of an edge that are used twice.</summary>
public static class EdgeTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-twice",
        "TR0370",
        Severity.Warning,
        """
        Rows of this edge, or the stitches of this row, are joined or picked up along a second time. Mostly the other edge was meant, or the second seam should take
        only the rows that the first has left open. It may be meant so, for a border over a seam say; then leave it as it is.

        Tip: name the edges, `right edge is side`, and a slip of this kind is easier to see.
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

            seam front right edge with back left edge: 2 sc in each row
            seam front right edge with back right edge: 2 sc in each row
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
            seam front left edge with back right edge: 2 sc in each row
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, TextSpan before, string piece, EdgeOfPiece edge) =>
        new(Kind, span, $"{What(piece, edge)} joined or picked up along a second time{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "look whether the other edge or other rows were meant; if not, leave it so",
            Related = [new Related(before, "the first time is here")],
        };

    private static string What(string piece, EdgeOfPiece edge) => edge switch
    {
        EdgeOfPiece.LastRow => $"the last row of {piece} is",
        EdgeOfPiece.Named => "these stitches are",
        EdgeOfPiece.Loops => "these loops are",
        EdgeOfPiece.Foundation => $"the foundation of {piece} is",
        _ => "rows of this edge are",
    };
}
