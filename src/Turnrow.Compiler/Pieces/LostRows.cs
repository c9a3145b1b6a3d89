using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// Looks, at the end, for rows that could not be worked. Whatever the reason, one has to be told: a file without errors has no row that is not known.
/// </summary>
internal static class LostRows
{
    public static void Add(Context context, PieceBook book, SyntaxTree tree)
    {
        if (tree.Diagnostics.Any(IsError) || context.Findings.All.Any(IsError)) return;
        foreach (var piece in book.All)
        {
            var first = Array.ConvertAll(piece.Finished, static made => made.Rows.FirstOrDefault(static row => row.Work is null)?.Number ?? 0);
            var lost = Sized.Where(context.Sizes, i => first[i] > 0);
            if (lost.Length > 0) context.Findings.Add(RowLost.At(context, piece, lost, first[lost[0]]));
        }
    }

    private static bool IsError(Diagnostic found) => found.Kind.Severity == Severity.Error;
}
