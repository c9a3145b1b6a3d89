using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Compiler.Joins;

/// <summary>Finds out whether the yarn is where a pick-up begins.</summary>
internal static class PickUpYarn
{
    /// <summary>The beginning of a pick-up, yarn and all.</summary>
    public static PickUpStart Find(IReadOnlyList<PickUpLeg> walk, bool rightSide, Func<PickUpLeg, bool> taken) =>
        new(walk, rightSide, taken(walk[0]) || !YarnIsThere(walk[0]));

    // The yarn hangs at one end of the last row. It is at the beginning of a walk down that edge, and of a walk along the row from there; a walk
    // up begins at the other end.
    private static bool YarnIsThere(PickUpLeg leg)
    {
        if (leg.Piece.FastenedOff) return false;
        if (leg.Stretch.Kind == StretchKind.LastRow) return !leg.Piece.EndsInRounds && leg.Piece.HookAt == (leg.Upwards ? Hand.Right : Hand.Left);
        return !leg.Upwards && leg.Hand == leg.Piece.HookAt && leg.Stretch.LastRow == leg.Piece.Rows.Count;
    }
}
