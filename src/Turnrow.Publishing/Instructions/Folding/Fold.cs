namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Rows of one size that are worked alike, one behind the other.</summary>
/// <param name="Kind">Rows worked alike have the same number.</param>
/// <param name="Start">Index of the first.</param>
/// <param name="Count">How many.</param>
internal readonly record struct LikeRun(int Kind, int Start, int Count)
{
    /// <summary>The runs of rows whose kinds are given.</summary>
    public static List<LikeRun> Of(IReadOnlyList<int> kinds)
    {
        var runs = new List<LikeRun>();
        for (var i = 0; i < kinds.Count; i++)
        {
            if (i > 0 && kinds[i] == kinds[i - 1]) runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
            else runs.Add(new LikeRun(kinds[i], i, 1));
        }

        return runs;
    }

    /// <summary>True if both are so many rows worked alike.</summary>
    public bool IsLike(LikeRun other) => Kind == other.Kind && Count == other.Count;
}

/// <summary>Runs of rows that come round again.</summary>
/// <param name="Start">Index of the first run.</param>
/// <param name="Period">Runs of one round.</param>
/// <param name="Times">Whole rounds, at least 1.</param>
/// <param name="Rest">Runs of a last round that is not finished.</param>
internal readonly record struct Fold(int Start, int Period, int Times, int Rest)
{
    /// <summary>The most runs in a round that a maker is asked to keep in mind.</summary>
    private const int LongestRound = 12;

    /// <summary>Runs in all.</summary>
    public int Covered => (Period * Times) + Rest;

    /// <summary>Parts runs into folds: at each the round that covers the most runs, the shortest of those.</summary>
    /// <param name="runs">The runs.</param>
    /// <param name="known">Runs of a round that is known to come again, however long it is: a stitch pattern's; 0 for none.</param>
    public static IReadOnlyList<Fold> Of(IReadOnlyList<LikeRun> runs, int known = 0)
    {
        var folds = new List<Fold>();
        for (var start = 0; start < runs.Count;)
        {
            var best = new Fold(start, 1, 1, 0);
            for (var period = 2; period <= Math.Max(LongestRound, known) && start + (2 * period) <= runs.Count; period++)
            {
                var fold = At(runs, start, period);
                if (fold.Times > 1 && fold.Covered > best.Covered) best = fold;
            }

            folds.Add(best);
            start += best.Covered;
        }

        return folds;
    }

    /// <summary>The rounds of so many runs from a run on, the last perhaps not finished.</summary>
    public static Fold At(IReadOnlyList<LikeRun> runs, int start, int period)
    {
        var end = start + period;
        while (end < runs.Count && runs[end].IsLike(runs[end - period])) end++;
        return new Fold(start, period, (end - start) / period, (end - start) % period);
    }
}
