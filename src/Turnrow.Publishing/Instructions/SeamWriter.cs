using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes a seam: which edges, which row meets which, how it is worked, and what stays open.</summary>
internal static class SeamWriter
{
    /// <summary>The seam as paragraphs; sizes that differ in more than numbers have one each.</summary>
    public static IEnumerable<string> Write(SeamInSizes seam, SizeNames names, Wording words)
    {
        var groups = new List<(List<int> Sizes, SeamText Text)>();
        for (var size = 0; size < seam.InSizes.Count; size++)
        {
            // A seam of no rows in some size is no seam there.
            if (seam.InSizes[size] is not { } one || one.First is { RowEnds: 0, Stitches: 0 }) continue;
            var text = SeamText.Of(one);
            var at = groups.FindIndex(g => g.Text.And(text) is not null);
            if (at < 0)
            {
                groups.Add(([size], text));
                continue;
            }

            groups[at].Sizes.Add(size);
            groups[at] = (groups[at].Sizes, groups[at].Text.And(text)!);
        }

        return groups.Select(g => names.Only(g.Sizes) + g.Text.Written(words));
    }
}

/// <summary>A seam as data, alike over sizes.</summary>
internal sealed record SeamText(SeamSide First, SeamSide Second, bool Opposite, bool Eased, SeamRate? Rate)
{
    public static SeamText Of(Seam seam)
    {
        var text = new SeamText(SeamSide.Of(seam.First), SeamSide.Of(seam.Second), seam.OppositeOrder, seam.Eased, seam.Rate);
        if (!text.IsFold) return text;
        // Both are parts of one edge: what lies between them is behind the lower and before the upper, and stays open once.
        return text.IsFirstLower
            ? text with { First = text.First.UpTo(text.Second), Second = text.Second with { OpenBefore = null } }
            : text with { First = text.First with { OpenBefore = null }, Second = text.Second.UpTo(text.First) };
    }

    public SeamText? And(SeamText other) =>
        First.And(other.First) is { } first && Second.And(other.Second) is { } second
        && Opposite == other.Opposite && Eased == other.Eased && Rate == other.Rate
            ? this with { First = first, Second = second }
            : null;

    public string Written(Wording words)
    {
        var text = $"**{Wording.Sentence(First.Title)} to {Second.Title}:** {Laid(words)} {Matched(words)} {Worked(words)}";
        var (lower, upper) = IsFirstLower ? (First, Second) : (Second, First);
        var sides = IsFold
            ? new[] { SeamSide.Open([lower.OpenBefore, lower.OpenBehind, upper.OpenBehind], lower.PieceName) }
            : [First.Open(), Second.Open()];
        var open = sides.OfType<string>().ToList();
        return open.Count == 0 ? text : $"{text} Leave {Wording.List(open)} open.";
    }

    // Two stretches of rows of the same edge: the piece is folded across.
    private bool IsFold => First.Piece == Second.Piece && First.Hand == Second.Hand && First.Rows is not null && Second.Rows is not null;

    private bool IsFirstLower => First.Rows is { } first && Second.Rows is { } second && first.First.First < second.First.First;

    private string Laid(Wording words) => IsFold
        ? $"Fold {First.PieceName} across, {words.Side(true)} out, so that the two parts of this edge lie together."
        : $"Lay the two edges side by side, {words.Side(true)} of both up.";

    private string Matched(Wording words)
    {
        var ease = Eased ? " Ease the longer edge to fit." : string.Empty;
        if (First.Rows is not { } first || Second.Rows is not { } second) return $"Match them {words.St} for {words.St}.{ease}";
        if (First.Piece == Second.Piece && first.Equals(second) && !Opposite && !First.HasSteps) return $"Match the two ends of {first.Each()}.{ease}";
        var (meetsFirst, meetsLast) = Opposite ? (second.Last, second.First) : (second.First, second.Last);
        var further = first.IsOne && second.IsOne
            ? string.Empty
            : $", and so on to Row {first.Last.Written()} of {First.PieceName} with Row {meetsLast.Written()} of {Second.PieceName}";
        return $"Match them row for row, Row {first.First.Written()} of {First.PieceName} with Row {meetsFirst.Written()} of {Second.PieceName}{further}{AtSteps(words)}.{ease}";
    }

    private string AtSteps(Wording words) => First.HasSteps && Second.HasSteps ? $", and the edges between rows {words.St} for {words.St}" : string.Empty;

