using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>What differs between the things that two patterns make, in any size.</summary>
[Flags]
internal enum Difference
{
    /// <summary>The same rows, stitch for stitch, joined in the same way.</summary>
    Nothing = 0,

    /// <summary>The sizes, or which pieces there are.</summary>
    Pieces = 1,

    /// <summary>How many rows a piece has.</summary>
    RowCount = 2,

    /// <summary>How many stitches or spaces a row has.</summary>
    Counts = 4,

    /// <summary>The stitch that a row is made of.</summary>
    Stitches = 8,

    /// <summary>Into which places a row is worked, at the same count.</summary>
    Places = 16,

    /// <summary>How a row is turned: its chain.</summary>
    Turning = 32,

    /// <summary>The side that a row faces.</summary>
    Sides = 64,

    /// <summary>What is left or added at an edge.</summary>
    Steps = 128,

    /// <summary>Where a piece begins.</summary>
    Beginnings = 256,

    /// <summary>What is sewn to what.</summary>
    Seams = 512,

    /// <summary>How a seam is worked.</summary>
    SeamRates = 1024,

    /// <summary>How many stitches or spaces the last row of a piece has.</summary>
    LastCounts = 2048,
}

/// <summary>Finds what differs.</summary>
internal static class Differences
{
    public static Difference Between(Pattern first, Pattern second)
    {
        var (pieces, others) = (Sorted(first), Sorted(second));
        if (!first.Sizes.SequenceEqual(second.Sizes) || !pieces.Select(p => p.Name).SequenceEqual(others.Select(p => p.Name))) return Difference.Pieces;
        var found = Difference.Nothing;
        for (var i = 0; i < pieces.Count; i++) found |= Between(pieces[i], others[i]);
        var (seams, otherSeams) = (Seams(first), Seams(second));
        if (!seams.Select(s => s.Sides).SequenceEqual(otherSeams.Select(s => s.Sides))) found |= Difference.Seams;
        else if (!seams.Select(s => s.Rates).SequenceEqual(otherSeams.Select(s => s.Rates))) found |= Difference.SeamRates;
        return found;
    }

    /// <summary>What differs in a piece.</summary>
    public static Difference Between(PieceInSizes first, PieceInSizes second) =>
        first.InSizes.Zip(second.InSizes).Aggregate(Difference.Nothing, (found, p) => found | Between(p.First, p.Second));

    private static List<PieceInSizes> Sorted(Pattern pattern) => [.. pattern.Pieces.OrderBy(p => p.Name, StringComparer.Ordinal)];

    private static Difference Between(Piece a, Piece b)
    {
        var found = SameStart(a.Start, b.Start) ? Difference.Nothing : Difference.Beginnings;
        if (a.Rows is [.., { Work: { } last }] && b.Rows is [.., { Work: { } otherLast }] && (last.Stitches, last.Spaces) != (otherLast.Stitches, otherLast.Spaces)) found |= Difference.LastCounts;
        if (a.Rows.Count != b.Rows.Count) return found | Difference.RowCount;
        for (var i = 0; i < a.Rows.Count; i++) found |= Between(a.Rows[i], b.Rows[i]);
        return found;
    }

    private static Difference Between(Row a, Row b)
    {
        var found = a.RightSide == b.RightSide ? Difference.Nothing : Difference.Sides;
        if (!SameStep(a.Start, b.Start) || !SameStep(a.End, b.End)) found |= Difference.Steps;
        if (a.Work is not { } work || b.Work is not { } other) return found | (a.Work is null && b.Work is null ? Difference.Nothing : Difference.Counts);
        if (ReferenceEquals(work, other)) return found;
        if (work.Stitches != other.Stitches || work.Spaces != other.Spaces) found |= Difference.Counts;
        if (work.Opening != other.Opening) found |= Difference.Turning;
        if (SameHand.Is(work.Words, other.Words)) return found;
        return found | (SameHand.Stitches(work.Words).SetEquals(SameHand.Stitches(other.Words)) ? Difference.Places : Difference.Stitches);
    }

    private static bool SameStep(Step? a, Step? b) => a?.Adds == b?.Adds && a?.Count == b?.Count;

    private static bool SameStart(PieceStart? a, PieceStart? b) => (a, b) switch
    {
        // How many chains there are follows from the first row.
        (FoundationStart, FoundationStart) or (BothSidesStart, BothSidesStart) => true,
        (RingStart one, RingStart other) => one == other,
        (PartStart one, PartStart other) => (one.Base.Name, one.FromRight, one.Count) == (other.Base.Name, other.FromRight, other.Count),
        (AcrossStart one, AcrossStart other) => one.Parts.Select(static p => (p.Base.Name, p.FromRight, p.Count)).SequenceEqual(other.Parts.Select(static p => (p.Base.Name, p.FromRight, p.Count))),
        (PickUpStart one, PickUpStart other) => one.RightSide == other.RightSide && Said(one.Walk) == Said(other.Walk),
        _ => a is null && b is null,
    };

    private static string Said(IReadOnlyList<PickUpLeg> walk) => string.Join("; ", walk
        .Select(leg => (leg.Piece.Name, leg.Hand, leg.Upwards, leg.Rate, leg.Per))
        .Distinct()
        .Select(way => $"{way} {Said(walk.Where(l => (l.Piece.Name, l.Hand, l.Upwards, l.Rate, l.Per) == way).Select(l => l.Stretch))}"));

    // In whichever order they are sewn, and whichever side is named first.
    private static List<(string Sides, string Rates)> Seams(Pattern pattern) =>
    [
        .. pattern.Items.OfType<SeamInSizes>()
            .Select(s => (string.Join("; ", s.InSizes.Select(Sides)), string.Join("; ", s.InSizes.Select(i => $"{i?.Eased} {i?.Rate?.Stitches} {i?.Rate?.Stitch.Id} {i?.Rate?.Per}"))))
            .Order(),
    ];

    private static string Sides(Seam? seam) => seam is null ? "" : string.Join(" with ", new[] { Said(seam.First), Said(seam.Second) }.Order(StringComparer.Ordinal));

    private static string Said(JoinSide side) => $"{side.Piece.Name} {side.Hand} {Said(side.Stretches)}";

    // Which rows and stitches; where an edge changes its name among them is not felt.
    private static string Said(IEnumerable<Stretch> stretches) => string.Join(", ", stretches.GroupBy(s => s.Kind)
        .Select(kind => kind.Key == StretchKind.RowEnds
            ? $"rows {string.Join(' ', kind.SelectMany(s => Enumerable.Range(s.FirstRow, s.Count)).Order())}"
            : $"{kind.Key} {string.Join(' ', kind.Select(s => (s.FirstRow, s.Count)).Order())}"));
}
