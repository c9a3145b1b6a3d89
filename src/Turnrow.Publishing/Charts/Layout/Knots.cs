namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Where a column of a row lies along the line that the row is drawn on.</summary>
internal readonly record struct Knot(double Column, double Along);

/// <summary>Columns and where they lie: between two knots stitches stand evenly, beyond the last as they do before it.</summary>
/// <param name="knots">At least two, column by column; the line runs one way.</param>
internal sealed class Knots(IReadOnlyList<Knot> knots)
{
    /// <summary>The first of them.</summary>
    public Knot First => knots[0];

    /// <summary>The last of them.</summary>
    public Knot Last => knots[^1];

    /// <summary>True if all stitches stand evenly.</summary>
    public bool IsEven => knots.Count == 2;

    /// <summary>From one column to the next, where it is least.</summary>
    public double Closest { get; } = ClosestOf(knots);

    /// <summary>Columns from one on, evenly.</summary>
    public static Knots Even(double from, double pitch, int columns) =>
        new([new Knot(0, from), new Knot(Math.Max(1, columns), from + (pitch * Math.Max(1, columns)))]);

    /// <summary>Where a column lies.</summary>
    public double At(double column)
    {
        var (from, to) = Pair(at => knots[at].Column <= column);
        var slope = to.Column > from.Column ? (to.Along - from.Along) / (to.Column - from.Column) : 0;
        return from.Along + ((column - from.Column) * slope);
    }

    /// <summary>The column that lies somewhere.</summary>
    public double ColumnAt(double along)
    {
        var way = Math.Sign(Last.Along - First.Along);
        var (from, to) = Pair(at => knots[at].Along * way <= along * way);
        var slope = to.Along != from.Along ? (to.Column - from.Column) / (to.Along - from.Along) : 0;
        return from.Column + ((along - from.Along) * slope);
    }

    // The last pair of which the first does not lie behind what is looked for.
    private (Knot From, Knot To) Pair(Func<int, bool> isReached)
    {
        var (low, high) = (0, knots.Count - 2);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (isReached(middle)) low = middle;
            else high = middle - 1;
        }

        return (knots[low], knots[low + 1]);
    }

    private static double ClosestOf(IReadOnlyList<Knot> knots)
    {
        var least = double.PositiveInfinity;
        for (var i = 1; i < knots.Count; i++)
        {
            var columns = knots[i].Column - knots[i - 1].Column;
            if (columns > 0) least = Math.Min(least, Math.Abs(knots[i].Along - knots[i - 1].Along) / columns);
        }

        return least;
    }
}
