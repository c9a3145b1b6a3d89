using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes the rows of a piece: each kind of row once in full, then what repeats it, with counts.</summary>
/// <param name="pattern">The pattern.</param>
/// <param name="names">Its sizes' names.</param>
/// <param name="words">The terms.</param>
/// <param name="paragraphs">Where to.</param>
internal sealed class RowsWriter(Pattern pattern, SizeNames names, Wording words, List<string> paragraphs)
{
    // After so many plain rows a maker likes to know how long the piece should be.
    private const int RowsToMeasure = 4;

    private readonly RowReferences _references = new();

    /// <summary>Writes the rows that one line makes.</summary>
    public void Write(IReadOnlyList<SizeRows> sizes)
    {
        foreach (var group in SizeGroups.Of(sizes))
        {
            for (var i = 0; i < group.Count; i++)
            {
                if (group[i].Round.Count > 1) Round(group[i]);
                else Like(group[i], i == group.Count - 1);
            }
        }
    }

    // Rows that are all worked alike.
    private void Like(FoldedRows rows, bool measure)
    {
        if (rows.Round[0].IsUnknown)
        {
            Add(rows, 0, "not known yet: the pattern's file has an error here or before.", null);
            return;
        }

        var once = rows.Times.All(static n => n == 1);
        if (_references.Exactly(rows.Sizes, 0) is { } number)
        {
            Add(rows, 0, (once ? "As Row " : "Repeat Row ") + number.Written(), Growth.Of(rows, 0));
        }
        else if (once && _references.Nearly(rows.Sizes, 0) is { } near)
        {
            Add(rows, 0, AsNearly(rows.Round[0], near.Row, near.EndsOtherwise), null);
        }
        else
        {
            WriteOut(rows);
            if (once) return;
            var more = rows.Only(i => rows.Times.Values[i] > 1);
            Add(more, 1, $"Repeat Row {NumberOf(more, 0).Written()}", Growth.Of(more, 1));
        }

        if (measure) Measure(rows);
    }

    private string AsNearly(RowDescription row, Sized<int> number, bool endsOtherwise)
    {
        var ending = endsOtherwise && row.EndsIn is { } top ? $", ending in {top.Written(words)}" : string.Empty;
        var remarks = row.Remarks.Count > 0 ? $"; {row.Remarks.Written(words)}" : string.Empty;
        return $"As Row {number.Written()}{ending}{remarks}";
    }

    private void WriteOut(FoldedRows rows)
    {
        var row = rows.Round[0];
        var only = OnlySizes(rows);
        foreach (var before in row.Before.Phrases) paragraphs.Add($"{only}{Wording.Sentence(before.Written(words))}.");
        var remarks = row.Remarks.Count > 0 ? $"; {row.Remarks.Written(words)}" : string.Empty;
        var text = $"{Wording.Sentence(row.Working.Written(words))}{remarks}.";
        paragraphs.Add($"{only}**Row {NumberOf(rows, 0).Written()}{SideOf(rows, 0)}:** {text}{CountOf(rows, 0, false)}");
        _references.Add(rows.Sizes, 0);
    }

    // Several rows that come round again: written out once, or named by the rows that they repeat.
    private void Round(FoldedRows rows)
    {
        if (InOrder(rows) is { } first)
        {
            var last = first.Select(n => n + rows.Round.Count - 1);
            Add(rows, 0, $"Repeat Rows {first.WrittenTo(last)} in order, {Numbers.Times(rows.Times)}{RestOf(rows, first)}", Growth.Of(rows, 0));
            return;
        }

        foreach (var part in Fold.Of(KindsOf(rows.Round), 1)) Like(PartOf(rows, part), false);
        var more = rows.Only(i => rows.Times.Values[i] > 1 || rows.Rest.Values[i] > 0);
        if (more.Sizes.Count == 0) return;
        var again = Numbers.MoreTimes(more.Times.Select(static n => n - 1));
        var text = $"Repeat the last {Numbers.Plain(rows.Round.Count)} rows {again}{RestOf(more, NumberOf(more, 0))}";
        Add(more, rows.Round.Count, text, Growth.Of(more, rows.Round.Count));
    }

    // The numbers of earlier rows that the round's rows repeat, if those stand one behind the other.
    private Sized<int>? InOrder(FoldedRows rows)
    {
        Sized<int>? first = null;
        for (var i = 0; i < rows.Round.Count; i++)
        {
            if (_references.Exactly(rows.Sizes, i) is not { } number) return null;
            first ??= number;
            if (!number.Equals(first.Select(n => n + i))) return null;
        }

        return first;
    }

