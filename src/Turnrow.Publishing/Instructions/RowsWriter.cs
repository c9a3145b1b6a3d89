using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes the rows of a piece: each kind of row once in full, then what repeats it, with counts.</summary>
/// <param name="pattern">The pattern.</param>
/// <param name="names">Its sizes' names.</param>
/// <param name="words">The terms.</param>
/// <param name="paragraphs">Where to.</param>
internal sealed class RowsWriter(Pattern pattern, SizeNames names, Wording words, Paragraphs paragraphs)
{
    private readonly RowReferences _references = new();
    private readonly RowSides _sides = new(names, words);
    private bool _isBegun;
    private (FoldedRows Rows, Sized<int> Row, int Paragraph)? _repeating;

    /// <summary>Writes the rows that one line makes.</summary>
    public void Write(IReadOnlyList<SizeRows> sizes)
    {
        var groups = SizeGroups.Of(sizes);
        var isBegun = groups.Count > 1 && BeginAll([.. sizes.Where(static s => s.Rows.Count > 0)]);
        foreach (var group in groups)
        {
            _isBegun = isBegun;
            for (var i = 0; i < group.Count; i++)
            {
                if (group[i].Round.Count > 1) Round(group[i]);
                else Like(group[i], i == group.Count - 1);
                _references.AddTold(group[i].Sizes);
            }
        }
    }

    // What all sizes do before the first row is told once, though they work it differently.
    private bool BeginAll(List<SizeRows> sizes)
    {
        var before = PhraseList.None;
        for (var s = 0; s < sizes.Count; s++)
        {
            if (sizes[s].Rows[0].Description is not { IsUnknown: false, Before: { Count: > 0 } own } || (s == 0 ? own : before.And(own)) is not { } all) return false;
            before = all;
        }

        Before(before, [.. sizes.Select(static s => s.Size)]);
        return true;
    }

    private void Before(PhraseList before, IReadOnlyList<int> sizes)
    {
        foreach (var phrase in before.Phrases) paragraphs.Add(sizes, $"{Wording.Sentence(phrase.Written(words))}.");
    }

    // Rows that are all worked alike.
    private void Like(FoldedRows rows, bool measure)
    {
        if (rows.Growing is { } growth)
        {
            Like(rows.First(), false);
            Growing(rows, None(rows).Select(static _ => 1), $"As {One(rows)} {NumberOf(rows, None(rows)).Written()}", new GrowingRows(pattern, names, words, rows, growth));
            return;
        }

        var row = rows.Round[0].Row;
        if (row.IsUnknown)
        {
            Add(rows, None(rows), "Not known yet: the pattern's file has an error here or before.", null);
            return;
        }

        var count = rows.Round[0].Count;
        var once = count.All(static n => n == 1);
        if (_references.Exactly(rows.Sizes, 0) is { } exact)
        {
            rows = WithBefore(rows, exact);
            var alone = rows.Sizes.All(static s => s.Rows.Count == 1);
            Add(rows, None(rows), (alone ? $"As {One(rows)} " : $"Repeat {One(rows)} ") + exact.Written(), Growth.Of(rows, None(rows), pattern.Counting));
            _repeating = (rows, exact, paragraphs.Count - 1);
        }
        else if (once && _references.Nearly(rows.Sizes, 0) is { } near)
        {
            Add(rows, None(rows), AsNearly(rows, near.Row, near.EndsOtherwise), null);
            if (row.Remarks.Count == 0) _references.Add(rows.Sizes, 0);
        }
        else if (once && row.OnlyYarn is { } yarn && _references.InOtherYarn(rows.Sizes, 0) is { } other)
        {
            Add(rows, None(rows), AsNearly(rows, other.Row, other.EndsOtherwise, yarn), null);
        }
        else
        {
            WriteOut(rows);
            if (once) return;
            var more = rows.Only(i => count.Values[i] > 1);
            if (more.Sizes.Count == 0) return;
            var first = more.Times.Select(static _ => 1);
            var number = NumberOf(more, None(more));
            var single = more.Sizes.All(static s => s.Rows.Count == 2);
            Add(more, first, (single ? $"As {One(rows)} " : $"Repeat {One(rows)} ") + number.Written(), Growth.Of(more, first, pattern.Counting));
            rows = more;
            _repeating = (more with { Sizes = [.. more.Sizes.Select(static s => s with { Rows = [.. s.Rows.Skip(1)] })] }, number, paragraphs.Count - 1);
        }

        if (measure) Measure(rows);
    }

