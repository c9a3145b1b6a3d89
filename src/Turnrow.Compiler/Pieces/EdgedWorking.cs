using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Works rows of a stitch pattern between plain edges, in every size.</summary>
internal static class EdgedWorking
{
    public static void Work(Context context, PieceState piece, StatementSyntax statement, EdgedBinding edged, int?[] counts, Func<int, EdgeChanges?> changes)
    {
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (counts[i] is not { } count)
            {
                piece.Builders[i].Doubt(true);
                continue;
            }

            var plans = count == 0 || !context.Here.Has(i) ? [] : edged.Plan(i, count, changes(i));
            working.Rows(i, count, ordinal => plans?[ordinal]);
        }

        working.Finish();
    }
}
