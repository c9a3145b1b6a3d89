namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up short rows, and rows behind them that work over all that was left.</summary>
public sealed class ShortRowMaker(ChoiceTape tape)
{
    /// <summary>True if the sketch now has short rows; false if it is too narrow.</summary>
    public bool Any(Sketch sketch)
    {
        if (sketch.Narrowest < 8 || sketch.PlainStitch is not { } stitch || sketch.Rows.Min() == 0)
            return false;
        sketch.HasShortRows = true;
        switch (tape.Below(3))
        {
            case 0: AtEdge(sketch); break;
            case 1: Shaped(sketch); break;
            default: InWords(sketch, stitch); break;
        }
        return true;
    }

    private EdgeRef Edge() => tape.Of(EdgeRef.Left, EdgeRef.Right, EdgeRef.Both);

    // The first of two rows that go to the edge turns, the second works over what was left.
    private void AtEdge(Sketch sketch)
    {
        var count = tape.Sizes(sketch.Sizes, 1, size => (sketch.Widths[size] - 2) / 2);
        sketch.Statements.Add(new LeaveForLater(new Sized(count), Edge()));
        Straight(sketch, 4);
    }

    private void Shaped(Sketch sketch)
    {
        var stitches = tape.Between(1, 3);
        var times = tape.Between(1, Math.Max(1, (sketch.Narrowest - 2) / (2 * stitches)));
        times = Math.Min(times, 4);
        var every = tape.Between(2, 3);
        var after = tape.Below(3);
        var rows = after + every * times + tape.Below(2);
        var schedule = new Schedule(false, stitches, Edge(), [new Leg(every, times)], after) { ForLater = true };
        sketch.Statements.Add(new Shape(RowSpan.Of(rows), [schedule]));
        sketch.AddRows(_ => rows);
        Straight(sketch, 2);
    }

    // Left, partly worked over, and all worked over: the more that waits, the fewer it leaves.
    private void InWords(Sketch sketch, string stitch)
    {
        sketch.CanBeMirrored = false;
        var remain = tape.Sizes(sketch.Sizes, 2, size => sketch.Widths[size] - 2);
        Turn(sketch, stitch, remain);
        if (tape.OneIn(3))
            OverTheGap(sketch, stitch, remain);
        else if (tape.OneIn(2))
            Turn(sketch, stitch, sketch.For(size => Math.Max(1, remain[size] / 2)));
        else if (tape.OneIn(2))
            Turn(sketch, stitch, sketch.For(size => Math.Min(sketch.Widths[size] - 1, remain[size] + 1)));
        Straight(sketch, 2);
    }

    // A heel: a decrease across the gap, and perhaps fewer left behind it; or up to the gap and a little over it.
    private void OverTheGap(Sketch sketch, string stitch, int[] remain)
    {
        var decreases = tape.OneIn(2);
        var words = decreases ? new List<Word> { new ToTurn(stitch, 1), new Together(stitch, 2) } : [new ToTurn(stitch, 0), new Each(stitch, 1)];
        if (remain.Min() >= 3 && tape.OneIn(2))
            words.AddRange([new Each(stitch, 1), new LeaveUnworked(sketch.For(size => remain[size] - 2)) { ForLater = true }]);
        else
            words.Add(new Across(stitch));
        sketch.Statements.Add(new RowLine(words));
        sketch.Statements.Add(new RowLine([new Across(stitch)]));
        sketch.AddRows(_ => 2);
        if (decreases)
            sketch.Widths = [.. sketch.Widths.Select(width => width - 1)];
    }

    private static void Turn(Sketch sketch, string stitch, int[] remain) => Turn(sketch, stitch, new Sized(remain));

    private static void Turn(Sketch sketch, string stitch, Sized remain)
    {
        sketch.Statements.Add(new RowLine([new Until(stitch, remain), new LeaveUnworked(remain) { ForLater = true }]));
        sketch.Statements.Add(new RowLine([new Across(stitch)]));
        sketch.AddRows(_ => 2);
    }

    private void Straight(Sketch sketch, int least)
    {
        var rows = tape.Sizes(sketch.Sizes, least, _ => least + 2);
        sketch.Statements.Add(new Straight(new Sized(rows)));
        sketch.AddRows(size => rows[size]);
    }
}