    // Two lines of a file that repeat the same row, one behind the other, are one repeat to a maker.
    private FoldedRows WithBefore(FoldedRows rows, Sized<int> number)
    {
        if (_repeating is not { } before || before.Paragraph != paragraphs.Count - 1 || !before.Row.Equals(number)) return rows;
        if (!before.Rows.SizeIndexes.SequenceEqual(rows.SizeIndexes)) return rows;
        paragraphs.RemoveAt(before.Paragraph);
        return rows with
        {
            Sizes = [.. before.Rows.Sizes.Zip(rows.Sizes, static (a, b) => b with { Rows = [.. a.Rows, .. b.Rows] })],
        };
    }

    private string AsNearly(FoldedRows rows, Sized<int> number, bool endsOtherwise, string? yarn = null)
    {
        var row = rows.Round[0].Row;
        var ending = endsOtherwise && row.EndsIn is { } top ? $", ending in {top.Written(words)}" : string.Empty;
        var remarks = row.Remarks.Count > 0 ? $"; {row.Remarks.Written(words)}" : string.Empty;
        var with = yarn is null ? string.Empty : $", with {Names.Words(yarn)} throughout";
        return $"As {One(rows)} {number.Written()}{ending}{with}{remarks}";
    }

    private void WriteOut(FoldedRows rows)
    {
        var row = rows.Round[0].Row;
        words.IsForSome = names.Only(rows.SizeIndexes).Length > 0;
        if (!_isBegun) Before(row.Before, rows.SizeIndexes);
        _isBegun = false;
        var remarks = row.Remarks.Count > 0 ? $"; {row.Remarks.Written(words)}" : string.Empty;
        var text = $"{Wording.Sentence(row.Working.Written(words))}{remarks}.";
        paragraphs.Add(rows.SizeIndexes, $"**{One(rows)} {NumberOf(rows, None(rows)).Written()}{_sides.InHeading(rows, static _ => 0)}:** {_sides.InRow(rows, static _ => 0)}{text}{CountOf(rows, None(rows), false)}");
        words.IsForSome = false;
        _references.Add(rows.Sizes, 0);
    }

    // Several rows that come round again: written out once, or named by the rows that they repeat.
    private void Round(FoldedRows rows)
    {
        if (rows.Growing is null && _references.AreTheLast(rows.Sizes, rows.RoundRows))
        {
            var before = Sized.Over(NumberOf(rows, None(rows)).Values.Zip(rows.RoundRows.Values, static (n, count) => n - count));
            var more = Numbers.MoreTimes(rows.Times);
            Add(rows, None(rows), $"Repeat the last {rows.RoundRows.Written()} {Many(rows)} {more}{RestOf(rows, before)}", Growth.Of(rows, None(rows), pattern.Counting));
            return;
        }

        if (rows.Growing is null && InOrder(rows) is { } first)
        {
            var last = Sized.Over(first.Values.Zip(rows.RoundRows.Values, static (n, count) => n + count - 1));
            var inOrder = $"Repeat {One(rows)}s {first.WrittenTo(last)} in order, {Numbers.Times(rows.Times)}{RestOf(rows, first)}";
            Add(rows, None(rows), inOrder, Growth.Of(rows, None(rows), pattern.Counting));
            return;
        }

        FirstRound(rows);
        // In some sizes the rows do not come round: these work the first of them again, as all sizes begin to after the last time.
        Rest(rows.Only(i => rows.Times.Values[i] == 1 && rows.Rest.Values[i] == 1));
        Rest(rows.Only(i => rows.Times.Values[i] == 1 && rows.Rest.Values[i] > 1));
        var again = rows.Only(i => rows.Times.Values[i] > 1);
        if (again.Sizes.Count == 0) return;
        var times = Numbers.MoreTimes(again.Times.Select(static n => n - 1));
        var text = $"Repeat the last {again.RoundRows.Written()} {Many(again)} {times}{RestOf(again, NumberOf(again, None(again)))}";
        if (again.Growing is { } growth) Growing(again, again.RoundRows, text, new GrowingRows(pattern, names, words, again, growth));
        else Add(again, again.RoundRows, text, Growth.Of(again, again.RoundRows, pattern.Counting));
    }

