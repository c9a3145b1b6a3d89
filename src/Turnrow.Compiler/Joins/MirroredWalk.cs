using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Finds along a mirrored edge what a pick-up walks along the original: the same row-ends and steps, counted from the first row. Their rows may
/// be others, since short rows turn a row later there, and chains that are added one row apart go with the hook.
/// </summary>
internal static class MirroredWalk
{
    /// <summary>The legs along one edge of the original, on the other edge of its mirror image; as they are where the two are not alike.</summary>
    /// <param name="legs">The legs, in the order in which the mirror image walks them.</param>
    /// <param name="mirror">The mirror image, or the piece itself where it has none.</param>
    public static IEnumerable<PickUpLeg> Of(IReadOnlyList<PickUpLeg> legs, Piece mirror)
    {
        var hand = legs[0].Hand!.Value;
        var (from, to) = (legs[0].Piece.At(hand).Stretches, mirror.At(hand.Opposite()).Stretches);
        var turned = new List<PickUpLeg>();
        foreach (var leg in legs) turned.Add(leg with { Piece = mirror, Hand = hand.Opposite(), Upwards = !leg.Upwards });
        if (!AreAlike(from, to, legs.Any(static leg => !IsEnds(leg.Stretch)))) return turned;
        var found = new List<PickUpLeg>();
        foreach (var leg in turned) Add(found, leg, from, to);
        var order = found.OrderBy(leg => IndexOf(to, leg.Stretch)).ThenBy(static leg => leg.Stretch.FirstRow);
        return turned[0].Upwards ? order : order.Reverse();
    }

    // Chains may lie where, turned over, stitches were left: one is worked into each of either.
    private static bool AreAlike(IReadOnlyList<Stretch> from, IReadOnlyList<Stretch> to, bool withSteps) =>
        from.Where(IsEnds).Sum(static s => s.Count) == to.Where(IsEnds).Sum(static s => s.Count)
        && (!withSteps || Steps(from).Select(static s => s.Count).SequenceEqual(Steps(to).Select(static s => s.Count)));

    private static bool IsEnds(Stretch stretch) => stretch.Kind == StretchKind.RowEnds;

    private static List<Stretch> Steps(IReadOnlyList<Stretch> edge) => [.. edge.Where(static s => !IsEnds(s))];

    private static void Add(List<PickUpLeg> found, PickUpLeg leg, IReadOnlyList<Stretch> from, IReadOnlyList<Stretch> to)
    {
        if (!IsEnds(leg.Stretch))
        {
            var at = Steps(from).IndexOf(leg.Stretch);
            found.Add(at < 0 ? leg : leg with { Stretch = Steps(to)[at] });
            return;
        }

        var skip = from.Where(IsEnds).Sum(s => Math.Clamp(leg.Stretch.FirstRow - s.FirstRow, 0, s.Count));
        var ends = new JoinSide(leg.Piece, leg.Hand, [.. to.Where(IsEnds)]);
        var passed = 0;
        foreach (var stretch in EdgeSelection.Rows(ends, skip, leg.Stretch.Count)!.Stretches)
        {
            var part = leg with { Stretch = stretch };
            // A share is told of its whole leg, so a part of the leg has its part of it.
            if (leg.IsEven) part = part with { Rate = Share(leg, passed + stretch.Count) - Share(leg, passed), Per = stretch.Count };
            found.Add(part);
            passed += stretch.Count;
        }
    }

    private static int Share(PickUpLeg leg, int upTo) => (int)((long)leg.Rate * upTo / leg.Per);

    private static int IndexOf(IReadOnlyList<Stretch> edge, Stretch part)
    {
        for (var i = 0; i < edge.Count; i++)
        {
            if (edge[i].Kind == part.Kind && edge[i].FirstRow <= part.FirstRow && part.LastRow <= edge[i].LastRow) return i;
        }

        return edge.Count;
    }
}
