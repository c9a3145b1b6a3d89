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
            var other = second is null ? walk with { Edge = Edge(first) } : Walk(second, false);
            var seam = new NaiveSeam(walk, other, tape.OneIn(2));
            var more = pattern with { Seams = [.. pattern.Seams, seam] };
            if (walk != other && NaiveWorker.Work(more).IsValid)
                pattern = more;
        }
        return pattern;
    }

    private Sketch Any() => tape.Of<Sketch>(made);

    private NaiveWalk Walk(Sketch sketch, bool each) =>
        new(sketch.Copies > 1 && !each ? NaiveWorker.Copy(sketch.Name, tape.Below(sketch.Copies)) : sketch.Name, Edge(sketch));

    private RimEdge Edge(Sketch sketch) => sketch.Start is BeginWith or FoundationRow or ChainStart
        ? tape.Of(RimEdge.Right, RimEdge.Left, RimEdge.LastRow, RimEdge.Foundation)
        : tape.Of(RimEdge.Right, RimEdge.Left, RimEdge.LastRow);
}
