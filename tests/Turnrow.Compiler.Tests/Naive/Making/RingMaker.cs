namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up pieces that begin in their middle: circles, squares and other motifs from a ring, ovals round both sides of a chain.</summary>
public sealed class RingMaker(ChoiceTape tape, RowMaker rows, IReadOnlyList<string> stitches)
{
    private string _stitch = "";
    private int _corners;
    private int _side;
    private bool _areSpaces;
    private bool _startsAtCorner;

    /// <summary>What the piece begins with, and its first rounds or rows.</summary>
    public Start Begin(Sketch sketch)
    {
        _stitch = tape.Of(stitches);
        if (tape.OneIn(3))
            sketch.Statements.Add(new RoundsAre(tape.Of(RoundsWay.Spiral, RoundsWay.Turned)));
        if (sketch.Statements is [RoundsAre { Way: RoundsWay.Turned }])
            (sketch.CanBeMirrored, sketch.TurnsRounds) = (false, true);
        return tape.Below(5) switch
        {
            0 => Circle(sketch),
            1 => Fan(sketch),
            2 => Motif(sketch),
            3 => Mesh(sketch),
            _ => Oval(sketch),
        };
    }

    private RingOf Ring() => new(tape.OneIn(2) ? 0 : tape.Between(3, 8));

    private RingOf Circle(Sketch sketch)
    {
        sketch.InRounds = true;
        var many = tape.Between(3, 12);
        Put(sketch, many, new IntoRing([new Into(many, _stitch, Target.Next)], 1));
        if (tape.OneIn(2))
            rows.AnyRound(sketch);
        return Ring();
    }

    private RingOf Fan(Sketch sketch)
    {
        var (many, times) = (tape.Between(1, 3), tape.Between(2, 5));
        var into = new Into(many, _stitch, Target.Next);
        Put(sketch, 2 * many * times, new IntoRing([into, new Space(tape.Between(1, 3)), into], times));
        Put(sketch, 2 * many * times + times, new InEach(_stitch, EachOf.StitchAndSpace));
        return Ring();
    }

    /// <summary>Rounds of stitches and spaces, and rounds that go to one kind of them: what is left at a round's end is nobody's to say.</summary>
    private RingOf Mesh(Sketch sketch)
    {
        sketch.InRounds = true;
        sketch.CanBeMirrored = false;
        var (many, times) = (tape.Between(1, 3), tape.Between(3, 8));
        var into = new Into(many, _stitch, Target.Next);
        Word space = new Space(tape.Between(1, 3));
        Put(sketch, many * times, new IntoRing(tape.OneIn(2) ? [into, space] : [into, space, space], times));
        for (var rounds = tape.Below(4); rounds > 0; rounds--)
        {
            var half = new Into(tape.Between(1, 2), _stitch, Target.Next);
            switch (tape.Below(5))
            {
                case 0:
                    Put(sketch, sketch.Widths[0], Repeat.Across(new Into(1, _stitch, Target.NextOf(_stitch)), space));
                    times = sketch.Widths[0];
                    break;
                case 1:
                    Put(sketch, times, Repeat.Across(new Into(1, _stitch, Target.NextSpace), space));
                    break;
                case 2:
                    Put(sketch, 2 * half.Count * times, Repeat.Across(new Group([half, space, half], Target.NextSpace)));
                    break;
                case 3 when sketch.Widths[0] == times && !sketch.Statements.Contains(new RoundsAre(RoundsWay.Spiral)):
                    // Each space and each stitch in turn, from the first space on: the stitch before it comes last.
                    Put(sketch, (half.Count + 1) * times, Repeat.Across(new Into(half.Count, _stitch, Target.NextSpace), new Into(1, _stitch, Target.NextOf(_stitch)), space));
                    break;
                default:
                    var of = tape.Of(EachOf.Stitch, EachOf.Space);
                    Put(sketch, of == EachOf.Stitch ? sketch.Widths[0] : times, new InEach(_stitch, of));
                    return Ring();
            }
        }

        Put(sketch, sketch.Widths[0], new InEach(_stitch, EachOf.Stitch));
        return Ring();
    }

