namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Rows that come round again.</summary>
/// <param name="Start">Index of the first row.</param>
/// <param name="Period">Rows of one round.</param>
/// <param name="Times">Whole rounds, at least 1.</param>
/// <param name="Rest">Rows of a last round that is not finished.</param>
internal readonly record struct Fold(int Start, int Period, int Times, int Rest)
{
    /// <summary>The longest round that a maker is asked to keep in mind.</summary>
    public const int LongestRound = 12;

    /// <summary>Parts rows into folds: at each row the round that covers the most rows, the shortest of those.</summary>
    /// <param name="kinds">The rows; those worked alike have the same number.</param>
    /// <param name="longest">Rows of the longest round looked for.</param>
    public static IReadOnlyList<Fold> Of(IReadOnlyList<int> kinds, int longest)
    {
        var folds = new List<Fold>();
        for (var start = 0; start < kinds.Count;)
        {
            var best = new Fold(start, 1, 1, 0);
            for (var period = 1; period <= longest && start + (2 * period) <= kinds.Count; period++)
            {
                var fold = At(kinds, start, period);
                if (fold.Times > 1 && fold.Covered > best.Covered) best = fold;
            }

            folds.Add(best);
            start += best.Covered;
        }

        return folds;
    }

    /// <summary>Rows in all.</summary>
    public int Covered => (Period * Times) + Rest;

    /// <summary>The rounds of so many rows from a row on; an unfinished round counts only if nothing follows it.</summary>
    public static Fold At(IReadOnlyList<int> kinds, int start, int period)
    {
        var end = start + period;
        while (end < kinds.Count && kinds[end] == kinds[end - period]) end++;
        var rest = (end - start) % period;
        return new Fold(start, period, (end - start) / period, end == kinds.Count ? rest : 0);
    }
}
