using Turnrow.Fabric.Patterns;

namespace Turnrow.Fabric.Solids;

/// <summary>
/// How work that grows outwards lies: it is flat if each round is longer than the last by as much as the way round gets longer. For a circle that is
/// <c>2 pi h / w</c> stitches, h the height of a round and w the width of a stitch; for a regular shape of n corners <c>2 n tan(pi / n) h / w</c>
/// (geometry). Fewer and it rises to a bowl, more and it falls in waves.
/// </summary>
public static class Flatness
{
    /// <summary>What flat work may grow by less, as a part of what it needs; from the published numbers for single and double crochet.</summary>
    public const double Least = 0.84;

    /// <summary>What it may grow by more.</summary>
    public const double Most = 1.2;

    /// <summary>Stitches that a flat circle grows by a round.</summary>
    public static double Needed(Gauge gauge)
    {
        var height = gauge.RowsOver.ToDouble() / gauge.Rows.ToDouble();
        var width = gauge.StitchesOver.ToDouble() / gauge.Stitches.ToDouble();
        return AroundOf(FlatShape.Circle, 0) * height / width;
    }

    /// <summary>By how much the way round gets longer where work of a shape gets wider by one, all round.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="corners">Its corners, of a shape that has some.</param>
    public static double AroundOf(FlatShape shape, int corners) => shape switch
    {
        FlatShape.Polygon => 2 * corners * Tan(Math.PI / corners),
        FlatShape.HalfCircle => Math.PI,
        // Cut from corner to corner: half of a square has one corner between its ends.
        FlatShape.HalfPolygon => AroundOf(FlatShape.Polygon, 2 * (corners + 1)) / 2,
        _ => 2 * Math.PI,
    };

#pragma warning disable RS0030 // Held against bounds a fifth apart and told to a tenth of a stitch: a last bit decides nothing.
    private static double Tan(double angle) => Math.Tan(angle);
#pragma warning restore RS0030

    /// <summary>True if so much growth a round, in the mean, lies flat.</summary>
    public static bool IsFlat(double growth, double needed) => growth >= Least * needed && growth <= Most * needed;
}

/// <summary>What work is that grows outwards.</summary>
public enum FlatShape : byte
{
    /// <summary>Rounds without corners.</summary>
    Circle,

    /// <summary>Rounds about both sides of a chain: two half circles, and between them sides that do not grow.</summary>
    Oval,

    /// <summary>Rounds with corners, at least three.</summary>
    Polygon,

    /// <summary>Rows that begin in a ring.</summary>
    HalfCircle,

    /// <summary>Rows with corners that begin in a ring.</summary>
    HalfPolygon,

    /// <summary>Rows that begin anywhere else: with open ends they spread as a fan does, and are flat up to a whole turn.</summary>
    Fan,
}
