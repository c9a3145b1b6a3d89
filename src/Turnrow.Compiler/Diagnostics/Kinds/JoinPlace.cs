using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that joins to another piece where it can't.</summary>
public static class JoinPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "join-place",
        "TR0427",
        Severity.Error,
        """
        A stitch that joins goes into the next place of the other piece's edge, and what it is to go into is not there: `in corner` needs the corner to
        come next, `in next sp` a space ahead. A side of a motif begins and ends in a corner; between the two, `in next sp` passes over the
        stitches on the way. In rows a piece lies beside the other one with its edge, so a row is joined at its end, and always at the same
        edge; only a round lies along the other piece and may be joined anywhere.
        """,
        SmallPattern.With("Tiles",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece other
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              round 2: ((3 sc, ch 1, 3 sc) in next corner) 3 times, 3 sc in next corner, join to tile third side in next sp, join to tile third side in next dc, join to tile third side in corner
              fasten off
            """),
        SmallPattern.With("Tiles",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece other
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              round 2: ((3 sc, ch 1, 3 sc) in next corner) 3 times, 3 sc in next corner, join to tile third side in corner, join to tile third side in next corner
              fasten off
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, RowFailure failure)
    {
        var edge = WordText.EdgeOf(((Work)failure.Fault.Word!).To!.Edge.Side);
        var row = Counted.Plain(failure.Row);
        var (message, help) = failure.Fault.Kind switch
        {
            RowFaultKind.JoinInside => ($"row {row} of {piece.Name} is joined to {edge} before its end", "a row lies beside the other piece with its end only: put `join` last, behind all that the row works"),
            RowFaultKind.JoinOtherEnd => ($"row {row} of {piece.Name} ends at the other edge than the rows that are joined to {edge} before it", "join every other row, those that end at the same edge"),
            _ => ($"what this is to be joined in does not come next along {edge}", "say `in corner` where the corner comes next, `in next corner` where it lies further on, `in next sp` for the next space, or nothing for whatever comes next; `join skipping 1 to …` passes over a place"),
        };
        return new(Kind, span, message + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = help,
        };
    }
}
