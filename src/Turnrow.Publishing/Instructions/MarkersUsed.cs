using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Instructions;

/// <summary>The markers that a maker needs: those that stay in corners, and the one that a spiral keeps.</summary>
/// <param name="AtOnce">How many, at most, are in the work at once.</param>
/// <param name="InStitches">True if any is in a stitch.</param>
/// <param name="InSpaces">True if any is in a space.</param>
/// <param name="InRows">True if a row bears any.</param>
/// <param name="InRounds">True if a round bears any.</param>
internal readonly record struct MarkersUsed(int AtOnce, bool InStitches, bool InSpaces, bool InRows, bool InRounds)
{
    /// <summary>Those of a pattern, in all sizes.</summary>
    public static MarkersUsed In(Pattern pattern)
    {
        var used = default(MarkersUsed);
        foreach (var piece in pattern.Pieces)
        {
            foreach (var size in piece.InSizes)
            {
                foreach (var row in size.Rows) used = used.With(row);
            }
        }

        return used;
    }

    private MarkersUsed With(Row row)
    {
        var spiral = row is { IsRound: true, Way: RoundWay.Spiral } ? 1 : 0;
        if (row.Work is not { Tops.HasCorners: true } work) return this with { AtOnce = Math.Max(AtOnce, spiral) };
        var spaces = work.Tops.CountWhere(static place => place is { IsCorner: true, Kind: PlaceKind.Space });
        var stitches = work.Tops.CountWhere(static place => place.IsCorner && place.Kind != PlaceKind.Space);
        return new(Math.Max(AtOnce, spiral + spaces + stitches), InStitches || stitches > 0, InSpaces || spaces > 0, InRows || !row.IsRound, InRounds || row.IsRound);
    }
}
