using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes rows in which a repeat grows: what grows once, and then each row's own number of times with its count, a line each.</summary>
internal sealed class GrowingRows(Pattern pattern, Wording words, FoldedRows rows, RepeatGrowth growth)
{
    /// <summary>What is worked more often in each of them, as it stands behind <c>but</c>.</summary>
    public string More(string than)
    {
        var times = growth.Step.All(static n => n == 1) ? "1 more time" : $"{growth.Step.Written()} more times";
        return $"[{growth.Words.Written(words)}] {times}{(growth.Places > 1 ? " in each place" : string.Empty)} than {than}";
    }

    /// <summary>A line for each row, without the first.</summary>
    public string EachRow()
    {
        var lines = new List<string>();
        for (var row = 1; row < rows.Sizes[0].Rows.Count; row++) lines.Add($"\n- {Name(row)}: {Times(row)} [{Count(row)}]");
        return string.Concat(lines);
    }

    /// <summary>A line for each time that the rows come round, without the first: how often it is worked then, and the counts of that row and of the last.</summary>
    public string EachRound()
    {
        var (period, all, lines) = (rows.RoundRows.First, rows.Sizes[0].Rows.Count, new List<string>());
        var growing = GrowingAt();
        for (var first = period; first < all; first += period)
        {
            var last = Math.Min(first + period, all) - 1;
            var counts = new List<string>();
            var isThere = first + growing <= last;
            if (isThere) counts.Add($"{Name(first + growing)}, {Times(first + growing)} [{Count(first + growing)}]");
            if (!isThere || last > first + growing) counts.Add($"{Name(last)} [{Count(last)}]");
            lines.Add($"\n- {string.Join("; ", counts)}");
        }

        return string.Concat(lines);
    }

    // Rows of a round before the one that grows.
    private int GrowingAt() => rows.Round.Take(growth.Run).Sum(static run => run.Count.First);

    private string Name(int row) => $"{(rows.Sizes[0].Rows[row].Row.IsRound ? "Round" : "Row")} {Sized.Over(rows.Sizes.Select(s => s.Rows[row].Row.Number)).Written()}";

    private string Times(int row) => Numbers.Times(Sized.Over(rows.Sizes.Select(s => growth.TimesIn(s.Rows[row].Description))));

    private string Count(int row) => RowCount.Of(rows.Sizes.Select(s => s.Rows[row].Row.Work), pattern.Counting)?.Written(words) ?? string.Empty;
}
