using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
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

    // The sizes in which the name is not that edge's: lines for some sizes may name edges too.
    private static int[] Otherwise(Context context, PieceState piece, string name, Hand hand) =>
        Sized.Where(context.Sizes, i => context.Here.Has(i) && PieceState.HandsNamed(piece.Builders[i], name) is var here && (here.Length != 1 || here[0] != hand));

    private static Hand[]? ByName(Context context, PieceState piece, EdgeSyntax edge)
    {
        if (edge.Name is not { } name) return null;
        var hands = Array.ConvertAll(piece.Builders, b => PieceState.HandsNamed(b, name.Text)).FirstOrDefault(static h => h.Length > 0) ?? [];
        if (hands.Length == 1 && Otherwise(context, piece, name.Text, hands[0]) is { Length: > 0 } others)
        {
            context.Findings.Add(EdgeInSizes.At(context, name, others, hands[0]));
            return null;
        }

        if (hands.Length == 1) return hands;
        if (hands.Length == 2)
        {
            context.Findings.Add(EdgeAmbiguous.At(edge.Span, name.Text));
            return null;
        }

        if (!piece.NamesInDoubt)
        {
            var builder = piece.Lead;
            context.Findings.Add(EdgeUnknown.At(name.Span, name.Text, piece.Name, builder.NameOf(Hand.Right), builder.NameOf(Hand.Left),
                builder.NamesOf(Hand.Right).Concat(builder.NamesOf(Hand.Left))));
        }

        return null;
    }
}
