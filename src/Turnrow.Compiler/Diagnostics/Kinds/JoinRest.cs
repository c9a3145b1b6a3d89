using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Syntax.Diagnostics;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Places of an edge that a piece was joined to as it was worked, and that are left.</summary>
public static class JoinRest
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "join-rest",
        "TR0425",
        Severity.Error,
        """
        A piece is joined to an edge as it is worked, and it ends before the edge does: the rest of the edge hangs open. Each `join` takes one place
        of the edge in turn, a row-end, a stitch or a space, and all that it passes over. So count: a band that is joined at every other row
        needs two rows for each row-end. Work more rows, or pass over more of the edge (`join skipping 1 to front right edge`). Where only part
        of an edge is meant, give that part a name of its own (`from here right edge is neck`) and join to it.
        """,
        SmallPattern.With("Cuff",
            """
            piece back
              begin with 12 stitches
              row 1 RS: sc across
              straight 7 rows
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to back right edge
              row 2: sc across
              repeat rows 1 to 2, 5 more times
            """),
        SmallPattern.With("Cuff",
            """
            piece back
              begin with 12 stitches
              row 1 RS: sc across
              straight 7 rows
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to back right edge
              row 2: sc across
              repeat rows 1 to 2, 7 more times
            """));

    internal static Diagnostic At(Context context, PieceState piece, int[] sizes, Func<int, JoinedAlong> of)
    {
        var first = of(sizes[0]);
        var (all, left) = (first.Places!.Count, first.Rest!.Count);
        var rows = first.Edge.Side.Hand is not null && first.Rest.CountWhere(static p => p.Kind == PlaceKind.RowEnd) == left;
        var what = rows ? left == 1 ? "1 row-end" : Invariant($"{left} row-ends") : Counted.Places(left);
        return new(Kind, piece.Span, Invariant($"{piece.Name} is joined to {WordText.EdgeOf(first.Edge.Side)} and ends before it: {what} of {all} {(left == 1 ? "is" : "are")} left{context.Findings.InSizes(sizes, i => of(i).Rest!.Count)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = context.Findings.Unlike(sizes, i => Invariant($"{of(i).Rest!.Count} of {of(i).Places!.Count}")),
            Help = Invariant($"join {left} more (`join to …` in more rows), or pass over some on the way (`join skipping 1 to …`)"),
        };
    }
}