    // What is worked more often each time is said once; then each time has its numbers.
    private void Growing(FoldedRows rows, Sized<int> without, string text, GrowingRows more)
    {
        var last = Sized.Over(rows.Sizes.Select(static s => s.Rows[^1].Row.Number));
        var (than, each) = rows.Round.Count == 1 ? ($"in the {One(rows).ToLowerInvariant()} before", more.EachRow()) : ("the time before", more.EachRound());
        paragraphs.Add(rows.SizeIndexes, $"**{One(rows)}s {NumberOf(rows, without).WrittenTo(last)}:** {text}, but work {more.More(than)}:{each}");
    }

    // Within a round rows may come round as well, if all sizes see it so.
    private void FirstRound(FoldedRows rows)
    {
        List<SizeRows> first = [.. rows.Sizes.Select((s, i) => s with { Rows = [.. s.Rows.Take(rows.RoundRows.Values[i])] })];
        if (SizeGroups.Of(first) is [var parts] && parts.Any(static part => part.Round.Count > 1))
        {
            foreach (var part in parts)
            {
                if (part.Round.Count > 1) Round(part);
                else Like(part, false);
                _references.AddTold(part.Sizes);
            }

            return;
        }

        for (var run = 0; run < rows.Round.Count; run++) Like(rows.Run(run), false);
    }

    private void Rest(FoldedRows rows)
    {
        if (rows.Sizes.Count == 0) return;
        var first = NumberOf(rows, None(rows));
        var last = Sized.Over(first.Values.Zip(rows.Rest.Values, static (n, count) => n + count - 1));
        Add(rows, rows.RoundRows, first.Equals(last) ? $"As {One(rows)} {first.Written()}" : $"Repeat {One(rows)}s {first.WrittenTo(last)} in order, once", null);
    }

    // The numbers of earlier rows that the round's rows repeat, if those stand one behind the other.
    private Sized<int>? InOrder(FoldedRows rows)
    {
        var firsts = new List<int>();
        for (var s = 0; s < rows.Sizes.Count; s++)
        {
            for (var i = 0; i < rows.RoundRows.Values[s]; i++)
            {
                if (_references.Exactly([rows.Sizes[s]], i) is not { } number) return null;
                if (i == 0) firsts.Add(number.First);
                else if (number.First != firsts[s] + i) return null;
            }
        }

        return Sized.Over(firsts);
    }

    private string RestOf(FoldedRows rows, Sized<int> first)
    {
        if (rows.Rest.All(static n => n == 0)) return string.Empty;
        var text = string.Empty;
        var at = Enumerable.Range(0, rows.Sizes.Count).Where(i => rows.Rest.Values[i] > 0).ToList();
        if (at.Count < rows.Sizes.Count) text = $" ({names.OnlyWithin([.. at.Select(i => rows.Sizes[i].Size)])})";
        var rest = FirstOfThem(rows, Sized.Over(at.Select(i => rows.Rest.Values[i])), Sized.Over(at.Select(i => first.Values[i])));
        return $", then{text} {rest} once more";
    }

