namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Columns that are not drawn one by one, and how wide the gap is that stands for them.</summary>
internal readonly record struct ColumnGap(Columns Columns, double Width);

/// <summary>Where each column is drawn: from the right to the left, the folds drawn narrow, so that all rows stay aligned.</summary>
internal sealed class ColumnAxis(Columns extent, IReadOnlyList<ColumnGap> folds)
{
    /// <summary>The folds, right to left.</summary>
    public IReadOnlyList<ColumnGap> Folds { get; } = folds;

    /// <summary>All columns.</summary>
    public Columns Extent { get; } = extent;

    /// <summary>Width in pixels.</summary>
    public double Width => DrawnColumns(Extent.To) * ChartScale.Column;

    /// <summary>Where a column's edge is, in pixels from the left.</summary>
    public double X(double column) => (DrawnColumns(Extent.To) - DrawnColumns(column)) * ChartScale.Column;

    /// <summary>The parts of a stretch that are drawn stitch by stitch.</summary>
    public IEnumerable<Columns> Open(Columns columns)
    {
        var from = columns.From;
        foreach (var fold in Folds)
        {
            if (fold.Columns.To <= from || fold.Columns.From >= columns.To) continue;
            if (fold.Columns.From > from) yield return new Columns(from, fold.Columns.From);
            from = fold.Columns.To;
        }

        if (from < columns.To) yield return new Columns(from, columns.To);
    }

    private double DrawnColumns(double column)
    {
        var drawn = column - Extent.From;
        foreach (var fold in Folds)
        {
            if (column <= fold.Columns.From) break;
            var inside = Math.Min(column, fold.Columns.To) - fold.Columns.From;
            drawn += (inside * fold.Width / fold.Columns.Length) - inside;
        }

        return drawn;
    }
}
