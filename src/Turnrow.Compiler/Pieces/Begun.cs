using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Pieces;

/// <summary>Checks that a piece has something to work on.</summary>
internal static class Begun
{
    /// <summary>Reports a piece that has not begun, once; it goes on in doubt.</summary>
    public static void Check(Context context, PieceState piece, TextSpan span)
    {
        if (piece.Lead.HasBegun) return;
        context.Findings.Add(NothingBegun.At(span, piece.Name));
        piece.Doubt(false);
    }
}
