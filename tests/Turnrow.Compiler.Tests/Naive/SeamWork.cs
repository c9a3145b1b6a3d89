namespace Turnrow.Compiler.Tests.Naive;

/// <summary>
/// Joins the edges of a worked pattern, seam by seam. One that is made several times is joined one by one; a seam of nothing but it closes each.
/// </summary>
public sealed class SeamWork(NaivePattern pattern, IReadOnlyDictionary<(string Piece, int Size), PieceResult> results)
{
    private readonly HashSet<(string Piece, int Size, RimEdge Edge, int Row)> _used = [];

    public List<string> Faults { get; } = [];

    public List<SeamFact> Seams { get; } = [];

    public List<string> UsedAgain { get; } = [];

    public void Join()
    {
        foreach (var piece in pattern.Pieces)
        {
            NotePickUp(piece);
            NoteJoins(piece);
        }
        foreach (var seam in pattern.Seams)
            Join(seam);
    }

    private void NotePickUp(NaivePiece piece)
    {
        var start = Mirror.Resolve(pattern, piece).Start;
        for (var size = 0; size < pattern.Sizes.Count; size++)
        {
            if (start is PickedUp up && up.Hand is { } hand)
                Use(up.Piece, size, hand == Hand.Right ? RimEdge.Right : RimEdge.Left, results[(piece.Name, size)].PickedUpRows);
            else if (start is PickedUp { Name: { } name } named)
                Use(named.Piece, size, results[(named.Piece, size)].RowEnds(Hand.Right, name).Count > 0 ? RimEdge.Right : RimEdge.Left, results[(piece.Name, size)].PickedUpRows);
            else if (start is PickedUpRim rim)
            {
                foreach (var edge in rim.Edges)
                    Use(rim.Piece, size, edge, Rows(rim.Piece, size, edge));
            }
        }
    }

    private void NoteJoins(NaivePiece piece)
    {
        var joins = piece.Statements.OfType<RowLine>().SelectMany(row => row.Words).SelectMany(word => word is Repeat repeat ? repeat.Words : [word]).OfType<JoinNext>();
        foreach (var join in joins.DistinctBy(join => (join.Piece, join.Edge, join.Side)))
        {
            for (var size = 0; size < pattern.Sizes.Count; size++)
                Use(join.Piece, size, join.Edge, join.Side is { } side ? [-1 - side] : Rows(join.Piece, size, join.Edge));
        }
    }

    /// <summary>True if any of it was used before.</summary>
    private bool Use(string piece, int size, RimEdge edge, IEnumerable<int> rows)
    {
        var isAgain = false;
        foreach (var row in rows)
            isAgain |= !_used.Add((piece, size, edge, row));
        return isAgain;
    }

    /// <summary>The rows of row-ends; a foundation and a last row are one thing, if there is anything of them.</summary>
    private List<int> Rows(string piece, int size, RimEdge edge)
    {
        var (rows, stitches) = Length(piece, size, edge);
        return edge switch
        {
            RimEdge.Right => results[(piece, size)].RowEnds(Hand.Right, null),
            RimEdge.Left => results[(piece, size)].RowEnds(Hand.Left, null),
            _ => rows + stitches > 0 ? [0] : [],
        };
    }

    private (int Rows, int Stitches) Length(string piece, int size, RimEdge edge)
    {
        // Of several, a row over one goes over all of them.
        var made = results[(Each(piece)[0], size)];
        if (edge is RimEdge.Right or RimEdge.Left)
        {
            var stretches = made.Edge(edge == RimEdge.Right ? Hand.Right : Hand.Left);
            var rows = stretches.Count(stretch => stretch.Kind == StretchKind.RowEnd);
            return (rows, stretches.Sum(stretch => stretch.Count) - rows);
        }
        return (0, edge == RimEdge.Foundation ? made.FoundationPlaces : made.Rows[^1].Places.Count - made.UsedPlaces.Count);
    }

