namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up rounds: into them, on in them, and out of them again into rows that go on or back.</summary>
public sealed class RoundMaker(ChoiceTape tape, RowMaker rows, IReadOnlyList<string> stitches)
{
    /// <summary>Goes over into rounds; false if the sketch stands on spaces, which a round meets otherwise than a row.</summary>
    public bool Begin(Sketch sketch)
    {
        if (!sketch.StandsOnStitches)
            return false;
        sketch.InRounds = true;
        sketch.FirstSide = null;
        rows.FirstRound(sketch);
        return true;
    }

    /// <summary>One more line of a sketch that is in rounds.</summary>
    public void Another(Sketch sketch)
    {
        Action<Sketch>[] kinds = [rows.AnyRound, rows.PlainRows, Straight, Shape, Spread, OutOfRounds, Otherwise, FurtherOn, Heel];
        tape.Of(kinds)(sketch);
    }

    private void OutOfRounds(Sketch sketch)
    {
        var stitch = tape.Of(stitches);
        sketch.InRounds = false;
        sketch.Statements.Add(new RowLine([new Across(stitch)], null, tape.Of<Side?>(null, Side.RS, Side.WS)));
        sketch.AddRows(_ => 1);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Plain, stitch);
    }

    /// <summary>From here on rounds follow each other in another way.</summary>
    private void Otherwise(Sketch sketch)
    {
        var way = tape.Of(RoundsWay.Spiral, RoundsWay.Joined, RoundsWay.Turned);
        sketch.Statements.Add(new RoundsAre(way));
        sketch.TurnsRounds = way == RoundsWay.Turned;
        sketch.CanBeMirrored &= !sketch.TurnsRounds;
        rows.AnyRound(sketch);
        if (way == RoundsWay.Spiral && tape.OneIn(2))
            MoveMarker(sketch);
    }

    /// <summary>A round of a spiral that ends before its marker, or a few stitches past the one before.</summary>
    private void MoveMarker(Sketch sketch)
    {
        if (sketch.Narrowest < 3 || !sketch.StandsOnStitches)
            return;
        var stitch = tape.Of(stitches);
        var on = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] - 1);
        sketch.CanBeMirrored = false;
        sketch.Statements.Add(new RowLine([new Each(stitch, new Sized(on)), new MoveMarker()]) { IsRound = true });
        sketch.AddRows(_ => 1);
        rows.PlainRow(sketch);
    }

    private void FurtherOn(Sketch sketch)
    {
        if (sketch.Narrowest < 4 || !sketch.StandsOnStitches)
        {
            rows.AnyRound(sketch);
            return;
        }
        var stitch = tape.Of(stitches);
        var on = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] - 1);
        sketch.CanBeMirrored = false;
        sketch.Statements.Add(new RowLine([new SlipOver(new Sized(on)), new Across(stitch)]) { IsRound = true });
        sketch.AddRows(_ => 1);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Plain, stitch);
    }

    /// <summary>Rows over part of a tube that leave the rest for later, and a round over all of it.</summary>
    private void Heel(Sketch sketch)
    {
        if (sketch.Narrowest < 8 || !sketch.StandsOnStitches)
        {
            rows.AnyRound(sketch);
            return;
        }
        var stitch = tape.Of(stitches);
        (sketch.CanBeMirrored, sketch.HasShortRows) = (false, true);
        var rest = tape.Sizes(sketch.Sizes, 2, size => sketch.Widths[size] - 4);
        sketch.Statements.Add(new RowLine(Leaving(new Sized(rest)), null, Side.RS));
        sketch.AddRows(_ => 1);
        if (tape.OneIn(2))
        {
            // Shorter by one at either end, and longer again.
            sketch.Statements.Add(new RowLine(Leaving(1)));
            sketch.Statements.Add(new RowLine([new ToTurn(stitch, 0), new Each(stitch, 1), new LeaveUnworked(sketch.For(size => rest[size] - 1)) { ForLater = true }]));
            sketch.AddRows(_ => 2);
        }
        sketch.Statements.Add(new RowLine([new Across(stitch)]));
        sketch.Statements.Add(new RowLine(tape.OneIn(2) ? [new Across(stitch)] : [new ToTurn(stitch, 0), new Across(stitch)]) { IsRound = true });
        sketch.AddRows(_ => 2);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Plain, stitch);

        List<Word> Leaving(Sized count) => [new Until(stitch, count), new LeaveUnworked(count) { ForLater = true }];
    }

    private void MakePlain(Sketch sketch)
    {
        if (sketch.PlainStitch is null)
            rows.PlainRow(sketch);
    }

    private void Straight(Sketch sketch)
    {
        MakePlain(sketch);
        var count = tape.Sizes(sketch.Sizes, 1, _ => 4);
        sketch.Statements.Add(new Straight(new Sized(count)) { IsRound = true });
        sketch.AddRows(size => count[size]);
    }

    private void Spread(Sketch sketch)
    {
        MakePlain(sketch);
        if (!new SpreadMaker(tape).Any(sketch))
            Straight(sketch);
    }

    /// <summary>Shaped on one or both sides of where the round begins.</summary>
    private void Shape(Sketch sketch)
    {
        MakePlain(sketch);
        var edge = tape.Of(EdgeRef.Both, EdgeRef.Right, EdgeRef.Left);
        var (every, times) = (tape.Between(1, 3), tape.Between(1, 3));
        var increase = tape.OneIn(2);
        var edges = edge == EdgeRef.Both ? 2 : 1;
        if (sketch.Manner.Way == Way.SlippingOver || sketch.Narrowest < 6 || (!increase && sketch.Narrowest < edges * (2 * times + 6)))
        {
            Straight(sketch);
            return;
        }
        var count = every * times + tape.Below(2);
        var schedule = new Schedule(increase, 1, edge, [new Leg(every, times)]);
        sketch.Statements.Add(new Shape(RowSpan.Of(count), [schedule]) { IsRound = true });
        var by = (increase ? 1 : -1) * edges * times;
        sketch.Widths = sketch.Widths.Select(width => width + by).ToArray();
        sketch.AddRows(_ => count);
    }
}
