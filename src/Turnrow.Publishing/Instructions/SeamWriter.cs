using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Writes a seam: which edges, which row meets which, how it is worked, and what stays open.</summary>
internal static class SeamWriter
{
    /// <summary>The seam as paragraphs; sizes that differ in more than numbers have one each.</summary>
    public static IEnumerable<string> Write(SeamInSizes seam, SizeNames names, Wording words, bool inInches)
    {
        var groups = new List<(List<int> Sizes, SeamText Text)>();
        for (var size = 0; size < seam.InSizes.Count; size++)
        {
            // A seam of no rows in some size is no seam there.
            if (seam.InSizes[size] is not { } one || one.WholeFirst.All(static s => s is { RowEnds: 0, Stitches: 0 })) continue;
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

        return groups.Select(g => names.Only(g.Sizes) + g.Text.Written(words, inInches));
    }
}

/// <summary>A seam as data, alike over sizes.</summary>
internal sealed record SeamText(SeamEdgeText First, SeamEdgeText Second, bool Opposite, bool Eased, SeamRate? Rate)
{
    /// <summary>The yarn that it is made with; null for the one there is.</summary>
    public string? Yarn { get; private init; }

    /// <summary>True if the right sides lie together, false if the wrong sides do; null if they lie side by side.</summary>
    public bool? RightSidesTogether { get; private init; }

    /// <summary>True if both edges have as many stitches and row-ends.</summary>
    public bool IsOneToOne { get; private init; }

    /// <summary>Where one row of stitches is folded, which lie on which; else null.</summary>
    public SeamFoldText? Fold { get; private init; }

    public static SeamText Of(Seam seam)
    {
        var text = new SeamText(
            SeamEdgeText.Of(seam.WholeFirst, seam.Lengths?.First), SeamEdgeText.Of(seam.WholeSecond, seam.Lengths?.Second), seam.OppositeOrder, seam.Eased, seam.Rate)
        {
            Yarn = seam.Yarn,
            // What is worked through both edges can't be worked while they lie flat; unsaid, the seam goes inside.
            RightSidesTogether = seam.RightSidesTogether ?? (seam.Rate is null ? null : true),
            IsOneToOne = seam.WholeFirst.Sum(Ends) == seam.WholeSecond.Sum(Ends),
            Fold = SeamFoldText.Of(seam),
        };
        if (!text.IsFold) return text;
        // Both are parts of one edge: what lies between them is behind the lower and before the upper, and stays open once.
        var (first, second) = (text.First.Parts[0], text.Second.Parts[0]);
        return text.IsFirstLower
            ? text with { First = text.First with { Parts = [first.UpTo(second)] }, Second = text.Second with { Parts = [second with { OpenBefore = null }] } }
            : text with { First = text.First with { Parts = [first with { OpenBefore = null }] }, Second = text.Second with { Parts = [second.UpTo(first)] } };
    }

    public SeamText? And(SeamText other) =>
        First.And(other.First) is { } first && Second.And(other.Second) is { } second
        && Opposite == other.Opposite && Eased == other.Eased && Rate == other.Rate && Yarn == other.Yarn && RightSidesTogether == other.RightSidesTogether && IsOneToOne == other.IsOneToOne
            && Fold is null == other.Fold is null && (Fold is null || Fold.And(other.Fold!) is not null)
            ? this with { First = first, Second = second, Fold = Fold?.And(other.Fold!) }
            : null;

    public string Written(Wording words, bool inInches)
    {
        if (Fold is not null) return $"**{Wording.Sentence(SeamFoldText.Title(First, Second, words))}:** {SeamFoldText.Laid(First, words.Side(RightSidesTogether != true))} {Fold.Matched(words)} {Worked(words)}";
        var text = $"**{Wording.Sentence(First.Title(words))} to {Second.Title(words, First.Each)}:** {Laid(words)}{(GoesOn ? Together(words) : $" {Matched(words)}")}{Ease(inInches)} {Worked(words)}";
        var (lower, upper) = IsFirstLower ? (First.Parts[0], Second.Parts[0]) : (Second.Parts[0], First.Parts[0]);
        var sides = IsFold
            ? [SeamSide.Open([lower.OpenBefore, lower.OpenBehind, upper.OpenBehind], lower.PieceName)]
            : First.Parts.Concat(Second.Parts).Select(static p => p.Open());
        var open = sides.OfType<string>().ToList();
        return open.Count == 0 ? text : $"{text} Leave {Wording.List(open)} open.";
    }

    private static int Ends(JoinSide side) => side.RowEnds + side.Stitches;

    private bool GoesOn => First.Parts.Count + Second.Parts.Count > 2;

    // Two stretches of rows of the same edge: the piece is folded across.
    private bool IsFold => !GoesOn && First.Parts[0].IsOfEdgeOf(Second.Parts[0]);

    private bool IsFirstLower => First.Parts[0].Rows is { } first && Second.Parts[0].Rows is { } second && first.First.First < second.First.First;

    private string Laid(Wording words) =>
        GoesOn ? $"Pin the two edges together from end to end, part by part in the order named, {Sides(words)}."
        : IsFold ? $"Fold {First.Parts[0].PieceName} across, {words.Side(RightSidesTogether != true)} out, so that the two parts of this edge lie together."
        : $"Lay the two edges {(RightSidesTogether is null ? "side by side" : "together")}, {Sides(words)}.";

    private string Sides(Wording words) => RightSidesTogether is { } inside ? $"{words.Side(inside)} facing each other" : $"{words.Side(true)} of both up";

