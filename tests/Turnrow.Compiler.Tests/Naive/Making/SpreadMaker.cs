namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up changes that are spread over whole rows or rounds, by a schedule or by a slope; the last row is of one plain stitch.</summary>
public sealed class SpreadMaker(ChoiceTape tape)
{
    private const int Widest = 70;

    /// <summary>Adds such a line; false if it would not fit.</summary>
    public bool Any(Sketch sketch) => sketch.Narrowest >= 8 && sketch.Widest <= Widest && (tape.OneIn(2) ? Slope(sketch) : Schedule(sketch));

    private bool Schedule(Sketch sketch)
    {
        var (every, times, increase) = (tape.Between(1, 3), tape.Between(1, 3), tape.OneIn(2));
        var many = tape.Sizes(sketch.Sizes, 1, size => Math.Min(8, sketch.Widths[size] / (times + 1)));
        var rows = every * times + tape.Below(every);
        sketch.Statements.Add(new SpreadSchedule(rows, increase, new Sized(many), every, tape.OneIn(3)) { IsRound = sketch.InRounds });
        sketch.Widths = sketch.Widths.Select((width, size) => width + (increase ? times : -times) * many[size]).ToArray();
        sketch.AddRows(_ => rows);
        return true;
    }

    private bool Slope(Sketch sketch)
    {
        var rows = tape.Sizes(sketch.Sizes, 1, _ => 6);
        var to = sketch.Widths.Select(width => tape.OneIn(2) ? width + tape.Below(width / 2) : width - tape.Below(width / 3)).ToArray();
        sketch.Statements.Add(new SlopeAround(new Sized(rows), new Sized(to)) { IsRound = sketch.InRounds });
        sketch.Widths = to;
        sketch.AddRows(size => rows[size]);
        return true;
    }
}
