using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>straight 12 rows</c>, <c>straight to 20 cm, even rows</c>, <c>straight for 6 cm, in lattice</c></summary>
internal static class StraightBinding
{
    public static void Bind(Context context, PieceState piece, StraightStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        if (EdgedBinding.IsFor(piece, statement.Pattern, statement.EdgeStitch))
        {
            var edged = new EdgedBinding(context, piece, statement, statement.Pattern, statement.EdgeStitch);
            var others = statement.EdgeStitch is null ? Onwards.Of(context, piece, statement.Span, "straight", null, statement.RowsWord) : null;
            var between = edged.Find(others);
            var rows = RowWorking.Bounded(context, piece, statement.Amount.Span, new RowsWanted(context, piece, Extent(statement)).Count(between));
            EdgedWorking.Work(context, piece, statement, edged, rows, static _ => new EdgeChanges(), others);
            new ClaimBinder(context).CheckRow(piece, claim);
            return;
        }

        var onward = Onwards.Of(context, piece, statement.Span, "straight", statement.Pattern, statement.RowsWord);
        RowsOrRounds.Check(context, piece, statement.RowsWord);
        var counts = RowWorking.Bounded(context, piece, statement.Amount.Span, new RowsWanted(context, piece, Extent(statement)).Count(onward));
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (counts[i] is { } count)
            {
                working.Rows(i, count, onward[i].PlanOf);
                continue;
            }

            // However many rows they are, the count stays the same: one stands for all of them.
            piece.Builders[i].DoubtRows();
            working.One(i, onward[i].PlanOf(0), 0);
        }

        working.Finish();
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    private static RowExtentSyntax Extent(StraightStatement statement) =>
        new(statement.Extent, statement.Amount, statement.From, statement.Fixes, statement.Span) { At = statement.At };
}
