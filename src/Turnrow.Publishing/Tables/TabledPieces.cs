using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Tables;

/// <summary>The pieces that tables hold: those of the file, and of a blanket the motifs that are joined, each kind of them once.</summary>
internal static class TabledPieces
{
    /// <summary>All of them, in the pattern's order.</summary>
    public static IEnumerable<PieceInSizes> Of(Pattern pattern)
    {
        foreach (var item in pattern.Items)
        {
            if (item is PieceInSizes piece) yield return piece;
            if (item is not BlanketInSizes blanket) continue;
            foreach (var kind in blanket.InSizes.SelectMany(static b => b?.Joined ?? []).Select(static j => (j.Kind, On: NameOf(j))).Distinct().ToList())
            {
                var name = $"{blanket.Motifs[kind.Kind]}-joined-to-{blanket.Name}-{kind.On}";
                yield return new PieceInSizes(name, [.. blanket.InSizes.Select(b => In(b, kind, name))], [], null);
            }
        }
    }

    private static Piece In(Blanket? blanket, (int Kind, string On) kind, string name) => blanket?.Joined.FirstOrDefault(j => (j.Kind, NameOf(j)) == kind) is { } joined
        ? joined.Piece with { Name = name }
        : new Piece(name, null, [], new EdgeWalk(Hand.Right, []), new EdgeWalk(Hand.Left, []), false);

    private static string NameOf(JoinedMotif joined) => string.Join('-', joined.To.Select(static to => to switch
    {
        Neighbour.Before => "before",
        Neighbour.Below => "below",
        Neighbour.BelowLeft => "below-left",
        Neighbour.BelowRight => "below-right",
        Neighbour.NextBeside => "next-beside",
        _ => "beside",
    }));
}
