using Turnrow.Compiler.Values;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>both edges are armhole</c>, <c>from here right edge is side-seam</c></summary>
internal static class EdgeNaming
{
    public static void Bind(Context context, PieceState piece, EdgeNameStatement statement)
    {
        if (EdgeBinder.Bind(context, piece, statement.Edge) is not { } hands) return;
        var name = context.AsFirstSpelt(statement.Name);
        foreach (var builder in piece.Builders)
        {
            foreach (var hand in hands) builder.NameEdge(hand, name, !statement.FromHere);
        }

        if (statement.FromHere)
        {
            piece.Heading = name;
            piece.HeadingSizes = context.Here.AreAll ? null : Sized.Where(context.Sizes, context.Here.Has);
        }

        piece.Changed();
    }
}
