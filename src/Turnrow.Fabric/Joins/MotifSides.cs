using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Joins;

/// <summary>
/// The sides of a motif whose last round has corners: each goes from a corner to the next in working order, both of them included, since at a
/// corner two sides meet. The first is the one behind the round's first corner.
/// </summary>
public static class MotifSides
{
    /// <summary>What sides are called, in order; a round with more corners has no sides that could be told apart by name.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    /// <summary>Which side a word says, from 0; -1 if it says none.</summary>
    public static int IndexOf(string word)
    {
        for (var i = 0; i < Names.Count; i++)
        {
            if (string.Equals(Names[i], word, StringComparison.OrdinalIgnoreCase)) return i;
        }

        return -1;
    }

    /// <summary>How many sides a piece has; 0 if its last row is no round with at least two corners, or with more than can be named.</summary>
    public static int Count(Piece piece) => piece is { EndsInRounds: true, Top: { } top } && CornersOf(top) is { Count: >= 2 } corners ? corners.Count : 0;

    /// <summary>A side; null if the piece has no such.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="index">Which, from 0.</param>
    public static JoinSide? Of(Piece piece, int index)
    {
        if (index >= Count(piece)) return null;
        var corners = CornersOf(piece.Top!);
        var (from, to) = (corners[index], corners[(index + 1) % corners.Count]);
        var count = to > from ? to - from + 1 : piece.Top!.Count - from + to + 1;
        return new(piece, null, [new Stretch(StretchKind.Side, piece.Rows.Count, count, null, $"{Names[index]} side") { FromRight = from }]);
    }

    /// <summary>The places of a side, in working order.</summary>
    public static PlaceSequence PlacesOf(Piece piece, Stretch side)
    {
        var begun = piece.Top!.BegunAt(side.FromRight);
        return side.Count <= begun.Count ? begun.Slice(0, side.Count) : begun.Then(begun.Slice(0, side.Count - begun.Count));
    }

    private static List<int> CornersOf(PlaceSequence places)
    {
        var corners = new List<int>();
        var cursor = new PlaceCursor(places);
        while (cursor.Remaining > 0 && cursor.ToCorner() is >= 0 and var ahead)
        {
            if (corners.Count == Names.Count) return [];
            corners.Add(places.Count - cursor.Remaining + ahead);
            cursor.Pass(ahead + 1);
        }

        return corners;
    }
}
