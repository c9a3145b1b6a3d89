using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>straight 12 rows</c>, <c>straight to 20 cm, even rows</c>, <c>straight for 6 cm</c></summary>
internal static class StraightBinding
{
    public static void Bind(Context context, PieceState piece, StraightStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        RowsOrRounds.Check(context, piece, statement.RowsWord);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var stitches = PlainCheck.Stitches(context, piece, statement.Span, "straight");
        var counts = RowWorking.Bounded(context, piece, statement.Amount.Span, new RowsWanted(context, piece, Extent(statement)).Count(stitches));
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            var plan = stitches[i] is { } stitch ? ShapedPlan.Plain(stitch) : null;
            if (counts[i] is { } count)
            {
                working.Rows(i, count, _ => plan);
                continue;
            }

            // However many rows they are, the count stays the same: one stands for all of them.
            piece.Builders[i].DoubtRows();
            working.One(i, plan, 0);
        }

        working.Finish();
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    private static RowExtentSyntax Extent(StraightStatement statement) =>
        new(statement.Extent, statement.Amount, statement.From, statement.Fixes, statement.Span) { At = statement.At };
}
