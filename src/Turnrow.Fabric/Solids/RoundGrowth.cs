using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Solids;

/// <summary>
/// How much rows or rounds grow by each, in the mean of them, so that one without increases between two with them is no fault; and what work of their
/// shape has to grow by to lie flat. Both are told in stitches of the last of them.
/// </summary>
/// <param name="Stitches">What it grows by.</param>
/// <param name="Needed">What lies flat; of <see cref="FlatShape.Fan"/> a whole turn.</param>
/// <param name="Shape">What the work is.</param>
/// <param name="Corners">Its corners; 0 for none.</param>
public sealed record RoundGrowth(double Stitches, double Needed, FlatShape Shape, int Corners)
{
    /// <summary>True if it lies flat.</summary>
    public bool IsFlat => Shape == FlatShape.Fan ? Math.Abs(Stitches) <= Flatness.Most * Needed : Flatness.IsFlat(Stitches, Needed);

    /// <summary>The growth of some rows; null if one is not known, or has no gauge.</summary>
    /// <param name="rows">All rows of the piece.</param>
    /// <param name="from">Number of the first one meant.</param>
    /// <param name="to">Number of the last one.</param>
    /// <param name="gauges">The gauges.</param>
    public static RoundGrowth? Of(IReadOnlyList<Row> rows, int from, int to, GaugeBook gauges)
    {
        var last = rows[to - 1];
        if (last.Work is not { } work || GaugeBook.WidthFabricOf(last) is not { } fabric || gauges.Of(fabric)?.WidthOf(1)?.ToDouble() is not { } stitch) return null;
        var (shape, corners) = ShapeOf(rows[0], work, last.IsRound);
        var around = Flatness.AroundOf(shape, corners);
        // What round 1 grows from is the point that it begins at; a ring of chains that is wider has grown to nothing yet.
        var atPoint = from == 1 && IsAtPoint(rows[0], around, gauges);
        var first = from > 1 || atPoint || to == 1 ? from : 2;
        var before = first > 1 ? gauges.WidthAlongSides(rows[first - 2])?.ToDouble() : atPoint ? 0 : work.Below.Count * stitch;
        if (before is not { } begun || gauges.WidthAlongSides(last)?.ToDouble() is not { } wide || HeightOf(rows, first, to, gauges) is not { } high) return null;
        var each = (to - first + 1) * stitch;
        return new RoundGrowth((wide - begun) / each, around * high / each, shape, corners);
    }

    /// <summary>A stitch of these rows whose gauge is needed and missing; null for none.</summary>
    public static Stitch? WithoutGauge(IReadOnlyList<Row> rows, int from, int to, GaugeBook gauges)
    {
        for (var i = Math.Max(0, from - 2); i < to; i++)
        {
            if (GaugeBook.FabricOf(rows[i]) is { } high && gauges.Of(high) is null) return high;
            if (GaugeBook.WidthFabricOf(rows[i]) is { } wide && gauges.Of(wide) is null) return wide;
        }

        return null;
    }

    private static (FlatShape Shape, int Corners) ShapeOf(Row first, RowWork last, bool isRound)
    {
        // The round that takes the markers out still goes round the corners.
        var corners = Math.Max(Corner(last.Tops), Corner(last.Below));
        if (!isRound) return !IsInRing(first) ? (FlatShape.Fan, 0) : corners > 0 ? (FlatShape.HalfPolygon, corners) : (FlatShape.HalfCircle, 0);
        if (corners > 2) return (FlatShape.Polygon, corners);
        return (first.Begins == RowBegins.BothSides ? FlatShape.Oval : FlatShape.Circle, 0);
    }

    private static int Corner(PlaceSequence places) => places.HasCorners ? places.CountWhere(static p => p.IsCorner) : 0;

    private static bool IsInRing(Row first) => first.Work is { } work && work.Below.CountWhere(static p => p.Kind == PlaceKind.Ring) > 0;

    // A ring that is one place, or one of no more chains than a round about a point has stitches.
    private static bool IsAtPoint(Row first, double around, GaugeBook gauges)
    {
        if (IsInRing(first)) return true;
        return first.IsRound && gauges.WidthAlongSides(first)?.ToDouble() is { } wide && gauges.HeightOf([first])?.ToDouble() is { } high
            && wide <= Flatness.Most * around * high;
    }

    private static double? HeightOf(IReadOnlyList<Row> rows, int first, int to, GaugeBook gauges)
    {
        var counted = new Row[to - first + 1];
        for (var i = 0; i < counted.Length; i++) counted[i] = rows[first - 1 + i];
        return gauges.HeightOf(counted)?.ToDouble();
    }
}
