using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Whether two patterns make the same thing: the same rows, stitch for stitch, joined in the same way, in every size.</summary>
internal static class SameGarment
{
    public static bool Is(Pattern first, Pattern second)
    {
        if (!first.Sizes.SequenceEqual(second.Sizes)) return false;
        var (pieces, others) = (first.Pieces.OrderBy(p => p.Name, StringComparer.Ordinal).ToList(), second.Pieces.OrderBy(p => p.Name, StringComparer.Ordinal).ToList());
        return pieces.Count == others.Count && pieces.Zip(others).All(p => p.First.Name == p.Second.Name && SameInSizes(p.First, p.Second)) && SameSeams(first, second);
    }

    /// <summary>True if a piece is the same in every row and size.</summary>
    public static bool SameInSizes(PieceInSizes a, PieceInSizes b)
    {
        for (var i = 0; i < a.InSizes.Count; i++)
        {
            if (!Same(a.InSizes[i], b.InSizes[i])) return false;
        }

        return true;
    }

    private static bool Same(Piece a, Piece b) =>
        a.Rows.Count == b.Rows.Count && SameStart(a.Start, b.Start) && a.Rows.Zip(b.Rows).All(r => Same(r.First, r.Second));

    private static bool Same(Row a, Row b) =>
        a.RightSide == b.RightSide && a.Begins == b.Begins && SameStep(a.Start, b.Start) && SameStep(a.End, b.End)
        && a.Work is { } work && b.Work is { } other
        && (ReferenceEquals(work, other) || (work.Opening == other.Opening && work.Stitches == other.Stitches && WordLists.Same(work.Words, other.Words)));

    private static bool SameStep(Step? a, Step? b) => a?.Adds == b?.Adds && a?.Count == b?.Count;

    private static bool SameStart(PieceStart? a, PieceStart? b) => (a, b) switch
    {
        (FoundationStart one, FoundationStart other) => one.Chains == other.Chains,
        (PartStart one, PartStart other) => (one.Base.Name, one.FromRight, one.Count, one.Joined) == (other.Base.Name, other.FromRight, other.Count, other.Joined),
        (PickUpStart one, PickUpStart other) => one.RightSide == other.RightSide && one.Joined == other.Joined && one.Walk.Select(Said).SequenceEqual(other.Walk.Select(Said)),
        _ => a is null && b is null,
    };

    private static object Said(PickUpLeg leg) =>
        (leg.Piece.Name, leg.Hand, leg.Stretch.Kind, leg.Stretch.FirstRow, leg.Stretch.Count, leg.Upwards, leg.Rate, leg.Per);

    private static bool SameSeams(Pattern first, Pattern second)
    {
        var (seams, others) = (first.Items.OfType<SeamInSizes>().ToList(), second.Items.OfType<SeamInSizes>().ToList());
        return seams.Count == others.Count && seams.Zip(others).All(s => s.First.InSizes.Select(Said).SequenceEqual(s.Second.InSizes.Select(Said)));
    }

    private static object Said(Seam? seam) => (Said(seam?.First), Said(seam?.Second), seam?.Eased, seam?.Rate);

    private static string Said(JoinSide? side) =>
        side is null ? "" : $"{side.Piece.Name} {side.Hand} {string.Join(", ", side.Stretches.Select(s => (s.Kind, s.FirstRow, s.Count)))}";
}
