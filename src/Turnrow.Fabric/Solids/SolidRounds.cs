using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;

namespace Turnrow.Fabric.Solids;

/// <summary>
/// How many stitches each round of a body has: as many as go round it, by the gauge, at the middle of the round. For square stitches and a
/// sphere of N rounds that is <c>2N sin((i - 1/2) pi / N)</c>, the published formula.
/// </summary>
public static class SolidRounds
{
    /// <summary>The counts, from the foot to the top, at least one of them; null if there would be more than <paramref name="most"/> rounds.</summary>
    /// <param name="meridian">The body.</param>
    /// <param name="gauge">The fabric's gauge.</param>
    /// <param name="allowed">Which counts may be.</param>
    /// <param name="least">The least that any round has; a point is closed from so many.</param>
    /// <param name="most">The most rounds.</param>
    public static IReadOnlyList<int>? Counts(Meridian meridian, Gauge gauge, Allowed allowed, int least, int most)
    {
        var roundsPerCm = gauge.Rows.ToDouble() / gauge.RowsOver.ToDouble();
        var stitchesPerCm = gauge.Stitches.ToDouble() / gauge.StitchesOver.ToDouble();
        var exact = meridian.Length * roundsPerCm;
        if (!(exact <= most)) return null;
        var rounds = Math.Max(1, (int)Math.Floor(exact + 0.5));
        var counts = new int[rounds];
        var lowest = allowed.Has(least) ? least : (int)allowed.AtMost(least) + allowed.Every;
        for (var i = 0; i < rounds; i++)
        {
            var stitches = Math.Round(2 * Math.PI * meridian.RadiusAt((i + 0.5) / rounds * meridian.Length) * stitchesPerCm, 6);
            counts[i] = Math.Max(lowest, Nearest(stitches, allowed));
        }

        return counts;
    }

    private static int Nearest(double exact, Allowed allowed)
    {
        var below = allowed.AtMost((long)Math.Floor(exact));
        return (int)(exact - below < below + allowed.Every - exact ? below : below + allowed.Every);
    }
}
