using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Places;
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
        for (var i = 0; i < Gauges.Count; i++)
        {
            if (Gauges[i].Stitch == stitch) return Gauges[i];
        }

        // A fabric of bobbles is as wide and as high as the stitch that they are made of, unless the pattern says otherwise.
        return stitch.Base is { } other ? Of(other) : null;
    }

    /// <summary>The tallest stitch of a row, which decides how high the row is; null for a row without stitches.</summary>
    public static Stitch? TallestOf(Row row)
    {
        Stitch? tallest = null;
        if (row.Work is null) return (row.Plan as ShapedPlan)?.Stitch;
        var kinds = row.Work.Tops.Kinds();
        for (var i = 0; i < kinds.Count; i++)
        {
            if (kinds[i].Place.Stitch is { } stitch && (tallest is null || stitch.Height > tallest.Height)) tallest = stitch;
        }

        return tallest;
    }

    /// <summary>The fabric of a row: its stitch pattern's, or that of plain rows of its tallest stitch.</summary>
    public static Stitch? FabricOf(Row row) => row.Plan is WordsPlan { Of: { } of } ? of.Pattern.Fabric : TallestOf(row);

    /// <summary>
    /// The fabric that a row is as wide as: its stitch pattern's, or that of the stitch that most of it is made of. One bobble lifts a row, but
    /// the stitches beside it stay as wide as they are. Bobbles of dc count as dc; of stitches that come as often, the tallest.
    /// </summary>
    public static Stitch? WidthFabricOf(Row row)
    {
        if (row.Work is null || row.Plan is WordsPlan { Of: not null }) return FabricOf(row);
        var kinds = row.Work.Tops.Kinds();
        Stitch? most = null;
        var (counted, tallest) = (0, 0);
        for (var i = 0; i < kinds.Count; i++)
        {
            if (kinds[i].Place.Stitch is not { } stitch) continue;
            var (count, oftenest) = Alike(kinds, Plain(stitch));
            if (count < counted || (count == counted && stitch.Height <= tallest)) continue;
            (most, counted, tallest) = (oftenest, count, stitch.Height);
        }

        return most;
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
            var stitch = FabricOf(rows[i]);
            var same = 1;
            while (rows[i].Unworked is null && i + same < rows.Count && rows[i + same].Unworked is null && IsAlike(rows[i], rows[i + same], stitch)) same++;
            sum = stitch is not null && Of(stitch)?.HeightOf(same > 1 ? same : PartOfRound(rows[i])) is { } height ? sum.Value + height : null;
            i += same;
        }

        return sum;
    }

    // A round of a spiral that ends before its marker climbs by as much of its height as it has gone of its way.
    private static Rational PartOfRound(Row row) => row is { Unworked: { } rest, Work.Below: var worked } ? Rational.Of(worked.Count, worked.Count + rest.Count) ?? Rational.One : Rational.One;

    /// <summary>
    /// Width of a row in centimetres, by the gauge of what most of it is made of; null if that has none. What a row of a stitch pattern makes is not its width:
    /// that is the repeats, by the places that they were begun on.
    /// </summary>
    public Rational? WidthOf(Row row) => WidthOf(row, withCorners: true);

    /// <summary>Width of a row without the chains over its corners, which lie across them and make no side longer; null if it is not known.</summary>
    public Rational? WidthAlongSides(Row row) => WidthOf(row, withCorners: false);

    private Rational? WidthOf(Row row, bool withCorners)
    {
        if (row.Work is not { } work || WidthFabricOf(row) is not { } fabric) return null;
        return Of(fabric)?.WidthOf(row.Plan is WordsPlan { Of: { } of } ? of.Places : work.Stitches + ChainsInSpaces(work, withCorners));
    }

    /// <summary>The widest of some rows and its width in centimetres; null if there is none, or if the width of any is not known.</summary>
    public (Row Row, Rational Width)? WidestOf(IReadOnlyList<Row> rows)
    {
        (Row, Rational Width)? widest = null;
        Row? last = null;
        foreach (var row in rows)
        {
            if (row.Work is not null && last is not null && IsOneRow(row, last)) continue;
            if (WidthOf(row) is not { } width) return null;
            if (widest is null || width > widest.Value.Width) widest = (row, width);
            last = row;
        }

        return widest;
    }

    /// <summary>The same gauges, with another one for a stitch that has one.</summary>
    public GaugeBook With(Gauge other) => new([.. Gauges.Select(gauge => gauge.Stitch == other.Stitch ? other : gauge)]);

    /// <summary>The fabrics that rows are worked in: the tallest stitch of each, and in how many rows, in the order in which they come up.</summary>
    public static IReadOnlyList<(Stitch Stitch, int Rows)> FabricsOf(IReadOnlyList<Row> rows) => Counted(rows, FabricOf);

    /// <summary>The fabrics that rows are as wide as, and in how many rows, in the order in which they come up.</summary>
    public static IReadOnlyList<(Stitch Stitch, int Rows)> WidthFabricsOf(IReadOnlyList<Row> rows) => Counted(rows, WidthFabricOf);

    private static List<(Stitch Stitch, int Rows)> Counted(IReadOnlyList<Row> rows, Func<Row, Stitch?> fabricOf)
    {
        var fabrics = new List<(Stitch Stitch, int Rows)>();
        Row? last = null;
        var at = -1;
        foreach (var row in rows)
        {
            if (last?.Work is null || !IsOneRow(row, last)) at = IndexOf(fabrics, fabricOf(row));
            last = row;
            if (at >= 0) fabrics[at] = (fabrics[at].Stitch, fabrics[at].Rows + 1);
        }

        return fabrics;
    }

    // How many stitches come down to one plain stitch, and which of them comes most often.
    private static (int Count, Stitch Oftenest) Alike(IReadOnlyList<PlaceRun> kinds, Stitch plain)
    {
        var (count, most, oftenest) = (0, 0, plain);
        for (var i = 0; i < kinds.Count; i++)
        {
            if (kinds[i].Place.Stitch is not { } stitch || Plain(stitch) != plain) continue;
            count += kinds[i].Count;
            if (kinds[i].Count > most) (most, oftenest) = (kinds[i].Count, stitch);
        }

        return (count, oftenest);
    }

    private static Stitch Plain(Stitch stitch)
    {
        while (stitch.Base is { } other) stitch = other;
        return stitch;
    }

    private static bool IsAlike(Row row, Row other, Stitch? fabric) => IsOneRow(other, row) || FabricOf(other) == fabric;

    // Rows worked alike are of one fabric, unless one of them was begun as the row of a stitch pattern.
    private static bool IsOneRow(Row row, Row other) => ReferenceEquals(row.Work, other.Work) && FabricTag(row) == FabricTag(other);

    private static StitchPattern? FabricTag(Row row) => (row.Plan as WordsPlan)?.Of?.Pattern;

    private static int IndexOf(List<(Stitch Stitch, int Rows)> fabrics, Stitch? stitch)
    {
        if (stitch is null) return -1;
        var at = fabrics.FindIndex(fabric => fabric.Stitch == stitch);
        if (at >= 0) return at;
        fabrics.Add((stitch, 0));
        return fabrics.Count - 1;
    }

    // A space is as wide as the chains over it; no source is needed for that a chain is as wide as a stitch: common practice.
    private static int ChainsInSpaces(RowWork work, bool withCorners)
    {
        var chains = 0;
        foreach (var segment in work.Tops.Segments)
        {
            foreach (var run in segment.Unit)
            {
                if (withCorners || !run.Place.IsCorner) chains += run.Place.Chains * run.Count * segment.Times;
            }
        }

        return chains;
    }
}
