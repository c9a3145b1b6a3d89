using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Finds the edge that a statement of a piece means.</summary>
internal static class EdgeBinder
{
    /// <summary>The edges meant; null, and reported, if the words mean none or can't be told apart.</summary>
    public static Hand[]? Bind(Context context, PieceState piece, EdgeSyntax edge)
    {
        switch (edge.Word)
        {
            case EdgeWord.Both: return [Hand.Right, Hand.Left];
            case EdgeWord.Right: return [Hand.Right];
            case EdgeWord.Left: return [Hand.Left];
            default: return ByName(context, piece, edge);
        }
    }

    private static Hand[]? ByName(Context context, PieceState piece, EdgeSyntax edge)
    {
        if (edge.Name is not { } name) return null;
        var hands = piece.HandsNamed(name.Text);
        if (hands.Length == 1) return hands;
        if (hands.Length == 2)
        {
            context.Findings.Add(EdgeAmbiguous.At(edge.Span, name.Text));
            return null;
        }

        if (!piece.NamesInDoubt)
        {
            var builder = piece.Builders[0];
            context.Findings.Add(EdgeUnknown.At(name.Span, name.Text, piece.Name, builder.NameOf(Hand.Right), builder.NameOf(Hand.Left),
                builder.NamesOf(Hand.Right).Concat(builder.NamesOf(Hand.Left))));
        }

        return null;
    }
}