    private string Worked(Wording words)
    {
        if (Rate is null) return "Sew them together.";
        var stitches = $"{Numbers.Plain(Rate.Stitches)} {words.Stitch(Rate.Stitch)}";
        var unit = Rate.OfStitches ? words.St : "row";
        var units = Rate.OfStitches ? words.Sts : "rows";
        var rate = Rate.Per == 1 ? $"{stitches} in each {unit}" : $"{stitches} in every {Numbers.Plain(Rate.Per)} {units}";
        return $"Join yarn and work {rate} through both edges. Fasten off.";
    }
}

/// <summary>Rows from one to another, a size.</summary>
internal sealed record RowSpan(Sized<int> First, Sized<int> Last)
{
    public RowSpan And(RowSpan other) => new(First.And(other.First), Last.And(other.Last));

    /// <summary>True if it is a single row in every size.</summary>
    public bool IsOne => First.Equals(Last);

    /// <summary><c>Row 1</c>, <c>each row from Row 1 to Row 4</c>.</summary>
    public string Each() => IsOne ? ToString() : $"each row from Row {First.Written()} to Row {Last.Written()}";

    public override string ToString() =>
        IsOne ? $"Row {First.Written()}" : $"Rows {First.WrittenTo(Last)}";
}

/// <summary>One edge of a seam.</summary>
internal sealed record SeamSide(string Piece, string? Edge, Hand? Hand, StretchKind Kind, RowSpan? Rows, RowSpan? OpenBefore, RowSpan? OpenBehind, bool HasSteps)
{
    public string PieceName => Names.Title(Piece);

    public string Title
    {
        get
        {
            if (Hand is not { } hand) return $"{(Kind == StretchKind.Foundation ? "beginning edge" : "last row")} of {PieceName}";
            var name = Edge is null ? string.Empty : $" ({Names.Words(Edge)})";
            return $"{Wording.Hand(hand)} edge{name} of {PieceName}";
        }
    }

    public static SeamSide Of(JoinSide side)
    {
        var ends = side.Stretches.Where(static s => s.Kind == StretchKind.RowEnds).ToList();
        var name = side.Stretches.Select(static s => s.Name).FirstOrDefault(static n => n is not null);
        var kind = side.Stretches.Count > 0 ? side.Stretches[0].Kind : StretchKind.RowEnds;
        if (side.Hand is not { } hand || ends.Count == 0) return new SeamSide(side.Piece.Name, name, side.Hand, kind, null, null, null, false);
        var rows = Span(ends[0].FirstRow, ends[^1].LastRow);
        // Rows of the same name that are not in the seam stay open.
        var named = side.Piece.At(hand).Stretches.Where(s => s.Kind == StretchKind.RowEnds && s.Name == name).ToList();
        var before = named.Count > 0 && named[0].FirstRow < ends[0].FirstRow ? Span(named[0].FirstRow, ends[0].FirstRow - 1) : null;
        var behind = named.Count > 0 && named[^1].LastRow > ends[^1].LastRow ? Span(ends[^1].LastRow + 1, named[^1].LastRow) : null;
        return new SeamSide(side.Piece.Name, name, hand, StretchKind.RowEnds, rows, before, behind, ends.Count < side.Stretches.Count);
    }

    public SeamSide? And(SeamSide other)
    {
        var alike = Piece == other.Piece && Edge == other.Edge && Hand == other.Hand && Kind == other.Kind
            && HasSteps == other.HasSteps && Rows is null == other.Rows is null && OpenBefore is null == other.OpenBefore is null
            && OpenBehind is null == other.OpenBehind is null;
        return alike
            ? this with
            {
                Rows = Rows?.And(other.Rows!),
                OpenBefore = OpenBefore?.And(other.OpenBefore!),
                OpenBehind = OpenBehind?.And(other.OpenBehind!),
            }
            : null;
    }

    /// <summary>The same, where another part of the same edge begins behind it: open is what lies between.</summary>
    public SeamSide UpTo(SeamSide next)
    {
        var (from, to) = (Rows!.Last.First + 1, next.Rows!.First.First - 1);
        return this with { OpenBehind = from <= to ? Span(from, to) : null };
    }

    public string? Open() => Open([OpenBefore, OpenBehind], PieceName);

    /// <summary>Rows of a piece that stay open, in words; null for none.</summary>
    public static string? Open(IEnumerable<RowSpan?> spans, string pieceName)
    {
        var open = spans.OfType<RowSpan>().Select(static r => r.ToString()).ToList();
        return open.Count == 0 ? null : $"{Wording.List(open)} of {pieceName}";
    }

    private static RowSpan Span(int first, int last) => new(Sized.Of(first), Sized.Of(last));
}
