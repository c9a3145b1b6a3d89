namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up seams between edges that are as long as each other, or that are eased.</summary>
public sealed class SeamMaker(ChoiceTape tape, IReadOnlyList<Sketch> made)
{
    public NaivePattern Added(NaivePattern pattern)
    {
        for (var seams = tape.Below(4); seams > 0; seams--)
        {
            var (first, second) = (Any(), tape.OneIn(3) ? null : Any());
            // A seam of nothing but one of several says of each that it is closed by itself.
            var walk = Walk(first, second is null && tape.OneIn(2));
            var other = second is null ? OnEdge(walk, first) : Walk(second, false);
            var seam = tape.OneIn(4) ? Folded(walk) : new NaiveSeam(walk, other, tape.OneIn(2));
            var more = pattern with { Seams = [.. pattern.Seams, seam] };
            if ((walk != other || seam.FoldedAt is not null) && NaiveWorker.Work(more).IsValid)
                pattern = more;
        }
        return pattern;
    }

    // A tube that is closed flat; where it is folded is hers to say.
    private NaiveSeam Folded(NaiveWalk walk)
    {
        var edge = walk with { Side = null, Edge = walk.Edge == RimEdge.Foundation ? RimEdge.Foundation : RimEdge.LastRow };
        return new NaiveSeam(edge, edge, false) { FoldedAt = tape.OneIn(3) ? tape.Between(2, 9) : 1 };
    }

    private Sketch Any()
    {
        // Not many pieces have sides, so of those that do more is made.
        var motifs = made.Where(sketch => sketch is { EndsInCorners: true, InRounds: true }).ToList();
        return tape.Of<Sketch>(motifs.Count > 0 && tape.OneIn(2) ? motifs : made);
    }

    private NaiveWalk Walk(Sketch sketch, bool each) =>
        OnEdge(new NaiveWalk(sketch.Copies > 1 && !each ? NaiveWorker.Copy(sketch.Name, tape.Below(sketch.Copies)) : sketch.Name, RimEdge.LastRow), sketch);

    private NaiveWalk OnEdge(NaiveWalk walk, Sketch sketch) =>
        sketch is { EndsInCorners: true, InRounds: true } && !tape.OneIn(4) ? walk with { Edge = RimEdge.LastRow, Side = tape.Below(3) } : walk with { Edge = Edge(sketch), Side = null };

    private RimEdge Edge(Sketch sketch) => sketch.Start is BeginWith or FoundationRow or ChainStart
        ? tape.Of(RimEdge.Right, RimEdge.Left, RimEdge.LastRow, RimEdge.Foundation)
        : tape.Of(RimEdge.Right, RimEdge.Left, RimEdge.LastRow);
}
