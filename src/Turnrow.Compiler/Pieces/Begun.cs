using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Pieces;

/// <summary>Checks that a piece has something to work on.</summary>
internal static class Begun
{
    /// <summary>True if the piece has begun; else that is reported, once, and the piece goes on in doubt.</summary>
    public static bool Check(Context context, PieceState piece, TextSpan span)
    {
        if (piece.Lead.HasBegun) return true;
        context.Findings.Add(NothingBegun.At(span, piece.Name));
        piece.Doubt(false);
        return true;
    }
}
