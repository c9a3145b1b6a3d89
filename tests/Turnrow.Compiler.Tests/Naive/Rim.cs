namespace Turnrow.Compiler.Tests.Naive;

/// <summary>One place on the way round a piece: a row-end of its row, or a stitch or chain (row 0).</summary>
public readonly record struct RimPlace(RimEdge Edge, int Row, bool IsCorner)
{
    public bool IsSpace { get; init; }
}

/// <summary>The way round a piece against the clock, place by place: that is how one picks up with the right side facing.</summary>
public static class Rim
{
    public static List<RimPlace> Walk(PieceResult piece, IReadOnlyList<RimEdge> edges, bool isClosed)
    {
        var walk = new List<RimPlace>();
        for (var i = 0; i < edges.Count; i++)
        {
            if (i > 0 && edges[i] != After(edges[i - 1]))
                throw new UnworkableException("the edges do not follow each other");
            var places = Edge(piece, edges[i]);
            // Where a row of stitches turns to row-ends, its end is a corner.
            var isAcross = edges[i] is RimEdge.LastRow or RimEdge.Foundation;
            if (isAcross && (i > 0 || isClosed))
                places[0] = places[0] with { IsCorner = true };
            if (isAcross && (i + 1 < edges.Count || isClosed))
                places[^1] = places[^1] with { IsCorner = true };
            walk.AddRange(places);
        }
        if (isClosed && After(edges[^1]) != edges[0])
            throw new UnworkableException("the edges do not close");
        return walk;
    }

    public static RimEdge After(RimEdge edge) => (RimEdge)(((int)edge + 1) % 4);

    /// <summary>True if one walk backwards is the other.</summary>
    public static bool AreAlike(List<RimPlace> one, List<RimPlace> other) =>
        one.Select(place => (place.Row, place.IsCorner)).SequenceEqual(Enumerable.Reverse(other).Select(place => (place.Row, place.IsCorner)));

    /// <summary>True if two rows, one met from the other's end, have their corners at the same stitches.</summary>
    public static bool CornersLieAlike(List<Place> one, List<Place> other) =>
        one.Select(place => place.IsCorner).SequenceEqual(Enumerable.Reverse(other).Select(place => place.IsCorner));

    /// <summary>The stitches that are picked up, in the order of the walk; the middle one of a corner's is a corner.</summary>
    public static List<Place> PickedUp(List<RimPlace> walk, PickedUpRim up)
    {
        if (up.ToCorner is not null && up.InCorner is null)
            throw new UnworkableException("nothing is said of the corners");
        if (up.InCorner is { } said && (said % 2 == 0 || !walk.Exists(place => place.IsCorner)))
            throw new UnworkableException("the corners have no middle, or there are none");
        if (up.ToCorner is { } between)
            return Between(walk, up, between);
        if (up.InSpace is null && walk.Exists(place => place.IsSpace && !(place.IsCorner && up.InCorner is not null)))
            throw new UnworkableException("what goes into the spaces is not said");
        if (up is { InSpace: 0, FromOtherEnd: false } && walk[0] is { IsSpace: true } first && !(first.IsCorner && up.InCorner is not null))
            throw new UnworkableException("yarn is joined in a place that is skipped");
        var made = new List<Place>();
        var (rows, common) = (0, GreatestCommon(up.Stitches, up.PerRows));
        var (stitches, per) = (up.Stitches / common, up.PerRows / common);
        foreach (var place in walk)
        {
            if (place.Row > 0)
            {
                // Of so many rows those that are met first get one more, and it goes on so round corners.
                var more = rows++ % per < stitches % per ? 1 : 0;
                made.AddRange(Enumerable.Repeat(new Place(up.Stitch), stitches / per + more));
            }
            else
            {
                var plain = place.IsSpace ? up.InSpace ?? 1 : 1;
                var count = place.IsCorner ? up.InCorner ?? plain : plain;
                made.AddRange(Enumerable.Range(0, count).Select(i => new Place(up.Stitch) { IsCorner = place.IsCorner && up.InCorner is not null && i == count / 2 }));
            }
        }
        return rows % per == 0 ? made : throw new UnworkableException("the rate does not come out over these rows");
    }

    /// <summary>So many on each stretch of the way that has no corner in it, whatever it is made of.</summary>
    private static List<Place> Between(List<RimPlace> walk, PickedUpRim up, int between)
    {
        var made = new List<Place>();
        var isOpen = false;
        foreach (var place in walk)
        {
            if (!place.IsCorner && !isOpen)
                made.AddRange(Enumerable.Repeat(new Place(up.Stitch), between));
            if (place.IsCorner)
                made.AddRange(Enumerable.Range(0, up.InCorner!.Value).Select(i => new Place(up.Stitch) { IsCorner = i == up.InCorner / 2 }));
            isOpen = !place.IsCorner;
        }
        if (up.Around && isOpen && !walk[0].IsCorner)
            throw new UnclearException("a side lies in both ends of the round");
        return made;
    }

    private static int GreatestCommon(int one, int other) => Enumerable.Range(1, other).Last(n => one % n == 0 && other % n == 0);

    private static List<RimPlace> Edge(PieceResult piece, RimEdge edge)
    {
        if (piece.Rows.Exists(row => row.IsRound))
            throw new UnclearException("a tube has no edges to go round");
        var places = edge switch
        {
            RimEdge.Right => Ends(piece, Hand.Right, edge),
            RimEdge.Left => Enumerable.Reverse(Ends(piece, Hand.Left, edge)).ToList(),
            RimEdge.LastRow => LastRow(piece),
            _ => Foundation(piece),
        };
        return places.Count > 0 ? places : throw new UnworkableException("there is nothing along the edge");
    }

    private static List<RimPlace> Ends(PieceResult piece, Hand hand, RimEdge edge) => piece.Edge(hand)
        .SelectMany(stretch => Enumerable.Repeat(new RimPlace(edge, stretch.Kind == StretchKind.RowEnd ? stretch.Row : 0, false), stretch.Count)).ToList();

    private static List<RimPlace> LastRow(PieceResult piece)
    {
        if (piece.UsedPlaces.Count > 0)
            throw new UnclearException("parts go on from the last row");
        return piece.Rows[^1].Places.Select(place => new RimPlace(RimEdge.LastRow, 0, place.IsCorner) { IsSpace = place.IsSpace }).ToList();
    }

    private static List<RimPlace> Foundation(PieceResult piece)
    {
        var isChanged = piece.Edge(Hand.Right).Concat(piece.Edge(Hand.Left)).Any(stretch => stretch.Row == 1 && stretch.Kind != StretchKind.RowEnd);
        if (piece.FoundationChains is null || isChanged)
            throw new UnclearException("it is not said what its foundation is");
        return Enumerable.Repeat(new RimPlace(RimEdge.Foundation, 0, false), piece.FoundationPlaces).ToList();
    }
}
