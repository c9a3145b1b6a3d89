using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Rows that are not drawn because they are like rows that are.</summary>
/// <param name="First">Index of the first one not drawn.</param>
/// <param name="Count">How many.</param>
/// <param name="Period">How many drawn rows before them they repeat; 0 if they are left out for their number alone.</param>
/// <param name="Grow">True if the stitches change by the same shaping.</param>
internal readonly record struct HiddenRows(int First, int Count, int Period, bool Grow)
{
    /// <summary>Index of the row after them.</summary>
    public int Next => First + Count;
}

/// <summary>Finds the rows that need no drawing.</summary>
internal static class LikeRows
{
    private const int LongestPeriod = 12;
    private const int FewestHidden = 4;

    /// <summary>What is higher than this, in pixels, no longer fits a page so that it can be read.</summary>
    private const double MostHeight = 1100;

    private const int KeptOfMany = 10;

    /// <summary>The rows not drawn, in order.</summary>
    public static IReadOnlyList<HiddenRows> Of(IReadOnlyList<Row> rows)
    {
        var hidden = Find(rows, Same, grow: false);
        if (Height(rows, hidden) > MostHeight) hidden = Find(rows, AlikeInShaping, grow: true);
        if (Height(rows, hidden) > 2 * MostHeight) hidden = [new HiddenRows(KeptOfMany, rows.Count - (2 * KeptOfMany), 0, true)];
        return hidden;
    }

    /// <summary>The rows not drawn because they are worked exactly as others before them, however high the chart is.</summary>
    public static IReadOnlyList<HiddenRows> SameRows(IReadOnlyList<Row> rows) => Find(rows, Same, grow: false);

    private static double Height(IReadOnlyList<Row> rows, List<HiddenRows> hidden)
    {
        var height = 0.0;
        var next = 0;
        for (var i = 0; i < rows.Count; i++)
        {
            if (next < hidden.Count && hidden[next].First == i) i = hidden[next++].Next;
            height += ChartScale.HeightOf(GaugeBook.TallestOf(rows[i]));
        }

        return height;
    }

    private static List<HiddenRows> Find(IReadOnlyList<Row> rows, Func<Row, Row, bool> alike, bool grow)
    {
        var found = new List<HiddenRows>();
        var i = 0;
        while (i < rows.Count)
        {
            var best = default(HiddenRows);
            for (var period = 2; period <= LongestPeriod; period++)
            {
                var end = i + period;
                while (end < rows.Count && alike(rows[end], rows[end - period])) end++;
                // The last of them is drawn again: what follows stands on it.
                var count = end - 1 - (i + period);
                // Rows that come again have to come again whole: else `repeat` would say of some that they do.
                if (count >= FewestHidden && count + 1 >= period && count > best.Count) best = new HiddenRows(i + period, count, period, grow);
            }

            if (best.Count > 0) found.Add(best);
            i = best.Count > 0 ? best.Next : i + 1;
        }

        return found;
    }

    private static bool Same(Row a, Row b) =>
        a.IsRound == b.IsRound && a.Yarn == b.Yarn && Unstepped(a) && Unstepped(b) && a.Work is { } x && b.Work is { } y
        && (ReferenceEquals(x, y) || (x.Opening == y.Opening && x.Below.Count == y.Below.Count && WordLists.Same(x.Words, y.Words) && x.Tops.Equals(y.Tops)));

    /// <summary>True of rows that are worked exactly alike from the same side.</summary>
    public static bool AreOne(Row a, Row b) => Same(a, b) && a.RightSide == b.RightSide && a.StartsAt == b.StartsAt;

    private static bool AlikeInShaping(Row a, Row b) =>
        Unstepped(a) && Unstepped(b) && a.Work is { } x && b.Work is { } y && x.Opening == y.Opening && a.IsRound == b.IsRound && a.RightSide == b.RightSide && a.IsBack == b.IsBack && a.Yarn == b.Yarn && a.Plan.Equals(b.Plan);

    private static bool Unstepped(Row row) =>
        row.Begins is RowBegins.Turned or RowBegins.Back or RowBegins.Round or RowBegins.RoundTurned or RowBegins.RoundBack or RowBegins.Spiral && row.Start is null && row.End is null && row.Short.IsNone && row.Unworked is null;
}
