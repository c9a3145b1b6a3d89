using Turnrow.Fabric.Places;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>Finds the corners of a round.</summary>
internal static class CornersOf
{
    private const int Most = 12;

    /// <summary>The places that are corners, in working order; none if they are more than a polygon is drawn with.</summary>
    public static IReadOnlyList<int> Round(PlaceSequence tops)
    {
        if (!tops.HasCorners) return [];
        var corners = new List<int>();
        var cursor = new PlaceCursor(tops);
        for (var ahead = cursor.ToCorner(); ahead >= 0; ahead = cursor.Remaining == 0 ? -1 : cursor.ToCorner())
        {
            if (corners.Count == Most) return [];
            cursor.Pass(ahead);
            corners.Add(tops.Count - cursor.Remaining);
            cursor.Pass(1);
        }

        return corners;
    }
}
