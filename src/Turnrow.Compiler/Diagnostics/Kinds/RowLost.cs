using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that can't be worked, though no line is at fault.</summary>
public static class RowLost
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-lost",
        "TR0446",
        Severity.Error,
        """
        Each line of the file is right as it stands, and yet a row comes out of it that can't be worked. That happens to mirror images: a row is read from
        its other end there, and what is a good end may be no good beginning. A stitch that goes back to places passed over, say, can end a row beside a
        turning chain that counts, and not begin one. Put a plain stitch at both ends of the row, let its chain not count, or write the second piece out
        with words of its own. In a fabric without sides, `mirrored, turned over` keeps the rows as they are.
        """,
        SmallPattern.With("Fronts",
            """
            piece front
              begin with 19 stitches
              row 1 RS: dc across
              row 2: dc, crossed 9

            piece other is front mirrored
            seam front right edge with other left edge
            """),
        SmallPattern.With("Fronts",
            """
            piece front
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc, crossed 9, dc

            piece other is front mirrored
            seam front right edge with other left edge
            """));

    internal static Diagnostic At(Context context, PieceState piece, int[] sizes, int row)
    {
        var name = RowName.Of(piece, sizes[0], row);
        return new(Kind, piece.Span, piece.MirrorOf is { } original
            ? Invariant($"{name} of {piece.Name} can't be worked{context.Findings.InSizes(sizes)}: as the mirror image of {original.Name} it is read from its other end, and does not come out from there")
            : Invariant($"{name} of {piece.Name} can't be worked{context.Findings.InSizes(sizes)}, though no line is at fault"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = piece.MirrorOf is null ? "write the row in other words" : "put a plain stitch at both ends of that row, or write this piece out with words of its own; in a fabric without sides, `mirrored, turned over`",
        };
    }
}
