namespace Turnrow.Publishing.Charts.Layout;

/// <summary>How far from where a stitch would stand it is worked into, and how much that weighs among all of its row.</summary>
internal readonly record struct Lean(double Columns, double Weight)
{
    private const double AroundMiddle = 0.08;

    /// <summary>
    /// What most of the stitches in the middle ask for, so that they stand straight; where two halves part in the middle, what is just between.
    /// </summary>
    public static double MiddleOf(List<Lean> leans)
    {
        leans.Sort(static (a, b) => a.Columns.CompareTo(b.Columns));
        var all = leans.Sum(static lean => lean.Weight);
        return (Reached(leans, all * (0.5 - AroundMiddle)) + Reached(leans, all * (0.5 + AroundMiddle))) / 2;
    }

    private static double Reached(List<Lean> leans, double weight)
    {
        foreach (var lean in leans)
        {
            if (weight < lean.Weight) return lean.Columns;
            weight -= lean.Weight;
        }

        return leans[^1].Columns;
    }
}