    private static string FirstOfThem(FoldedRows rows, Sized<int> count, Sized<int> first)
    {
        if (!count.All(static n => n == 1)) return $"the first {count.Written()} of them";
        return first.IsOne ? $"{One(rows)} {first.Written()}" : "the first of them";
    }

    // A paragraph for rows without the first so many, named by their numbers, with the last one's count.
    private void Add(FoldedRows rows, Sized<int> without, string text, Growth? growth)
    {
        var first = NumberOf(rows, without);
        var last = Sized.Over(rows.Sizes.Select(static s => s.Rows[^1].Row.Number));
        var one = first.Equals(last);
        var label = one ? $"{One(rows)} {first.Written()}{_sides.InHeading(rows, s => without.Values[s])}" : $"{One(rows)}{(first.Values.Zip(last.Values).Any(static rows => rows.First == rows.Second) ? "(s)" : "s")} {first.WrittenTo(last)}";
        var end = text.EndsWith('.') ? string.Empty : ".";
        var added = one ? string.Empty : Said(growth, rows);
        var side = one ? _sides.InRow(rows, s => without.Values[s]) : string.Empty;
        paragraphs.Add(rows.SizeIndexes, $"**{label}:** {side}{text}{added}{end}{CountOf(rows, null, !one && IsEven(rows, without))}");
    }

    private string Said(Growth? growth, FoldedRows rows)
    {
        if (growth is null) return string.Empty;
        var number = growth.Change.Select(Math.Abs);
        var stitch = Counted(rows, null)?.OnlyStitch is { } only ? words.Stitch(only) : number.All(static n => n == 1) ? words.St : words.Sts;
        var more = growth.Change.First > 0 ? "more" : "fewer";
        var every = growth.Every.All(static n => n == 1) ? $"each {(IsRound(rows) ? "round" : "row")}" : $"every {growth.Every.Written()} {Many(rows)}";
        return $"; {number.Written()} {stitch} {more} {every}";
    }

    private static bool IsEven(FoldedRows rows, Sized<int> without)
    {
        for (var s = 0; s < rows.Sizes.Count; s++)
        {
            var size = rows.Sizes[s].Rows;
            for (var i = without.Values[s]; i < size.Count; i++)
            {
                if (!RowCount.AreAlike(size[i].Row.Work, size[^1].Row.Work)) return false;
            }
        }

        return true;
    }

    private void Measure(FoldedRows rows)
    {
        if (PieceMeasure.After(rows, pattern) is not { } measures) return;
        _repeating = null;
        paragraphs.Append($" {measures}");
    }

    private static Sized<int> None(FoldedRows rows) => rows.Times.Select(static _ => 0);

    // A line makes rows or rounds, never both.
    private static bool IsRound(FoldedRows rows) => rows.Sizes[0].Rows is [{ Row.IsRound: true }, ..];

    private static string One(FoldedRows rows) => IsRound(rows) ? "Round" : "Row";

    private static string Many(FoldedRows rows) => IsRound(rows) ? "rounds" : "rows";

    private static Sized<int> NumberOf(FoldedRows rows, Sized<int> index) =>
        Sized.Over(rows.Sizes.Select((s, i) => s.Rows[index.Values[i]].Row.Number));

    private string CountOf(FoldedRows rows, Sized<int>? index, bool inEach) =>
        Counted(rows, index) is { } count ? $" [{count.Written(words)}{(inEach ? $" in each {(IsRound(rows) ? "round" : "row")}" : string.Empty)}]" : string.Empty;

    // Of the last row where no index is given.
    private RowCount? Counted(FoldedRows rows, Sized<int>? index) =>
        RowCount.Of(rows.Sizes.Select((s, i) => s.Rows[index?.Values[i] ?? (s.Rows.Count - 1)].Row.Work), pattern.Counting);
}