    private string RestOf(FoldedRows rows, Sized<int> first)
    {
        if (rows.Rest.All(static n => n == 0)) return string.Empty;
        if (rows.Rest.IsOne) return $", then {FirstOfThem(rows.Rest.First, first)} once more";
        var text = string.Empty;
        foreach (var rest in rows.Rest.Values.Where(static n => n > 0).Distinct())
        {
            var at = Enumerable.Range(0, rows.Sizes.Count).Where(i => rows.Rest.Values[i] == rest).ToList();
            var sizes = names.OnlyWithin([.. at.Select(i => rows.Sizes[i].Size)]);
            text += $", then ({sizes}) {FirstOfThem(rest, Sized.Over(at.Select(i => first.Values[i])))} once more";
        }

        return text;
    }

    private static string FirstOfThem(int count, Sized<int> first)
    {
        if (count > 1) return $"the first {Numbers.Plain(count)} of them";
        return first.IsOne ? $"Row {first.Written()}" : "the first of them";
    }

    private static FoldedRows PartOf(FoldedRows rows, Fold part) => new(
        [.. rows.Sizes.Select(s => s with { Rows = [.. s.Rows.Skip(part.Start).Take(part.Covered)] })],
        [rows.Round[part.Start]],
        Sized.Over(rows.Sizes.Select(_ => part.Times)),
        Sized.Over(rows.Sizes.Select(static _ => 0)));

    private static List<int> KindsOf(IReadOnlyList<RowDescription> round)
    {
        var kinds = new List<int>();
        for (var i = 0; i < round.Count; i++) kinds.Add(i > 0 && round[i].Equals(round[i - 1]) ? kinds[^1] : i);
        return kinds;
    }

    // A paragraph for the rows from an index on, named by their numbers, with the last one's count.
    private void Add(FoldedRows rows, int from, string text, Growth? growth)
    {
        var first = NumberOf(rows, from);
        var last = Sized.Over(rows.Sizes.Select(static s => s.Rows[^1].Row.Number));
        var one = first.Equals(last);
        var label = one ? $"Row {first.Written()}{SideOf(rows, from)}" : $"Rows {first.WrittenTo(last)}";
        var end = text.EndsWith('.') ? string.Empty : ".";
        paragraphs.Add($"{OnlySizes(rows)}**{label}:** {text}{Said(growth, rows)}{end}{CountOf(rows, -1, !one && IsEven(rows, from))}");
    }

    private string Said(Growth? growth, FoldedRows rows)
    {
        if (growth is null || rows.Sizes.All(static s => s.Rows.Count == 1)) return string.Empty;
        var number = growth.Change.Select(Math.Abs);
        var stitch = Counted(rows, -1)?.OnlyStitch is { } only ? words.Stitch(only) : number.All(static n => n == 1) ? words.St : words.Sts;
        var more = growth.Change.First > 0 ? "more" : "fewer";
        var every = growth.Every == 1 ? "each row" : $"every {Numbers.Plain(growth.Every)} rows";
        return $"; {number.Written()} {stitch} {more} {every}";
    }

    private static bool IsEven(FoldedRows rows, int from)
    {
        foreach (var size in rows.Sizes)
        {
            for (var i = from; i < size.Rows.Count; i++)
            {
                if (size.Rows[i].Row.Work?.Stitches != size.Rows[^1].Row.Work?.Stitches) return false;
            }
        }

        return true;
    }

    private void Measure(FoldedRows rows)
    {
        if (rows.Sizes.Max(static s => s.Rows.Count) < RowsToMeasure) return;
        var heights = new List<Rational>();
        foreach (var size in rows.Sizes)
        {
            if (size.Rows[^1].Row.Plan is not ShapedPlan { IsPlain: true }) return;
            if (pattern.Gauges.HeightOf([.. size.Piece.Rows.Take(size.Rows[^1].Row.Number)]) is not { } height) return;
            heights.Add(height);
        }

        paragraphs[^1] += $" Piece measures {Lengths.Both(Sized.Over(heights), pattern.InInches)}.";
    }

    private string OnlySizes(FoldedRows rows) => names.Only([.. rows.Sizes.Select(static s => s.Size)]);

    private static Sized<int> NumberOf(FoldedRows rows, int index) => Sized.Over(rows.Sizes.Select(s => s.Rows[index].Row.Number));

    private string SideOf(FoldedRows rows, int index) =>
        $" ({Sized.Over(rows.Sizes.Select(s => s.Rows[index].Row.RightSide)).Written(words.Side)})";

    private string CountOf(FoldedRows rows, int index, bool inEach) =>
        Counted(rows, index) is { } count ? $" [{count.Written(words)}{(inEach ? " in each row" : string.Empty)}]" : string.Empty;

    private static RowCount? Counted(FoldedRows rows, int index) =>
        RowCount.Of(rows.Sizes.Select(s => s.Rows[index < 0 ? s.Rows.Count - 1 : index].Row.Work));
}
