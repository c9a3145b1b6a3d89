using Turnrow.Publishing.Instructions.Telling;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Folds rows that are alike but for a repeat in them that is worked so many times more each time, as in a square that grows.</summary>
internal static class GrowingFolds
{
    // Fewer rows than these are told one by one sooner than as a list.
    private const int FewestAgain = 3;

    /// <summary>The sizes, each with its folds; null if no row grows in this way, or not in all sizes at the same rows.</summary>
    public static List<FoldedSize>? Of(IReadOnlyList<SizeRows> sizes) =>
        Of(sizes, new Kin(RepeatGrowth.Skeleton, RepeatGrowth.Of, 1)) ?? Of(sizes, new Kin(StretchGrowth.Skeleton, StretchGrowth.Of, 2));

    /// <summary>A way in which rows may be alike, and what grows in it.</summary>
    /// <param name="Skeleton">What they have in common.</param>
    /// <param name="Growth">What differs each time; null if it can't be said.</param>
    /// <param name="FewestRuns">In a round; a row alone that differs each time is told each time sooner than in a list.</param>
    private sealed record Kin(Func<RowDescription, RowDescription> Skeleton, Func<IReadOnlyList<RowDescription>, int, RepeatGrowth?> Growth, int FewestRuns);

    private static List<FoldedSize>? Of(IReadOnlyList<SizeRows> sizes, Kin kin)
    {
        var folded = new List<FoldedSize>();
        foreach (var size in sizes)
        {
            if (size.Rows.Count <= FewestAgain || One(size, kin) is not { } one) return null;
            if (folded.Count > 0 && !HaveOneShape(folded[0], one)) return null;
            folded.Add(one);
        }

        return folded.Count > 0 ? folded : null;
    }

    // How often and how long may differ, but not what comes round and what grows in it.
    private static bool HaveOneShape(FoldedSize one, FoldedSize other)
    {
        if (one.Folds.Count != other.Folds.Count) return false;
        for (var i = 0; i < one.Folds.Count; i++)
        {
            if (one.Folds[i].Period != other.Folds[i].Period || !Grow(one.Growths[i], other.Growths[i])) return false;
        }

        return true;
    }

    private static bool Grow(RepeatGrowth? one, RepeatGrowth? other) => one is null ? other is null : other is not null && one.And(other) is not null;

    private static FoldedSize? One(SizeRows size, Kin kin)
    {
        var folded = FoldedSize.Of(size, kin.Skeleton);
        var growths = new List<RepeatGrowth?>();
        foreach (var fold in folded.Folds)
        {
            if (!TryGrowth(folded, fold, kin, out var growth)) return null;
            growths.Add(growth);
        }

        return growths.Exists(static g => g is not null) ? folded with { Growths = growths } : null;
    }

    // False if rows that are alike but for their repeats do not grow as can be said.
    private static bool TryGrowth(FoldedSize folded, Fold fold, Kin kin, out RepeatGrowth? growth)
    {
        growth = null;
        for (var run = 0; run < fold.Period; run++)
        {
            var rows = RowsOf(folded, fold, run);
            if (rows.TrueForAll(row => row.Equals(rows[0]))) continue;
            var isAlone = fold.Times == 1 ? fold.Period == 1 : folded.Runs[fold.Start + run].Count == 1;
            if (growth is not null || !isAlone || rows.Count <= FewestAgain || fold.Period < kin.FewestRuns || kin.Growth(rows, run) is not { } grows) return false;
            growth = grows;
        }

        return true;
    }

    private static List<RowDescription> RowsOf(FoldedSize folded, Fold fold, int run)
    {
        var rows = new List<RowDescription>();
        for (var at = run; at < fold.Covered; at += fold.Period)
        {
            var (_, start, count) = folded.Runs[fold.Start + at];
            for (var i = 0; i < count; i++) rows.Add(folded.Size.Rows[start + i].Description);
        }

        return rows;
    }
}
