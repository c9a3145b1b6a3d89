using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Shares stitches out over the stretches of a walk. At every point of it as many are picked up as its length up to there asks for, to the
/// nearest stitch; along a stretch, in rounds of a few row-ends that differ as little as can be.
/// </summary>
internal static class Shares
{
    // A maker counts so many row-ends at a time, and more only where fewer do not come out.
    private const int LongestRound = 5;

    /// <summary>The legs that a number of stitches is picked up along.</summary>
    public static List<PickUpLeg> Of(IReadOnlyList<PickUpLeg> customary, int stitches, GaugeBook gauges)
    {
        var whole = Together(customary);
        var lengths = Lengths(whole, gauges);
        var total = lengths.Sum();
        var result = new List<PickUpLeg>();
        var (along, picked) = (0L, 0);
        for (var i = 0; i < whole.Count; i++)
        {
            along += lengths[i];
            // Yarn is joined in the first place, so something is worked there.
            var upTo = i == whole.Count - 1 ? stitches : Math.Max(1, UpTo(along, total, stitches));
            Along(result, whole[i] with { Part = i + 1 }, upTo - picked);
            picked = upTo;
        }

        return result;
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

    private static long[] Lengths(List<PickUpLeg> legs, GaugeBook gauges)
    {
        var lengths = new long[legs.Count];
        for (var i = 0; i < lengths.Length; i++)
        {
            if (EdgeLength.Of([new JoinSide(legs[i].Piece, legs[i].Hand, [legs[i].Stretch])], gauges) is not { } length || length.Numerator <= 0)
                return [.. legs.Select(static l => Math.Max(1, 60L * l.Stretch.Count * l.Rate / l.Per))];
            lengths[i] = Math.Max(1, (long)Math.Round(length.ToDouble() * 1000));
        }

        return lengths;
    }

    // Two kinds of round, one a little denser than the other, come out over any number: the fewer of them lie in the middle.
    private static void Along(List<PickUpLeg> result, PickUpLeg leg, int stitches)
    {
        var places = leg.Stretch.Count;
        var (low, high) = Rounds(stitches % places, places);
        var each = stitches / places;
        var lows = (int)(((long)high.Rate * places) - ((long)high.Per * (stitches % places)));
        var highs = (int)(((long)low.Per * (stitches % places)) - ((long)low.Rate * places));
        if (lows < 0 || highs <= 0) (lows, highs) = (places / low.Per, 0);
        low.Rate += each * low.Per;
        high.Rate += each * high.Per;
        var (many, few) = lows >= highs ? ((Round: low, Count: lows), (Round: high, Count: highs)) : ((Round: high, Count: highs), (Round: low, Count: lows));
        var at = 0;
        // A single place that gets one more lies in the middle too.
        if (few.Count == 0 && many.Count == 1 && each > 0 && stitches % places == 1)
        {
            Add((each, 1), (places - 1) / 2);
            Add((each + 1, 1), 1);
            Add((each, 1), places / 2);
            return;
        }

        Add(many.Round, few.Count == 0 ? many.Count : (many.Count + 1) / 2);
        Add(few.Round, few.Count);
        Add(many.Round, few.Count == 0 ? 0 : many.Count / 2);

        void Add((int Rate, int Per) round, int count)
        {
            if (count == 0) return;
            result.Add(leg.Slice(at, count * round.Per) with { Rate = round.Rate, Per = round.Per });
            at += count * round.Per;
        }
    }

    // The two fractions beside stitches / places that a short round can have; both the same where one is that number itself.
    private static ((int Rate, int Per) Low, (int Rate, int Per) High) Rounds(int stitches, int places)
    {
        var (low, high) = ((Rate: 0, Per: 1), (Rate: 1, Per: 1));
        if (stitches == 0) return (low, high);
        while (true)
        {
            var between = (Rate: low.Rate + high.Rate, Per: low.Per + high.Per);
            if (between.Per > LongestRound && low.Rate > 0 && high.Rate < high.Per) return (low, high);
            var side = ((long)stitches * between.Per).CompareTo((long)between.Rate * places);
            if (side == 0) return (between, between);
            if (side > 0) low = between;
            else high = between;
        }
    }
}
