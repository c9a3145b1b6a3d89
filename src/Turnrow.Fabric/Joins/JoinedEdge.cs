using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Joins;

/// <summary>
/// An edge of a piece that another is joined to while it is worked. What is said of it in several rows is said of one object, so that two are
/// the same only if they are one.
/// </summary>
/// <param name="side">The edge.</param>
public sealed class JoinedEdge(JoinSide side)
{
    private PlaceSequence? _against;

    /// <summary>The edge.</summary>
    public JoinSide Side { get; } = side;

    /// <summary>Of a motif in a blanket, which of the others it lies beside; null for a piece that has a name of its own.</summary>
    public Motifs.Neighbour? Beside { get; init; }

    /// <summary>True if there are places along it that a stitch can go into: neither what is held nor the other side of a bridge.</summary>
    public static bool IsPossible(JoinSide side) =>
        side.Hand is not null || side.Stretches is [{ Kind: StretchKind.LastRow or StretchKind.Foundation or StretchKind.Side }];

    /// <summary>Its places round the piece, its right side facing; null if they are not known.</summary>
    /// <param name="againstTheClock">True for up a right edge, from right to left along a last row, down a left edge.</param>
    public PlaceSequence? Places(bool againstTheClock) => (_against ??= Against()) is not { } against ? null : againstTheClock ? against : against.Reversed();

    private PlaceSequence? Against()
    {
        if (Side.Hand is { } hand) return OfEnds(hand == Hand.Right);
        var stretch = Side.Stretches[0];
        return stretch.Kind switch
        {
            StretchKind.Foundation => OfStretch(stretch),
            StretchKind.LastRow => Side.Piece.TopFromRight,
            _ when Side.Piece.Top is null => null,
            _ when Side.Piece.EndsOnRightSide => MotifSides.PlacesOf(Side.Piece, stretch),
            _ => MotifSides.PlacesOf(Side.Piece, stretch).Reversed(),
        };
    }

    private PlaceSequence OfEnds(bool upwards)
    {
        var builder = new PlaceSequenceBuilder();
        for (var i = 0; i < Side.Stretches.Count; i++) builder.Add(OfStretch(Side.Stretches[upwards ? i : Side.Stretches.Count - 1 - i]));
        return builder.Build();
    }

    private static PlaceSequence OfStretch(Stretch stretch) => PlaceSequence.Of(
        stretch.Kind switch
        {
            StretchKind.RowEnds => new Place(PlaceKind.RowEnd, null, 0),
            StretchKind.LeftStitches => new Place(PlaceKind.Stitch, null, 0),
            _ => new Place(PlaceKind.FoundationChain, null, 0),
        },
        stretch.Count);
}
