namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// Chooses the columns to fold: first those where every drawn row is plain, then, if the chart is still too wide, the middles of
/// patterns that repeat.
/// </summary>
internal sealed class ColumnFolds
{
    /// <summary>Up to so many columns all are drawn.</summary>
    private const int NarrowEnough = 28;

    /// <summary>Up to so many columns a pattern is drawn whole.</summary>
    private const int WideEnough = 44;

    private const double ShortestFold = 7;
    private const double LongPattern = 22;

    /// <summary>Up to so many columns a repeat is shown whole.</summary>
    private const double LongestUnit = 36;

    /// <summary>Columns that stay at each end of a pattern: as few as it takes.</summary>
    private static readonly double[] KeptOfPattern = [11, 7];

    private readonly List<Columns> _details = [];
    private readonly List<(Columns Columns, double Unit)> _patterns = [];
    private Columns _extent;

    private ColumnFolds(IReadOnlyList<RowLayout> drawn)
    {
        _extent = drawn[0].Extent;
        foreach (var row in drawn) Look(row);
    }

    /// <summary>The axis for the rows that are drawn.</summary>
    /// <param name="drawn">The rows; at least one.</param>
    /// <param name="widthOf">Columns that the longest text in a fold needs.</param>
    public static ColumnAxis AxisFor(IReadOnlyList<RowLayout> drawn, Func<Columns, double> widthOf)
    {
        var folds = new ColumnFolds(drawn);
        if (folds._extent.Length <= NarrowEnough) return new ColumnAxis(folds._extent, []);
        var axis = new ColumnAxis(folds._extent, folds.Gaps([.. folds._details, .. folds._patterns.Select(static pattern => pattern.Columns)], widthOf));
        foreach (var kept in KeptOfPattern)
        {
            if (axis.Width <= WideEnough * ChartScale.Column) break;
            axis = new ColumnAxis(folds._extent, folds.Gaps([.. folds._details, .. folds.RimsOfPatterns(kept)], widthOf));
        }

        return axis;
    }

    private void Look(RowLayout row)
    {
        _extent = _extent.With(row.Extent);
        foreach (var edge in (ReadOnlySpan<double>)[row.Tops.From, row.Tops.To, row.Below.From, row.Below.To]) AddDetail(edge, 2);
        foreach (var edge in (ReadOnlySpan<double>)[row.LeftAtStart.From, row.LeftAtStart.To, row.LeftAtEnd.From, row.LeftAtEnd.To]) AddDetail(edge, 1);
        if (row.Strip is not { } strip) return;
        foreach (var section in Sections.Of(strip)) Look(row, section);
    }

    private void Look(RowLayout row, Section section)
    {
        var columns = Columns.Between(row.TopColumn(section.Columns.From), row.TopColumn(section.Columns.To));
        if (section.Plain is { } plain)
        {
            var lean = Math.Max(LeanOf(row, plain), LeanOf(row, section.LastPlain));
            AddDetail(columns.From, 1 + lean);
            AddDetail(columns.To, 1 + lean);
            return;
        }

        var feet = Feet(row, section);
        if (section.Columns.Length > LongPattern) _patterns.Add((columns.With(feet), section.Unit * columns.Length / section.Columns.Length));
        else _details.Add(columns.With(feet));
    }

    private static double LeanOf(RowLayout row, PlacedCell cell) =>
        Math.Abs(row.FootColumn(cell.Foot) - row.TopColumn(cell.Middle));

    private static Columns Feet(RowLayout row, Section section)
    {
        Columns? feet = null;
        row.Strip!.Visit(section.Columns.From, section.Columns.From + 2, Take);
        row.Strip.Visit(section.Columns.To - 2, section.Columns.To, Take);
        return feet ?? Columns.Between(row.TopColumn(section.Columns.From), row.TopColumn(section.Columns.To));

        void Take(PlacedCell cell)
        {
            if (cell.Cell.Stitch is null) return;
            var columns = Columns.Between(row.FootColumn(cell.Foot), row.FootColumn(cell.Foot + cell.Cell.Feet - 1));
            feet = feet?.With(columns) ?? columns;
        }
    }

    private void AddDetail(double at, double reach) => _details.Add(new Columns(at - reach, at + reach));

    // Of a pattern the ends stay, as many columns as show how it repeats: at one of them a whole time.
    private IEnumerable<Columns> RimsOfPatterns(double kept)
    {
        foreach (var (pattern, unit) in _patterns)
        {
            yield return new Columns(pattern.From, pattern.From + (unit <= LongestUnit ? Math.Max(kept, unit + 1) : kept));
            yield return new Columns(pattern.To - kept, pattern.To);
        }
    }

    private List<ColumnGap> Gaps(List<Columns> kept, Func<Columns, double> widthOf)
    {
        kept.Sort(static (a, b) => a.From.CompareTo(b.From));
        var folds = new List<ColumnGap>();
        var from = _extent.From;
        foreach (var columns in kept)
        {
            AddFold(folds, new Columns(Math.Ceiling(from), Math.Floor(columns.From)), widthOf);
            from = Math.Max(from, columns.To);
        }

        AddFold(folds, new Columns(Math.Ceiling(from), Math.Floor(_extent.To)), widthOf);
        return folds;
    }

    private static void AddFold(List<ColumnGap> folds, Columns columns, Func<Columns, double> widthOf)
    {
        if (columns.Length < ShortestFold) return;
        var width = widthOf(columns);
        if (width < columns.Length - 1) folds.Add(new ColumnGap(columns, width));
    }
}
