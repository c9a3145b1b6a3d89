using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Rows worked alike one behind the other, over sizes.</summary>
/// <param name="Row">How each is worked.</param>
/// <param name="Count">How many, a size.</param>
internal sealed record FoldedRun(RowDescription Row, Sized<int> Count);

/// <summary>A fold over the sizes that share it: rows alike but for their numbers.</summary>
/// <param name="Sizes">The rows in it, a size: all of them, repeats included.</param>
/// <param name="Round">The runs of one round.</param>
/// <param name="Times">Whole rounds, a size.</param>
/// <param name="Rest">Rows of an unfinished round, a size.</param>
internal sealed record FoldedRows(IReadOnlyList<SizeRows> Sizes, IReadOnlyList<FoldedRun> Round, Sized<int> Times, Sized<int> Rest)
{
    /// <summary>A repeat that is worked more times in each row of its run; null if rows are the same each time.</summary>
    public RepeatGrowth? Growing { get; init; }

    /// <summary>Rows of one round, a size.</summary>
    public Sized<int> RoundRows => Sized.Over(Enumerable.Range(0, Sizes.Count).Select(s => Offset(Round.Count, s)));

    /// <summary>The sizes' indexes.</summary>
    public IReadOnlyList<int> SizeIndexes => [.. Sizes.Select(static s => s.Size)];

    /// <summary>The same for some of the sizes.</summary>
    public FoldedRows Only(Func<int, bool> holds)
    {
        var kept = Enumerable.Range(0, Sizes.Count).Where(holds).ToList();
        if (kept.Count == Sizes.Count || kept.Count == 0) return this with { Sizes = [.. kept.Select(i => Sizes[i])] };
        return new FoldedRows(
            [.. kept.Select(i => Sizes[i])],
            [.. Round.Select((run, r) => new FoldedRun(
                SizeGroups.Together(kept.Select(i => Sizes[i].Rows[Offset(r, i)].Description)) ?? run.Row, Of(run.Count, kept)))],
            Of(Times, kept),
            Of(Rest, kept))
        { Growing = Growing is null ? null : Growing with { Step = Of(Growing.Step, kept) } };
    }

    /// <summary>The first row alone, of rows that are one run.</summary>
    public FoldedRows First() => new(
        [.. Sizes.Select(static s => s with { Rows = [s.Rows[0]] })], [Round[0] with { Count = Times.Select(static _ => 1) }], Times.Select(static _ => 1), Rest.Select(static _ => 0));

    /// <summary>One run of the first round by itself.</summary>
    public FoldedRows Run(int index) => new(
        [.. Sizes.Select((s, i) => s with { Rows = [.. s.Rows.Skip(Offset(index, i)).Take(Round[index].Count.Values[i])] })],
        [Round[index]],
        Times.Select(static _ => 1),
        Rest.Select(static _ => 0));

    private int Offset(int run, int size)
    {
        var offset = 0;
        for (var i = 0; i < run; i++) offset += Round[i].Count.Values[size];
        return offset;
    }

    private static Sized<int> Of(Sized<int> all, List<int> kept) => Sized.Over(kept.Select(i => all.Values[i]));
}
