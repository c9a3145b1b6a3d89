using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Motifs;

/// <summary>
/// How a motif stands that is picked up around a piece of rows: that piece has a bottom and a top, as a picture has, whatever the motif's first
/// side is.
/// </summary>
public static class MotifStand
{
    /// <summary>The piece that a motif is picked up around; null if it begins otherwise, or around several pieces, or around one of rounds.</summary>
    public static Piece? Around(Piece motif) =>
        motif.Start is PickUpStart { Around: true, Walk: [{ Piece: { EndsInRounds: false } middle }, ..] walk } && walk.All(leg => leg.Piece == middle) ? middle : null;

    /// <summary>Which of the motif's sides lies at its left when that piece stands upright, from 0; null where the motif has no such stand.</summary>
    public static int? LeftSide(Piece motif, int sides)
    {
        if (Around(motif) is null || motif.Start is not PickUpStart { RightSide: true } start || SideOfLeft(start) is not { } side) return null;
        var passed = 0;
        foreach (var row in motif.Rows.Skip(1))
        {
            if (row is not { IsRound: true, Way: not RoundWay.Turned, IsBack: false, Work: { } work }) return null;
            passed += CornersPassed(work);
        }

        return (((side - passed) % sides) + sides) % sides;
    }

    // The side behind a corner has that corner's number; what lies before the first corner is the last side.
    private static int? SideOfLeft(PickUpStart start)
    {
        var corners = 0;
        foreach (var leg in start.Walk)
        {
            if (leg.IsCorner) corners++;
            else if (leg is { Hand: Hand.Left, Stretch.Kind: StretchKind.RowEnds }) return corners - 1;
        }

        return null;
    }

    // A round that begins further on has the corners that it passes on the way behind all others.
    private static int CornersPassed(RowWork work) =>
        work.BegunAt == 0 ? 0 : work.Below.Slice(work.Below.Count - work.BegunAt, work.BegunAt).CountWhere(static place => place.IsCorner);
}
