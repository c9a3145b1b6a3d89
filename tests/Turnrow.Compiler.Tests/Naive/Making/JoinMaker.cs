namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up pieces that are joined to an earlier one while they are worked: bands at every other row, rounds along a motif's side.</summary>
public sealed class JoinMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    private const int MostRows = 24;

    /// <summary>A band beside an edge, or rounds along a side; null if the edge has too many places, or not as many in all sizes.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="from">The earlier piece.</param>
    /// <param name="made">That piece in each size.</param>
    public Sketch? Along(string name, Sketch from, IReadOnlyList<PieceResult> made)
    {
        var join = from is { EndsInCorners: true, InRounds: true }
            ? new JoinNext(from.Name, RimEdge.LastRow, 0) { Side = tape.Below(3) }
            : new JoinNext(from.Name, tape.Of(RimEdge.Right, RimEdge.Left), tape.Below(2));
        var places = made.Select(join.Places).Distinct().ToList();
        if (places is not [> 0 and <= MostRows and var count] || count % (join.Skipping + 1) != 0)
            return null;
        var width = tape.Between(2, 6);
        return join.Side is null ? Band(name, from, join, count / (join.Skipping + 1), width) : Round(name, from, join, count, width);
    }

    private Sketch Band(string name, Sketch from, JoinNext join, int joins, int width)
    {
        var band = Begun(name, from, width);
        var stitch = tape.Of(stitches);
        var first = tape.OneIn(2);
        for (var i = 0; i < joins; i++)
        {
            Line(band, first ? [new Across(stitch), join] : [new Across(stitch)]);
            Line(band, first ? [new Across(stitch)] : [new Across(stitch), join]);
        }
        band.PlainStitch = first ? stitch : null;
        if (!first)
            band.Ground = Ground.Changed;
        return band;
    }

    private Sketch Round(string name, Sketch from, JoinNext join, int joins, int width)
    {
        var round = Begun(name, from, joins + width);
        var stitch = tape.Of(stitches);
        (round.InRounds, round.FirstSide) = (true, null);
        Line(round, Repeat.Times(joins, new Each(stitch, 1), join), new Across(stitch));
        (round.Ground, round.PlainStitch) = (Ground.Changed, null);
        return round;
    }

    private static Sketch Begun(string name, Sketch from, int width) => new(name, new BeginWith(width), from.Sizes)
    {
        Widths = [.. Enumerable.Repeat(width, from.Sizes)],
        FirstSide = Side.RS,
        CanBeMirrored = false,
    };

    private static void Line(Sketch sketch, params Word[] words)
    {
        sketch.Statements.Add(new RowLine(words) { IsRound = sketch.InRounds });
        sketch.AddRows(_ => 1);
    }
}
