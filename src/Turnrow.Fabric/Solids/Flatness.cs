using Turnrow.Fabric.Patterns;

namespace Turnrow.Fabric.Solids;

/// <summary>
/// How work in rounds lies: a flat circle grows by <c>2 pi h / w</c> stitches a round, h the height of a round and w the width of a stitch
/// (arithmetic); fewer and it rises to a bowl, more and it falls in waves.
/// </summary>
public static class Flatness
{
    /// <summary>What a flat circle may grow by less, as a part of what it needs; from the published numbers for single and double crochet.</summary>
    public const double Least = 0.84;

    /// <summary>What it may grow by more.</summary>
    public const double Most = 1.2;

    /// <summary>Stitches that a flat circle grows by a round.</summary>
    public static double Needed(Gauge gauge)
    {
        var height = gauge.RowsOver.ToDouble() / gauge.Rows.ToDouble();
        var width = gauge.StitchesOver.ToDouble() / gauge.Stitches.ToDouble();
        return 2 * Math.PI * height / width;
    }

    /// <summary>True if so much growth a round, in the mean, lies flat.</summary>
    public static bool IsFlat(double growth, double needed) => growth >= Least * needed && growth <= Most * needed;
}
