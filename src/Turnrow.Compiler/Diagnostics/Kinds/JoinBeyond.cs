using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that is joined to an edge of which nothing is left.</summary>
public static class JoinBeyond
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "join-beyond",
        "TR0426",
        Severity.Error,
        """
        Each `join` takes the next place of the other piece's edge, and here there is none left: the rows before have taken all of them. Look how
        many places the edge has and how many rows are joined to it. A piece that is joined at every other row ends up with twice as many rows
        as the edge has row-ends; a motif's round meets each space of the other motif's side once, corner to corner.
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
              repeat rows 1 to 2, 8 more times
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

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> of)
    {
        var first = of(sizes[0]);
        var edge = WordText.EdgeOf(((Work)first.Fault.Word!).To!.Edge.Side);
        var taken = first.Fault.Needed - first.Fault.There + first.Fault.Before;
        var left = first.Fault.There - first.Fault.Before;
        return new(Kind, span, Invariant($"row {first.Row} of {piece.Name} joins further than {edge} goes: it has {Counted.Places(first.Fault.Needed)}, and {(left == 0 ? "all are taken" : $"{Counted.Plain(taken)} of them are taken")}{context.Findings.InSizes(sizes, i => of(i).Fault.Needed)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = context.Findings.Unlike(sizes, i => Counted.Places(of(i).Fault.Needed)),
            Help = "work fewer rows that are joined, or pass over fewer places between them",
        };
    }
}