    // Eased, only the ends meet for certain.
    private string Together(Wording words)
    {
        if (Eased) return Turns();
        var parts = First.Parts.Concat(Second.Parts).ToList();
        var how = (Rows: parts.Exists(static p => p.Rows is not null), Stitches: parts.Exists(static p => p.Rows is null || p.HasSteps));
        return Turns() + how switch
        {
            { Rows: true, Stitches: true } => $" Match them row for row and {words.St} for {words.St}.",
            { Rows: true } => " Match them row for row.",
            _ => $" Match them {words.St} for {words.St}.",
        };
    }

    private string Ease(bool inInches)
    {
        if (!Eased) return string.Empty;
        if (First.Length is not { } first || Second.Length is not { } second) return " Ease the longer edge to fit.";
        return $" Ease the longer edge to fit: the first measures {Lengths.Both(first, inInches)}, the second {Lengths.Both(second, inInches)}.";
    }

    private string Matched(Wording words)
    {
        var (one, other) = (First.Parts[0], Second.Parts[0]);
        // Stitches on the one side and rows on the other: they lie along each other by their lengths.
        if ((one.Rows is null) != (other.Rows is null)) return IsOneToOne ? $"Match each {words.St} with a row-end." : "Pin both ends and the middle together.";
        if (one.Rows is not { } first || other.Rows is not { } second) return $"Match them {words.St} for {words.St}{FromCorners(one, other)}.";
        if (one.Piece == other.Piece && first.Equals(second) && !Opposite && !one.HasSteps && !one.HasTurns && !other.HasTurns) return $"Match the two ends of {first.Each()}.";
        var (meetsFirst, meetsLast) = Opposite ? (second.Last, second.First) : (second.First, second.Last);
        var further = first.IsOne && second.IsOne
            ? string.Empty
            : $", and so on to Row {first.Last.Written()} of {one.PieceName} with Row {meetsLast.Written()} of {other.PieceName}";
        return $"Match them row for row, Row {first.First.Written()} of {one.PieceName} with Row {meetsFirst.Written()} of {other.PieceName}{further}{AtSteps(words)}.{Turns()}";
    }

    private static string FromCorners(SeamSide one, SeamSide other) => (one.Kind, other.Kind) switch
    {
        (StretchKind.Side, StretchKind.Side) => ", from corner to corner",
        (StretchKind.Side, _) or (_, StretchKind.Side) => ", the side from corner to corner",
        _ => string.Empty,
    };

    private string Turns()
    {
        var pieces = First.Parts.Concat(Second.Parts).Where(static part => part.HasTurns).Select(static part => part.PieceName).Distinct().ToList();
        var rounds = First.Parts.Concat(Second.Parts).Where(static part => part.HasRounds).Select(static part => part.PieceName).Distinct().ToList();
        return (pieces.Count == 0 ? string.Empty : $" Short rows of {Wording.List(pieces)} turn before this edge and have no end here.")
            + (rounds.Count == 0 ? string.Empty : $" Rounds of {Wording.List(rounds)} have no end here.");
    }

    private string AtSteps(Wording words) => First.Parts[0].HasSteps && Second.Parts[0].HasSteps ? $", and the edges between rows {words.St} for {words.St}" : string.Empty;

    private string Worked(Wording words)
    {
        var with = Yarn is null ? string.Empty : $" {Names.Words(Yarn)}";
        if (Rate is null) return with.Length == 0 ? "Sew them together." : $"Sew them together with{with}.";
        var stitches = $"{Numbers.Plain(Rate.Stitches)} {words.Stitch(Rate.Stitch)}";
        var unit = Rate.OfStitches ? words.St : "row";
        var units = Rate.OfStitches ? words.Sts : "rows";
        var rate = Rate.Per == 1 ? $"{stitches} in each {unit}" : $"{stitches} in every {Numbers.Plain(Rate.Per)} {units}";
        return $"Join{(with.Length == 0 ? " yarn" : with)} and work {rate} through both {(Fold is null ? "edges" : "halves")}. Fasten off.";
    }
}

/// <summary>One edge of a seam, put together of parts.</summary>
internal sealed record SeamEdgeText(IReadOnlyList<SeamSide> Parts, Sized<Rational>? Length)
{
    /// <summary>The common name of pieces of which each is meant; null if its first part is of one piece.</summary>
    public string? Each => Parts[0].OfEach;

    /// <summary><c>right edge (cap), last row and left edge (cap) of Right sleeve</c></summary>
    /// <param name="words">The terms.</param>
    /// <param name="before">Where the other edge is of each of several pieces, their name: this one is of the same piece then.</param>
    public string Title(Wording words, string? before = null)
    {
        var titles = new List<string>();
        for (var i = 0; i < Parts.Count; i++)
        {
            var from = i;
            while (i + 1 < Parts.Count && Parts[i + 1].Piece == Parts[from].Piece) i++;
            titles.Add($"{Wording.List([.. Parts.Skip(from).Take(i - from + 1).Select(p => p.EdgeTitle(words))])} of {(before is not null && before == Parts[from].OfEach ? $"the same {Names.Title(before)}" : Parts[from].PieceName)}");
        }

        return string.Join(", then ", titles);
    }

    public static SeamEdgeText Of(IReadOnlyList<JoinSide> edge, Rational? length) =>
        new([.. edge.Select(SeamSide.Of)], length is { } known ? Sized.Of(known) : null);

    public SeamEdgeText? And(SeamEdgeText other)
    {
        if (Parts.Count != other.Parts.Count || Length is null != other.Length is null) return null;
        var parts = new List<SeamSide>(Parts.Count);
        for (var i = 0; i < Parts.Count; i++)
        {
            if (Parts[i].And(other.Parts[i]) is not { } part) return null;
            parts.Add(part);
        }

        return new SeamEdgeText(parts, Length?.And(other.Length!));
    }
}
