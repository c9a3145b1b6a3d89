using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Looks for edges that were likely forgotten: of two that have the same name in a piece, or in a piece and its mirror, one is joined and
/// the other to nothing.
/// </summary>
internal sealed class OpenEdges(Context context, PieceBook book)
{
    private static readonly Hand[] Hands = [Hand.Right, Hand.Left];

    public void Add()
    {
        foreach (var piece in book.Made)
        {
            if (piece.EdgesInDoubt) continue;
            foreach (var hand in Hands)
            {
                foreach (var name in NamesOf(piece, hand)) AddNamed(piece, hand, name);
            }
        }
    }

    private static HashSet<string> NamesOf(PieceState piece, Hand hand)
    {
        var names = new HashSet<string>();
        foreach (var size in piece.Finished)
        {
            foreach (var stretch in size.At(hand).Stretches)
            {
                if (stretch is { Kind: StretchKind.RowEnds, Name: { } name }) names.Add(name);
            }
        }

        return names;
    }

    private void AddNamed(PieceState piece, Hand hand, string name)
    {
        var other = hand.Opposite();
        var both = NamesOf(piece, other).Contains(name);
        var twin = both ? piece : book.MirrorOf(piece.Name);
        if (twin is null || twin.EdgesInDoubt || !NamesOf(twin, other).Contains(name)) return;
        var alone = Alone(i => book.Uses.UseOf(piece, hand, i, name), i => book.Uses.UseOf(twin, other, i, name));
        if (alone is { } found) context.Findings.Add(EdgeOpen.At(context, found.Span, found.Sizes, Named(piece, hand, name), Named(twin, other, name)));
    }

    private (TextSpan Span, int[] Sizes)? Alone(Func<int, TextSpan?> used, Func<int, TextSpan?> open)
    {
        var sizes = Sized.Where(context.Sizes, i => used(i) is not null && open(i) is null);
        return sizes.Length == 0 ? null : (used(sizes[0])!.Value, sizes);
    }

    private static string Named(PieceState piece, Hand hand, string name) => $"`{piece.Name} {(hand == Hand.Right ? "right" : "left")} {name}`";
}
