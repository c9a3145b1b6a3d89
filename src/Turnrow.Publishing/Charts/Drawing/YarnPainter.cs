using System.Text;
using Turnrow.Fabric.Colours;
using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>
/// Shows the yarn of each stitch behind its symbol: a fill, and a hatching of its own, so that a chart printed in grey, or seen by one who
/// sees colours otherwise, says the same. The pattern's first yarn is the paper.
/// </summary>
internal sealed class YarnPainter(Sheet sheet)
{
    private static readonly string[] Fills = ["#cfe0f2", "#f4d9c0", "#d6ead0", "#ecd5ea", "#f1ecbf"];

    private const double Nearly = 0.01;

    /// <summary>Draws what lies behind a row's stitches.</summary>
    public void Draw(RowBand band)
    {
        if (sheet.Yarns.Count < 2 || band.Row is not { Strip: { } strip } row) return;
        var yarns = new YarnPlaces(row.Row);
        var runs = new List<(int Yarn, double From, double To)>();
        foreach (var open in sheet.Layout.Axis.Open(row.Extent))
        {
            var within = row.InWorkingOrder(open);
            strip.Visit(within.From, within.To, placed => Add(runs, placed, row, yarns));
        }

        foreach (var (yarn, from, to) in runs) Fill(sheet.Svg, yarn, sheet.X(to), sheet.Y(band.Bottom + band.Height), sheet.X(from), sheet.Y(band.Bottom));
    }

    /// <summary>The fill that stands for a yarn other than the first.</summary>
    public static string FillOf(int yarn) => Fills[KindOf(yarn)];

    /// <summary>Which hatching stands for a yarn other than the first.</summary>
    public static int KindOf(int yarn) => (yarn - 1) % Fills.Length;

    /// <summary>Fills a field with what stands for a yarn.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="yarn">Its number among the pattern's.</param>
    /// <param name="left">The field's left.</param>
    /// <param name="top">Its top.</param>
    /// <param name="right">Its right.</param>
    /// <param name="bottom">Its bottom.</param>
    public static void Fill(SvgWriter svg, int yarn, double left, double top, double right, double bottom)
    {
        if (yarn == 0) return;
        var kind = KindOf(yarn);
        svg.Open("rect").With("x", left).With("y", top).With("width", right - left).With("height", bottom - top).With("fill", Fills[kind]).Close();
        svg.Open("path").With("d", Hatching(kind, left, top, right, bottom)).With("fill", "none").With("stroke", "#707070").With("stroke-width", 0.7).Close();
    }

    private void Add(List<(int Yarn, double From, double To)> runs, PlacedCell placed, RowLayout row, YarnPlaces yarns)
    {
        if (placed.Cell.Columns == 0 || yarns.Of(placed.Top) is not { } name) return;
        var yarn = sheet.YarnNumber(name);
        sheet.Legend.Add(LegendSign.Yarn, count: yarn);
        var columns = Columns.Between(row.TopColumn(placed.Column), row.TopColumn(placed.Column + placed.Cell.Columns));
        // The legs of a decrease stand wider than its head.
        if (placed.Cell.Feet > 1) columns = columns.With(Columns.Between(row.FootColumn(placed.Foot), row.FootColumn(placed.Foot + placed.Cell.Feet - 1)));
        var (from, to) = columns;
        if (runs.Count > 0 && runs[^1] is var last && last.Yarn == yarn && from <= last.To + Nearly && to >= last.From - Nearly)
            runs[^1] = (yarn, Math.Min(last.From, from), Math.Max(last.To, to));
        else runs.Add((yarn, from, to));
    }

    // Strokes that rise, lie, fall, stand, and rise and fall: neighbours are the least alike.
    private static string Hatching(int kind, double left, double top, double right, double bottom)
    {
        const double Apart = 7;
        var path = new StringBuilder();
        var height = bottom - top;
        if (kind is 0 or 4) Slanted(path, left, top, right, bottom, rises: true);
        if (kind is 2 or 4) Slanted(path, left, top, right, bottom, rises: false);
        if (kind == 1) for (var y = top + (height % Apart / 2); y <= bottom; y += Apart) Stroke(path, left, y, right, y);
        if (kind == 3) for (var x = left + (Apart / 2); x < right; x += Apart) Stroke(path, x, top, x, bottom);
        return path.ToString();
    }

    // Cut off at the field's sides, so that nothing of it lies outside.
    private static void Slanted(StringBuilder path, double left, double top, double right, double bottom, bool rises)
    {
        const double Apart = 9;
        var height = bottom - top;
        for (var x = left - height + (Apart / 2); x < right; x += Apart)
        {
            var (from, to) = (Math.Max(left, x), Math.Min(right, x + height));
            if (to <= from) continue;
            var (y1, y2) = rises ? (bottom - (from - x), bottom - (to - x)) : (top + (from - x), top + (to - x));
            Stroke(path, from, y1, to, y2);
        }
    }

    private static void Stroke(StringBuilder path, double x1, double y1, double x2, double y2) =>
        path.Append('M').Append(Decimals.Of(x1)).Append(' ').Append(Decimals.Of(y1)).Append('L').Append(Decimals.Of(x2)).Append(' ').Append(Decimals.Of(y2));
}
