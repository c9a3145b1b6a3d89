using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Works rows of a stitch pattern between plain edges, in every size.</summary>
internal static class EdgedWorking
{
    public static void Work(Context context, PieceState piece, StatementSyntax statement, EdgedBinding edged, int?[] counts, Func<int, EdgeChanges?> changes)
    {
        var working = new RowWorking(context, piece, statement);
        for (var size = 0; size < context.Sizes; size++)
        {
            var i = size;
            if (counts[i] is not { } count)
            {
                piece.Builders[i].Doubt(true);
                continue;
            }

            var plans = count == 0 || !context.Here.Has(i) ? [] : edged.Plan(i, count, changes(i));
            working.Rows(i, count, ordinal => plans is null ? null : edged.Here(i, plans[ordinal]));
        }

        working.Finish();
    }
}
