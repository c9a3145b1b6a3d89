using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Finds the corners of a walk: the end of a foundation or of a last row where the walk turns to or from the row-ends of the same piece, and
/// the places of a last row that are marked as corners. Each becomes a leg of its own. A walk that is closed to a round turns at its closing
/// place too: the corner is where the foundation or the last row has it, so it closes the round or begins it. At the end of a strip of one stitch both
/// corners are that stitch, and what is said for a corner goes into it once.
/// </summary>
internal static class PickUpCorners
{
    /// <summary>The legs, with so many stitches in each corner.</summary>
    /// <param name="legs">The legs as they are walked.</param>
    /// <param name="inCorner">So many stitches.</param>
    /// <param name="around">True if the end of the walk meets its beginning.</param>
    public static List<PickUpLeg> CutOut(IReadOnlyList<PickUpLeg> legs, int inCorner, bool around)
    {
        var result = new List<PickUpLeg>();
        for (var i = 0; i < legs.Count; i++)
        {
            var leg = legs[i];
            if (leg.Stretch.Kind is not (StretchKind.Foundation or StretchKind.LastRow) || leg.Stretch.Count == 0)
            {
                result.Add(leg);
                continue;
            }

            var corners = Marked(leg);
            if ((i > 0 || around) && Turns(legs[i > 0 ? i - 1 : ^1], leg)) corners.Add(0);
            if ((i + 1 < legs.Count || around) && Turns(legs[(i + 1) % legs.Count], leg)) corners.Add(leg.Stretch.Count - 1);
            Cut(result, leg with { Part = i + 1 }, corners, inCorner);
        }

        return result;
    }

    private static bool Turns(PickUpLeg beside, PickUpLeg leg) => beside.Piece == leg.Piece && beside.Stretch.Kind == StretchKind.RowEnds;

    private static void Cut(List<PickUpLeg> result, PickUpLeg leg, SortedSet<int> corners, int inCorner)
    {
        var done = 0;
        foreach (var corner in corners)
        {
            if (corner > done) result.Add(leg.Slice(done, corner - done));
            result.Add(leg.Slice(corner, 1) with { Rate = inCorner, Per = 1, IsCorner = true });
            done = corner + 1;
        }

        if (done < leg.Stretch.Count) result.Add(leg.Slice(done, leg.Stretch.Count - done));
    }

    // Right side facing, a last row is met from its right edge.
    private static SortedSet<int> Marked(PickUpLeg leg)
    {
        var corners = new SortedSet<int>();
        if (leg.Stretch.Kind != StretchKind.LastRow || leg.Piece.TopFromRight is not { HasCorners: true } places) return corners;
        var cursor = new PlaceCursor(leg.Upwards ? places : places.Reversed());
        for (var at = 0; cursor.ToCorner() is >= 0 and var ahead;)
        {
            corners.Add(at + ahead);
            cursor.Pass(ahead + 1);
            at += ahead + 1;
        }

        return corners;
    }
}
