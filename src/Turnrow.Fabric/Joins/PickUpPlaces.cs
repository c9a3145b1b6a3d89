using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Joins;

/// <summary>Which places a pick-up meets along a last row or along the side of a motif.</summary>
public static class PickUpPlaces
{
    /// <summary>The places of the whole stretch that a leg lies in, as it is walked; null along other edges, and where they are not known.</summary>
    public static PlaceSequence? Of(PickUpLeg leg)
    {
        var places = leg.Stretch.Kind switch
        {
            StretchKind.LastRow => leg.Piece.TopFromRight,
            StretchKind.Side when leg.Piece.Top is not null => MotifSides.PlacesOf(leg.Piece, WholeSide(leg)),
            _ => null,
        };
        return leg.Upwards ? places : places?.Reversed();
    }

    // A leg may be only a part of it.
    private static Stretch WholeSide(PickUpLeg leg) => MotifSides.Of(leg.Piece, MotifSides.IndexOf(leg.Stretch.Name!.Split(' ')[0]))!.Stretches[0];
}
