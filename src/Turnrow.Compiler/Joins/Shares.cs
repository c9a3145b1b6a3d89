using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Shares stitches out over the stretches of a walk: at the end of each as many are picked up as its length up to there asks for, to the
/// nearest stitch. What goes into corners is given, and the rest is shared out between them.
/// </summary>
internal static class Shares
{
    /// <summary>The legs that a number of stitches is picked up along.</summary>
    public static List<PickUpLeg> Of(IReadOnlyList<PickUpLeg> customary, int stitches, GaugeBook gauges)
    {
        var whole = Together(customary);
        Spread(whole, [.. Enumerable.Range(0, whole.Count).Where(i => !whole[i].IsCorner)], stitches - whole.Sum(static l => l.IsCorner ? l.Rate : 0), gauges);
        return whole;
    }

    /// <summary>Shares stitches out over some legs of a walk.</summary>
    /// <param name="legs">The walk.</param>
    /// <param name="over">Which of its legs, in the order in which they are walked.</param>
    /// <param name="stitches">How many.</param>
    /// <param name="gauges">What the legs are measured by.</param>
    public static void Spread(List<PickUpLeg> legs, IReadOnlyList<int> over, int stitches, GaugeBook gauges)
    {
        var lengths = Lengths(legs, over, gauges);
        var total = lengths.Sum();
        var (along, picked) = (0L, 0);
        for (var i = 0; i < over.Count; i++)
        {
            var at = over[i];
            along += lengths[i];
            // Yarn is joined in the first place, so something is worked there.
            var upTo = i == over.Count - 1 ? stitches : Math.Max(legs[0].IsCorner ? 0 : 1, UpTo(along, total, stitches));
            legs[at] = legs[at] with { Rate = upTo - picked, Per = legs[at].Stretch.Count, IsEven = true };
            picked = upTo;
        }
    }

    /// <summary>Mends a walk that is turned over: yarn is joined at its other end now, where something is worked, given up by the next that has any.</summary>
    public static void BeginAtOtherEnd(List<PickUpLeg> walk)
    {
        if (walk[0].Rate > 0) return;
        var from = walk.FindIndex(static leg => leg.Rate > 0 && leg.IsEven);
        if (from < 0) return;
        walk[0] = walk[0] with { Rate = 1 };
        walk[from] = walk[from] with { Rate = walk[from].Rate - 1 };
    }

    // To the nearest stitch; half a stitch goes to the middle of the walk, so that both halves of it are alike.
    private static int UpTo(long along, long total, int stitches)
    {
        var twice = (Int128)2 * along * stitches / total;
        var isHalf = twice * total == (Int128)2 * along * stitches;
        var up = twice % 2 != 0 && (!isHalf || 2 * along > total);
        return (int)(twice / 2) + (up ? 1 : 0);
    }

    private static List<PickUpLeg> Together(IReadOnlyList<PickUpLeg> legs)
    {
        var whole = new List<PickUpLeg>();
        foreach (var leg in legs)
        {
            if (leg.Stretch.Count == 0) continue;
            if (whole.Count > 0 && GoesOn(whole[^1], leg)) whole[^1] = whole[^1].With(leg);
            else whole.Add(leg);
        }

        return whole;
    }

    private static bool GoesOn(PickUpLeg before, PickUpLeg leg) =>
        before.Piece == leg.Piece && before.Hand == leg.Hand && before.Stretch.Name == leg.Stretch.Name
        && before.Stretch.Kind == StretchKind.RowEnds && leg.Stretch.Kind == StretchKind.RowEnds
        && (leg.Upwards ? leg.Stretch.FirstRow == before.Stretch.LastRow + 1 : leg.Stretch.LastRow == before.Stretch.FirstRow - 1);

    private static long[] Lengths(List<PickUpLeg> legs, IReadOnlyList<int> over, GaugeBook gauges)
    {
        var lengths = new long[over.Count];
        for (var i = 0; i < lengths.Length; i++)
        {
            var leg = legs[over[i]];
            if (EdgeLength.Of([new JoinSide(leg.Piece, leg.Hand, [leg.Stretch])], gauges) is not { } length || length.Numerator <= 0)
                return [.. over.Select(at => Math.Max(1, 60L * legs[at].Stretch.Count * legs[at].Rate / legs[at].Per))];
            lengths[i] = Math.Max(1, (long)Math.Round(length.ToDouble() * 1000));
        }

        return lengths;
    }
}