    private (int Rows, int Stitches) Length(NaiveWalk walk, int size)
    {
        if (walk.Side is not { } side)
            return Length(walk.Piece, size, walk.Edge);
        if (PlacesOfSide(results[(Each(walk.Piece)[0], size)], side) is { } places)
            return (0, places);
        Faults.Add("there is no such side");
        return (0, 1);
    }

    /// <summary>She counts from the marker where a side begins to the next one, and both of those places too; null if there is no such side.</summary>
    public static int? PlacesOfSide(PieceResult piece, int side)
    {
        var round = piece.Rows[^1];
        var places = Frame.InWorkingOrder(round.Places, round.Side);
        var at = Enumerable.Range(0, places.Count).Where(i => places[i].IsCorner).Skip(side).DefaultIfEmpty(-1).First();
        if (!round.IsRound || at < 0 || places.Count(place => place.IsCorner) < 2)
            return null;
        var count = 2;
        for (at = (at + 1) % places.Count; !places[at].IsCorner; at = (at + 1) % places.Count)
            count++;
        return count;
    }

    private void Join(NaiveSeam seam)
    {
        var several = new[] { seam.First.Piece, seam.Second.Piece }.Where(name => Copies(name) > 1).ToList();
        if (several.Count > 0 && seam.First.Piece != seam.Second.Piece)
        {
            Faults.Add($"it is not said which {several[0]} is joined");
            return;
        }
        var isAgain = false;
        foreach (var walk in seam.FoldedAt is null ? new[] { seam.First, seam.Second } : [seam.First])
        {
            foreach (var piece in Each(walk.Piece))
            {
                for (var size = 0; size < pattern.Sizes.Count; size++)
                    isAgain |= Use(piece, size, walk.Edge, walk.Side is { } side ? [-1 - side] : Rows(piece, size, walk.Edge));
            }
        }
        if (isAgain && !UsedAgain.Contains(NotationWriter.Text(seam)))
            UsedAgain.Add(NotationWriter.Text(seam));
        for (var size = 0; size < pattern.Sizes.Count; size++)
        {
            var (first, second) = (Length(seam.First, size), Length(seam.Second, size));
            var fold = seam.FoldedAt is { } at ? Folded(seam.First, at, first.Stitches, size) : "";
            Seams.Add(new SeamFact(pattern.Sizes[size], Told(seam.First.Piece), first.Rows, first.Stitches, Told(seam.Second.Piece), second.Rows, second.Stitches) { Fold = fold });
            if (first is (0, 0) || second is (0, 0))
                Faults.Add("there is nothing to join");
            else if (!seam.Eased && first != second)
                Faults.Add("the edges are not as long as each other");
        }
    }

    // She counts the stitches, lays those before the fold behind the rest, and takes one from each end until none is left, or one.
    private string Folded(NaiveWalk edge, int at, int stitches, int size)
    {
        var made = results[(Each(edge.Piece)[0], size)];
        var isRound = made.Rows[edge.Edge == RimEdge.Foundation ? 0 : ^1].IsRound && made.UsedPlaces.Count == 0;
        if (stitches < 2 || at > stitches || (at > 1 && !isRound))
        {
            Faults.Add("it can't be folded there");
            return "";
        }

        var left = new LinkedList<int>(Enumerable.Range(at, stitches - at + 1).Concat(Enumerable.Range(1, at - 1)));
        var pairs = new List<string>();
        while (left.Count > 1)
        {
            pairs.Add($"{left.First!.Value}+{left.Last!.Value}");
            left.RemoveFirst();
            left.RemoveLast();
        }

        return string.Join(' ', pairs.Concat(left.Select(alone => $"{alone}")));
    }

    private int Copies(string name) => pattern.Pieces.FirstOrDefault(piece => piece.Name == name)?.Copies ?? 1;

    private string[] Each(string name) =>
        Copies(name) > 1 ? [.. Enumerable.Range(0, Copies(name)).Select(nth => NaiveWorker.Copy(name, nth))] : [name];

    private string Told(string name) => Copies(name) > 1 ? $"each {name}" : name;
}
