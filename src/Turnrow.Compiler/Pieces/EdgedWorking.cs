using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Works rows of a stitch pattern between plain edges, in every size.</summary>
internal static class EdgedWorking
{
    /// <param name="context">What the file says.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="statement">The line.</param>
    /// <param name="edged">The rows between edges.</param>
    /// <param name="counts">How many rows.</param>
    /// <param name="changes">What is done at the edges.</param>
    /// <param name="others">What sizes without such edges go on with; null where all have them.</param>
    public static void Work(Context context, PieceState piece, StatementSyntax statement, EdgedBinding edged, int?[] counts, Func<int, EdgeChanges?> changes, Onward[]? others = null)
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

            if (others is not null && !edged.IsFor(i))
            {
                working.Rows(i, count, others[i].PlanOf);
                continue;
            }

            var plans = count == 0 || !context.Here.Has(i) ? [] : edged.Plan(i, count, changes(i));
            working.Rows(i, count, ordinal => plans is null ? null : edged.Here(i, plans[ordinal]));
        }

        working.Finish();
    }
}
