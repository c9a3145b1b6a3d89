namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up a border along edges of an earlier piece, one behind the other, mostly with corners that it goes on round.</summary>
public sealed class RimMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    private const int Widest = 120;

    /// <summary>The edges and the rates; whether they come out, working it tells.</summary>
    public PickedUpRim Along(string piece)
    {
        var first = tape.Of(RimEdge.Right, RimEdge.LastRow, RimEdge.Left, RimEdge.Foundation);
        var edges = new List<RimEdge> { first };
        for (var more = tape.Between(0, 3); more > 0; more--)
            edges.Add(Rim.After(edges[^1]));
        int? inCorner = tape.OneIn(4) ? null : tape.Of(3, 1, 5);
        return new PickedUpRim(piece, edges, tape.Of(stitches), tape.Between(1, 3), tape.Between(1, 2), inCorner, edges.Count == 4 && tape.OneIn(2))
        {
            InSpace = tape.Of<int?>(1, null, 0, 2, 3),
            ToCorner = inCorner is not null && tape.OneIn(4) ? tape.Between(2, 20) : null,
        };
    }

    /// <summary>The piece with that row; nothing if it is too wide, too narrow, or has more corners in one size than in another.</summary>
    public Sketch? Begun(string name, PickedUpRim start, IReadOnlyList<PieceResult> sizes)
    {
        var counts = sizes.Select(size => size.Rows[0].Stitches).ToArray();
        var corners = sizes.Select(size => size.Rows[0].Places.Count(place => place.IsCorner)).Distinct().ToList();
        if (counts.Min() < 2 || counts.Max() > Widest || corners.Count > 1)
            return null;
        var claimed = tape.OneIn(2) ? start with { Claim = new Sized(counts) } : start;
        var sketch = new Sketch(name, claimed, sizes.Count) { Widths = counts, Begun = [.. counts], FirstSide = start.Around ? null : Side.RS, InRounds = start.Around };
        sketch.AddRows(_ => 1);
        sketch.PlainStitch = start.Stitch;
        if (corners[0] == 0)
            return sketch;
        new CornerMaker(tape, start.Stitch).GoOn(sketch, Between(sizes, corners[0], !start.Around));
        return sketch;
    }

    /// <summary>The stitches before each corner and behind the last one, as the next row meets them.</summary>
    private static int[][] Between(IReadOnlyList<PieceResult> sizes, int corners, bool isTurned)
    {
        var between = Enumerable.Range(0, corners + 1).Select(_ => new int[sizes.Count]).ToArray();
        for (var size = 0; size < sizes.Count; size++)
        {
            var at = 0;
            foreach (var place in sizes[size].Rows[0].Places)
            {
                if (place.IsCorner)
                    at++;
                else
                    between[at][size]++;
            }
        }
        if (isTurned)
            Array.Reverse(between);
        return between;
    }
}
