using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes rows in which a repeat grows: what grows once, and then each row's own number of times with its count, a line each.</summary>
internal sealed class GrowingRows(Pattern pattern, SizeNames names, Wording words, FoldedRows rows, RepeatGrowth growth)
{
    /// <summary>What is worked more often in each of them, as it stands behind <c>but</c>.</summary>
    public string More(string than)
    {
        if (growth.Before is { } decrease) return $"{growth.Step.Written()} {Fewer()} fewer before each {words.Together(decrease.Stitch, decrease.Hook, decrease.Takes)} than {than}";
        var times = growth.Step.All(static n => n == 1) ? "1 more time" : $"{growth.Step.Written()} more times";
        return $"[{growth.Words.Written(words)}] {times}{(growth.Places > 1 ? " in each place" : string.Empty)} than {than}";
    }

    private string Fewer() => growth.Words.Phrases[0] is BareStitches plain ? words.Stitch(plain.Stitch, plain.Hook) : words.Sts;

    /// <summary>A line for each row, without the first.</summary>
    public string EachRow()
    {
        var lines = new List<string>();
        for (var row = 1; row < rows.Sizes.Max(static s => s.Rows.Count); row++)
        {
            var here = rows.Sizes.Where(s => row < s.Rows.Count).Select(s => new RowOfSize(s, row)).ToList();
            lines.Add($"\n- {Only(here)}{Name(here)}: {Times(here)} [{Count(here)}]");
        }

        return string.Concat(lines);
    }

    /// <summary>A line for each time that the rows come round, without the first: how often it is worked then, and the counts of that row and of the last.</summary>
    public string EachRound()
    {
        var lines = new List<string>();
        var periods = rows.RoundRows;
        var most = Enumerable.Range(0, rows.Sizes.Count).Max(s => (rows.Sizes[s].Rows.Count + periods.Values[s] - 1) / periods.Values[s]);
        for (var time = 1; time < most; time++)
        {
            // Sizes that end within this time, and differ in what they come to, have lines of their own.
            foreach (var like in InTime(time).GroupBy(static t => (t.Grows is null, t.Last == t.Grows)))
            {
                var counts = new List<string>();
                var grows = like.Select(static t => t.Grows).OfType<RowOfSize>().ToList();
                if (grows.Count > 0) counts.Add($"{Name(grows)}{(growth.Before is null ? $", {Times(grows)}" : string.Empty)} [{Count(grows)}]");
                List<RowOfSize> last = [.. like.Select(static t => t.Last)];
                if (!like.Key.Item2) counts.Add($"{Name(last)} [{Count(last)}]");
                lines.Add($"\n- {Only(last)}{string.Join("; ", counts)}");
            }
        }

        return string.Concat(lines);
    }

    private sealed record RowOfSize(SizeRows Size, int At)
    {
        public ToldRow Row => Size.Rows[At];
    }

    // Of each size that comes so far: the row that grows, if it comes to it, and the last one.
    private IEnumerable<(RowOfSize? Grows, RowOfSize Last)> InTime(int time)
    {
        for (var s = 0; s < rows.Sizes.Count; s++)
        {
            var (size, period) = (rows.Sizes[s], rows.RoundRows.Values[s]);
            var first = period * time;
            if (first >= size.Rows.Count) continue;
            var last = Math.Min(first + period, size.Rows.Count) - 1;
            var growing = first + rows.Round.Take(growth.Run).Sum(run => run.Count.Values[s]);
            yield return (growing <= last ? new RowOfSize(size, growing) : null, new RowOfSize(size, last));
        }
    }

    private string Only(List<RowOfSize> of) => of.Count == rows.Sizes.Count ? string.Empty : names.Only([.. of.Select(static r => r.Size.Size)]);

    private static string Name(List<RowOfSize> of) => $"{(of[0].Row.Row.IsRound ? "Round" : "Row")} {Sized.Over(of.Select(static r => r.Row.Row.Number)).Written()}";

    private string Times(List<RowOfSize> of) => Numbers.Times(Sized.Over(of.Select(r => growth.TimesIn(r.Row.Description))));

    private string Count(List<RowOfSize> of) => RowCount.Of(of.Select(static r => r.Row.Row.Work), pattern.Counting)?.Written(words) ?? string.Empty;
}
