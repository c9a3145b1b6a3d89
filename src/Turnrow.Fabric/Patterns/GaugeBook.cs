using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>A pattern's gauges, and the measurements that follow from them.</summary>
public sealed class GaugeBook(IReadOnlyList<Gauge> gauges)
{
    /// <summary>The gauges in the pattern's order.</summary>
    public IReadOnlyList<Gauge> Gauges { get; } = gauges;

    /// <summary>The gauge of a stitch; null if the pattern gives none.</summary>
    public Gauge? Of(Stitch stitch)
    {
        foreach (var gauge in Gauges)
        {
            if (gauge.Stitch == stitch) return gauge;
        }

        return null;
    }

    /// <summary>The tallest stitch of a row, which decides how high the row is; null for a row without stitches.</summary>
    public static Stitch? TallestOf(Row row)
    {
        Stitch? tallest = null;
        if (row.Work is null) return (row.Plan as ShapedPlan)?.Stitch;
        foreach (var kind in row.Work.Tops.Kinds())
        {
            if (kind.Place.Stitch is { } stitch && (tallest is null || stitch.Height > tallest.Height)) tallest = stitch;
        }

        return tallest;
    }

    /// <summary>Height of rows in centimetres; null if a row's stitch has no gauge.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="from">Index of the first one measured.</param>
    public Rational? HeightOf(IReadOnlyList<Row> rows, int from = 0)
    {
        Rational? sum = Rational.Zero;
        var i = from;
        while (i < rows.Count && sum is not null)
        {
            var stitch = TallestOf(rows[i]);
            var same = 1;
            while (i + same < rows.Count && (ReferenceEquals(rows[i + same].Work, rows[i].Work) || TallestOf(rows[i + same]) == stitch)) same++;
            sum = stitch is not null && Of(stitch)?.HeightOf(same) is { } height ? sum.Value + height : null;
            i += same;
        }

        return sum;
    }

    /// <summary>Width of a row in centimetres, by the gauge of its tallest stitch; null if that has no gauge.</summary>
    public Rational? WidthOf(Row row) =>
        row.Work is { } work && TallestOf(row) is { } stitch ? Of(stitch)?.WidthOf(work.Stitches + ChainsInSpaces(work)) : null;

    // A space is as wide as the chains over it; no source is needed for that a chain is as wide as a stitch: common practice.
    private static int ChainsInSpaces(RowWork work)
    {
        var chains = 0;
        foreach (var kind in work.Tops.Kinds()) chains += kind.Place.Chains * kind.Count;
        return chains;
    }
}