    private RingOf Motif(Sketch sketch)
    {
        sketch.InRounds = true;
        sketch.CanBeMirrored = false;
        (_corners, _side, _areSpaces, _startsAtCorner) = (tape.Between(3, 6), tape.Between(1, 3), tape.OneIn(2), false);
        var into = new Into(_side, _stitch, Target.Next);
        Put(sketch, _corners * _side, new IntoRing(_areSpaces ? [into, new Space(tape.Between(1, 2)), new MarkCorner()] : [into, new MarkCorner()], _corners));
        if (!_areSpaces)
            _side--;
        var turned = sketch.Statements[0] is RoundsAre { Way: RoundsWay.Turned };
        for (var rounds = tape.Below(4); rounds > 0 && _side < 12 && _corners > 0; rounds--)
        {
            if (tape.OneIn(2) || turned)
                FromCorner(sketch);
            else if (!_startsAtCorner && tape.OneIn(2))
                PassingSides(sketch);
            else
                ToCorners(sketch);
        }
        if (_corners > 0 && tape.OneIn(2))
            sketch.EndsInCorners = true;
        else
            Settle(sketch);
        return Ring();
    }

    private BothSidesOf Oval(Sketch sketch)
    {
        sketch.InRounds = true;
        sketch.CanBeMirrored = false;
        var stitches = tape.Sizes(sketch.Sizes, 2, _ => 20);
        var end = tape.Between(1, 2) * 2 + 1;
        sketch.Widths = stitches.Select(n => 2 * (n - 2 + end)).ToArray();
        Word[] first = tape.OneIn(2)
            ? [Repeat.Across(new Into(end, _stitch, Target.Corner), new ToCorner(_stitch, 0))]
            : [new Into(end, _stitch, Target.Corner), new ToCorner(_stitch, 0), new Into(end, _stitch, Target.Corner), new Across(_stitch)];
        Line(sketch, first);
        (_corners, _areSpaces) = (2, false);
        if (tape.OneIn(2))
        {
            Line(sketch, Repeat.Across(new Into(3, _stitch, Target.Corner), new ToCorner(_stitch, 0)));
            sketch.Widths = sketch.Widths.Select(width => width + 4).ToArray();
        }
        Settle(sketch);
        return new BothSidesOf(new Sized(stitches));
    }

    /// <summary>Begun in a corner, round to it again.</summary>
    private void FromCorner(Sketch sketch)
    {
        var half = tape.Between(1, 2);
        Put(sketch, Grown(half), Repeat.Across(Corner(half, Target.Corner), new ToCorner(_stitch, 0)));
        Grow(half);
        _startsAtCorner = true;
    }

    /// <summary>Begun at a side; the first part of a side that was begun in a corner is behind it.</summary>
    private void ToCorners(Sketch sketch)
    {
        var half = tape.Between(1, 2);
        Word[] side = [new ToCorner(_stitch, 0), Corner(half, Target.Corner)];
        Put(sketch, Grown(half), Repeat.Times(_corners, side), new Across(_stitch));
        Grow(half);
        _startsAtCorner = true;
    }

    /// <summary>From corner to corner, the sides passed over.</summary>
    private void PassingSides(Sketch sketch)
    {
        var half = tape.Between(1, 2);
        Put(sketch, 2 * half * _corners, Repeat.Across(Corner(half, Target.NextCorner), new Space(1)));
        Put(sketch, 2 * half * _corners + 2 * _corners, new InEach(_stitch, EachOf.StitchAndSpace), new RemoveCorners());
        _corners = 0;
        _areSpaces = false;
    }

    private Word Corner(int half, Target target)
    {
        var into = new Into(half, _stitch, Target.Next);
        return _areSpaces ? new Group([into, new Space(tape.Between(1, 2)), into], target) : new Into(2 * half + 1, _stitch, target);
    }

    private int Grown(int half) => _corners * (_side + 2 * half + (_areSpaces ? 0 : 1));

    private void Grow(int half) => _side += 2 * half;

    private void Settle(Sketch sketch)
    {
        if (_corners == 0)
            return;
        Line(sketch, _areSpaces ? new InEach(_stitch, EachOf.StitchAndSpace) : new Across(_stitch), new RemoveCorners());
        if (_areSpaces)
            sketch.Widths = sketch.Widths.Select(width => width + _corners).ToArray();
        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
    }

    private static void Put(Sketch sketch, int width, params Word[] words)
    {
        Line(sketch, words);
        sketch.Widths = sketch.Widths.Select(_ => width).ToArray();
    }

    private static void Line(Sketch sketch, params Word[] words)
    {
        sketch.Statements.Add(new RowLine(words) { IsRound = sketch.InRounds });
        sketch.AddRows(_ => 1);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
    }
}
