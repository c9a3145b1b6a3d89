using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Lays the rows of one line side by side over the sizes.</summary>
internal static class SizeGroups
{
    /// <summary>
    /// Groups of sizes whose rows are alike, each with its folds. The size whose folds fit the most sizes shows how they fold; those are told
    /// with it, the others by themselves.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<FoldedRows>> Of(IReadOnlyList<SizeRows> sizes)
    {
        var groups = new List<IReadOnlyList<FoldedRows>>();
        var told = sizes.Where(static s => s.Rows.Count > 0).ToList();
        var left = GrowingFolds.Of(told) ?? [.. told.Select(static s => FoldedSize.Of(s, static row => row))];
        while (left.Count > 0)
        {
            var (model, fitting) = BestModel(left);
            groups.Add(Join(fitting, model.Folds.Count));
            left.RemoveAll(s => fitting.Exists(f => f.Size == s.Size));
        }

        if (groups.Count > 1 && groups.TrueForAll(IsOneRow)) groups = InFewer(groups);
        return [.. groups.OrderBy(static g => g[0].Sizes[0].Size)];
    }

    private static bool IsOneRow(IReadOnlyList<FoldedRows> group) => group.Count == 1 && group[0].Sizes.All(static s => s.Rows.Count == 1);

    // One row in each size: groups that differ in how often a part of it is worked are one.
    private static List<IReadOnlyList<FoldedRows>> InFewer(List<IReadOnlyList<FoldedRows>> groups)
    {
        var fewer = new List<IReadOnlyList<FoldedRows>>();
        foreach (var group in groups)
        {
            var at = -1;
            for (var i = 0; i < fewer.Count && at < 0; i++)
            {
                List<SizeRows> sizes = [.. fewer[i][0].Sizes.Concat(group[0].Sizes).OrderBy(static s => s.Size)];
                if (AlignedRows.Together([.. sizes.Select(static s => s.Rows[0].Description)]) is not { } row) continue;
                var once = Sized.Over(sizes.Select(static _ => 1));
                fewer[i] = [new FoldedRows(sizes, [new FoldedRun(row, once)], once, once.Select(static _ => 0))];
                at = i;
            }

            if (at < 0) fewer.Add(group);
        }

        return fewer;
    }

    private static (FoldedSize Model, List<FoldedSize> Fitting) BestModel(List<FoldedSize> sizes)
    {
        (FoldedSize Model, List<FoldedSize> Fitting)? best = null;
        foreach (var model in sizes.OrderByDescending(static s => s.Size.Rows.Count))
        {
            var fitting = sizes.Select(s => s == model ? s : s.AsFolded(model)).OfType<FoldedSize>().ToList();
            if (best is null || fitting.Count > best.Value.Fitting.Count) best = (model, fitting);
            if (fitting.Count == sizes.Count) break;
        }

        return best!.Value;
    }

    /// <summary>Descriptions as one over their sizes; null if they are not alike.</summary>
    public static RowDescription? Together(IEnumerable<RowDescription> descriptions)
    {
        RowDescription? all = null;
        foreach (var one in descriptions)
        {
            all = all is null ? one : all.And(one);
            if (all is null) return null;
        }

        return all;
    }

    private static List<FoldedRows> Join(List<FoldedSize> fitting, int count)
    {
        var joined = new List<FoldedRows>();
        for (var i = 0; i < count; i++)
        {
            var here = fitting.Where(f => i < f.Folds.Count).ToList();
            var round = new List<FoldedRun>();
            for (var r = 0; r < here[0].Folds[i].Period; r++)
            {
                var runs = here.Select(f => f.Runs[f.Folds[i].Start + r]).ToList();
                var alike = here.Select((f, s) => f.Size.Rows[runs[s].Start].Description).ToList();
                // What is not known in a size can't be told together with what is.
                var row = Together(alike) ?? alike.Find(static d => d.IsUnknown) ?? alike[0];
                round.Add(new FoldedRun(row, Sized.Over(runs.Select(static run => run.Count))));
            }

            joined.Add(new FoldedRows(
                [.. here.Select(f => f.RowsOf(i))],
                round,
                Sized.Over(here.Select(f => f.Folds[i].Times)),
                Sized.Over(here.Select(f => f.RestOf(i))))
            {
                Growing = here.Select(f => f.Growths.Count > 0 ? f.Growths[i] : null).Aggregate(static (all, one) => one is null ? null : all?.And(one)),
            });
        }

        return joined;
    }
}

/// <summary>The rows of one size, run by run, and how they fold.</summary>
internal sealed record FoldedSize(SizeRows Size, IReadOnlyList<LikeRun> Runs, IReadOnlyList<Fold> Folds)
{
    /// <summary>What grows in each fold, null for nothing; empty if nothing grows in any.</summary>
    public IReadOnlyList<RepeatGrowth?> Growths { get; init; } = [];

    /// <summary>The rows of a size folded.</summary>
    /// <param name="size">The rows.</param>
    /// <param name="alike">What rows that fold have in common.</param>
    public static FoldedSize Of(SizeRows size, Func<RowDescription, RowDescription> alike)
    {
        var runs = LikeRun.Of(Kinds(size.Rows, alike));
        return new FoldedSize(size, runs, Fold.Of(runs, size.Rows.Count > 0 && size.Rows[0].Row.Plan is WordsPlan { Of.Pattern: var pattern } ? pattern.Rows.Count : 0));
    }

    /// <summary>
    /// The same rows in another size's folds: the same rounds, as often as they come here; a size may end before the last of them. Null if they do
    /// not fit.
    /// </summary>
    public FoldedSize? AsFolded(FoldedSize model)
    {
        var own = new List<Fold>();
        var at = 0;
        foreach (var fold in model.Folds)
        {
            if (at == Runs.Count) break;
            if (at + fold.Period > Runs.Count) return null;
            for (var i = 0; i < fold.Period; i++)
            {
                if (model.RowOf(fold.Start + i).And(RowOf(at + i)) is null) return null;
            }

            // Where the model does not come round, neither may a size that is told with it: its next rows are told as the next fold.
            var here = fold.Period == 1 ? new Fold(at, 1, 1, 0) : Fold.At(Runs, at, fold.Period);
            own.Add(here);
            at += here.Covered;
        }

        return at == Runs.Count ? this with { Folds = own } : null;
    }

    /// <summary>The rows of a fold.</summary>
    public SizeRows RowsOf(int fold) =>
        Size with { Rows = [.. Size.Rows.Skip(Runs[Folds[fold].Start].Start).Take(Rows(Folds[fold].Start, Folds[fold].Covered))] };

    /// <summary>Rows of a fold's unfinished round.</summary>
    public int RestOf(int fold) => Rows(Folds[fold].Start + (Folds[fold].Period * Folds[fold].Times), Folds[fold].Rest);

    private int Rows(int firstRun, int runs)
    {
        var rows = 0;
        for (var i = 0; i < runs; i++) rows += Runs[firstRun + i].Count;
        return rows;
    }

    private RowDescription RowOf(int run) => Size.Rows[Runs[run].Start].Description;

    private static List<int> Kinds(IReadOnlyList<ToldRow> rows, Func<RowDescription, RowDescription> alike)
    {
        var known = new Dictionary<RowDescription, int>();
        var kinds = new List<int>(rows.Count);
        foreach (var row in rows)
        {
            var kin = alike(row.Description);
            if (!known.TryGetValue(kin, out var kind)) known[kin] = kind = known.Count;
            kinds.Add(kind);
        }

        return kinds;
    }
}
