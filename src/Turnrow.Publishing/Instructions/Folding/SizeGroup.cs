using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>A fold over the sizes that share it: rows alike but for their numbers.</summary>
/// <param name="Sizes">The rows in it, a size: all of them, repeats included.</param>
/// <param name="Round">The rows of one round, joined over the sizes.</param>
/// <param name="Times">Whole rounds, a size.</param>
/// <param name="Rest">Rows of an unfinished round, a size.</param>
internal sealed record FoldedRows(
    IReadOnlyList<SizeRows> Sizes, IReadOnlyList<RowDescription> Round, Sized<int> Times, Sized<int> Rest)
{
    /// <summary>The same for some of the sizes.</summary>
    public FoldedRows Only(Func<int, bool> at)
    {
        var kept = Enumerable.Range(0, Sizes.Count).Where(at).ToList();
        return this with
        {
            Sizes = [.. kept.Select(i => Sizes[i])],
            Times = Sized.Over(kept.Select(i => Times.Values[i])),
            Rest = Sized.Over(kept.Select(i => Rest.Values[i])),
            Round = [.. Enumerable.Range(0, Round.Count).Select(r => SizeGroups.Together(kept.Select(i => Sizes[i].Rows[r].Description)) ?? Round[r])],
        };
    }
}

/// <summary>Lays the rows of one line side by side over the sizes.</summary>
internal static class SizeGroups
{
    /// <summary>
    /// Groups of sizes whose rows are alike, each with its folds. The size with the most rows shows how they fold; sizes that fit that are
    /// told with it, the others by themselves.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<FoldedRows>> Of(IReadOnlyList<SizeRows> sizes)
    {
        var groups = new List<IReadOnlyList<FoldedRows>>();
        var left = sizes.Where(s => s.Rows.Count > 0).ToList();
        while (left.Count > 0)
        {
            var model = left.MaxBy(s => s.Rows.Count)!;
            var folds = Fold.Of(Kinds(model.Rows), Fold.LongestRound);
            var fitting = new List<(SizeRows Size, IReadOnlyList<Fold> Folds)>();
            foreach (var size in left)
            {
                if (size == model) fitting.Add((size, folds));
                else if (Fit(size, model, folds) is { } own) fitting.Add((size, own));
            }

            groups.Add(Join(fitting, folds.Count));
            left.RemoveAll(s => fitting.Exists(f => f.Size == s));
        }

        return [.. groups.OrderBy(g => g[0].Sizes[0].Size)];
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

    private static List<int> Kinds(IReadOnlyList<ToldRow> rows)
    {
        var known = new Dictionary<RowDescription, int>();
        var kinds = new List<int>(rows.Count);
        foreach (var row in rows)
        {
            if (!known.TryGetValue(row.Description, out var kind)) known[row.Description] = kind = known.Count;
            kinds.Add(kind);
        }

        return kinds;
    }

    // The model's folds on another size's rows: the same rounds, as often as they come there; a size may end before the last of them.
    private static List<Fold>? Fit(SizeRows size, SizeRows model, IReadOnlyList<Fold> folds)
    {
        var kinds = Kinds(size.Rows);
        var own = new List<Fold>();
        var at = 0;
        foreach (var fold in folds)
        {
            if (at == kinds.Count) break;
            if (at + fold.Period > kinds.Count) return null;
            for (var i = 0; i < fold.Period; i++)
            {
                if (model.Rows[fold.Start + i].Description.And(size.Rows[at + i].Description) is null) return null;
            }

            var here = Fold.At(kinds, at, fold.Period);
            own.Add(here);
            at += here.Covered;
        }

        return at == kinds.Count ? own : null;
    }

    private static List<FoldedRows> Join(List<(SizeRows Size, IReadOnlyList<Fold> Folds)> fitting, int count)
    {
        var joined = new List<FoldedRows>();
        for (var i = 0; i < count; i++)
        {
            var here = fitting.Where(f => i < f.Folds.Count).ToList();
            var rows = here.Select(f => f.Size with { Rows = [.. f.Size.Rows.Skip(f.Folds[i].Start).Take(f.Folds[i].Covered)] }).ToList();
            var period = here[0].Folds[i].Period;
            joined.Add(new FoldedRows(
                rows,
                [.. Enumerable.Range(0, period).Select(r => Together(rows.Select(s => s.Rows[r].Description))!)],
                Sized.Over(here.Select(f => f.Folds[i].Times)),
                Sized.Over(here.Select(f => f.Folds[i].Rest))));
        }

        return joined;
    }
}
