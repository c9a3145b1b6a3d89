namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up explicit rows that come out in every size over a row without spaces.</summary>
public sealed class RowMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    private readonly SpecialMaker _specials = new(tape, stitches);

    private const int Widest = 60;

    /// <summary>The stitches that its rows may use.</summary>
    public IReadOnlyList<NaiveStitch> Defined => _specials.Stitches;

    /// <summary>A row of any kind over what the sketch stands on.</summary>
    public void AnyRow(Sketch sketch)
    {
        if (sketch.Ground == Ground.Mesh)
        {
            new MeshMaker(tape, Stitch()).OverMesh(sketch);
            return;
        }
        Func<Sketch, bool>[] kinds =
        [
            PlainRow, FewPlain, IntoOne, IncAndDec, EvenlySpread, RepeatTimes, RepeatToTheEnd, Nested, Edged, Fewer, Mixed, Mesh, Corners, Buttonholes, Bobbles,
            Held, Specials, Back, ThroughOneLoop,
        ];
        if (!tape.Of(kinds)(sketch))
            PlainRow(sketch);
    }

    /// <summary>A round over what the sketch stands on.</summary>
    public void AnyRound(Sketch sketch)
    {
        if (!tape.OneIn(10) || !Back(sketch))
            FirstRound(sketch);
    }

    /// <summary>A round that there is none below of.</summary>
    public void FirstRound(Sketch sketch)
    {
        Func<Sketch, bool>[] kinds = [PlainRow, FewPlain, IntoOne, IncAndDec, EvenlySpread, RepeatTimes, RepeatToTheEnd, Nested, Edged, Held, Corners, Specials, ThroughOneLoop];
        if (!tape.Of(kinds)(sketch))
            PlainRow(sketch);
    }

    /// <summary>A row that `chain N` has a rule for: it begins with a plain stitch.</summary>
    public void FirstRowOnChain(Sketch sketch)
    {
        Func<Sketch, bool>[] kinds = [PlainRow, IntoOne, Mesh];
        var kind = tape.Of(kinds);
        if (!kind(sketch))
            PlainRow(sketch);
        else
            sketch.CanBeMirrored &= kind == PlainRow;
    }

    public bool PlainRow(Sketch sketch)
    {
        var stitch = Stitch();
        return Put(sketch, sketch.Widths, stitch, new Across(stitch));
    }

    /// <summary>Several rows of one line.</summary>
    public void PlainRows(Sketch sketch)
    {
        var stitch = Stitch();
        var rows = tape.Sizes(sketch.Sizes, 2, _ => 5);
        var span = RowSpan.Between(sketch.For(s => sketch.Rows[s] + 1), sketch.For(s => sketch.Rows[s] + rows[s]));
        sketch.Statements.Add(new RowsLine(span, [new Across(stitch)]) { IsRound = sketch.InRounds });
        sketch.AddRows(size => rows[size]);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Plain, stitch);
    }

    /// <summary>A row that goes back over the last one, and often another that goes forth again.</summary>
    private bool Back(Sketch sketch)
    {
        if (sketch.Rows.Min() == 0 || !BackAlone(sketch))
            return false;
        return PlainRow(sketch);
    }

    /// <summary>A row through the one loop of each stitch; the other one is free for a piece that is picked up there.</summary>
    private bool ThroughOneLoop(Sketch sketch)
    {
        if (sketch.Rows.Min() == 0)
            return false;
        if (sketch.Rows.Distinct().Count() == 1)
            sketch.LoopRows.Add(sketch.Rows[0]);
        return Put(sketch, sketch.Widths, null, new Across(Stitch()) { Loop = tape.Of("back", "front") });
    }

    /// <summary>The same as the last of a piece.</summary>
    public bool BackAlone(Sketch sketch)
    {
        // Where the rows are turned then is no matter of odd and even numbers.
        sketch.FirstSide = null;
        sketch.CanBeMirrored &= !sketch.InRounds;
        return Put(sketch, sketch.Widths, "rsc", new Across("rsc"));
    }

    private string Stitch() => tape.Of(stitches);

    private bool FewPlain(Sketch sketch)
    {
        var stitch = Stitch();
        var few = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] - 1);
        Word rest = tape.OneIn(2)
            ? new Each(stitch, sketch.For(size => sketch.Widths[size] - few[size]))
            : new Across(stitch);
        return sketch.Narrowest > 1 && Put(sketch, sketch.Widths, stitch, new Each(stitch, new Sized(few)), rest);
    }

    private bool IntoOne(Sketch sketch)
    {
        var stitch = Stitch();
        var many = tape.Between(2, 4);
        var first = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] - 2);
        return sketch.Narrowest >= 3 && sketch.Widest < Widest && Put(
            sketch, sketch.For(size => sketch.Widths[size] + many - 1), stitch,
            new Each(stitch, new Sized(first)), new Into(many, stitch, Target.Next), new Across(stitch));
    }

    private bool IncAndDec(Sketch sketch)
    {
        var stitch = Stitch();
        var (incs, decs) = (tape.Between(1, 2), tape.Between(1, 2));
        return sketch.Narrowest >= incs + 2 * decs + 2 && Put(
            sketch, sketch.For(size => sketch.Widths[size] + incs - decs), stitch,
            new Each(stitch, 1), new Inc(stitch, incs), new Until(stitch, 2 * decs), new Dec(stitch, decs));
    }

    private bool EvenlySpread(Sketch sketch)
    {
        var (stitch, increase) = (Stitch(), !tape.OneIn(2));
        var changes = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] / (increase ? 1 : 2));
        return sketch.Narrowest >= 2 && sketch.Widest < Widest && Put(
            sketch, sketch.For(size => sketch.Widths[size] + (increase ? changes[size] : -changes[size])), stitch,
            new Evenly(stitch, increase, new Sized(changes)));
    }

    private bool RepeatTimes(Sketch sketch)
    {
        var stitch = Stitch();
        var between = tape.Between(1, 4);
        var times = tape.Sizes(sketch.Sizes, 1, size => (sketch.Widths[size] - 1) / (between + 1));
        return sketch.Narrowest >= between + 2 && sketch.Widest < Widest && Put(
            sketch, sketch.For(size => sketch.Widths[size] + times[size]), stitch,
            Repeat.Times(new Sized(times), new Each(stitch, between), new Inc(stitch, 1)), new Across(stitch));
    }

    private bool RepeatToTheEnd(Sketch sketch)
    {
        var stitch = Stitch();
        var takes = tape.Between(2, 4);
        if (sketch.Narrowest < 2 * takes)
            return false;
        Word[] body = [new Each(stitch, takes - 1), new Into(2, stitch, Target.Next)];
        var over = sketch.Widths.Select(width => width % takes).ToArray();
        if (over.All(rest => rest == 0))
            return Put(sketch, sketch.For(size => sketch.Widths[size] + sketch.Widths[size] / takes), null, Repeat.Across(body));
        var rest = over.Select(left => left == 0 ? takes : left).ToArray();
        return Put(
            sketch, sketch.For(size => sketch.Widths[size] + (sketch.Widths[size] - rest[size]) / takes), null,
            Repeat.Until(new Sized(rest), body), new Across(stitch));
    }

    private bool Nested(Sketch sketch)
    {
        var stitch = Stitch();
        var inner = Repeat.Times(2, new Dec(stitch, 1), new Each(stitch, 1));
        var times = tape.Sizes(sketch.Sizes, 1, size => (sketch.Widths[size] - 1) / 7);
        return sketch.Narrowest >= 8 && Put(
            sketch, sketch.For(size => sketch.Widths[size] - 2 * times[size]), null,
            Repeat.Times(new Sized(times), new Each(stitch, 1), inner), new Across(stitch));
    }

    private bool Edged(Sketch sketch)
    {
        var stitch = Stitch();
        var (first, last) = (tape.Between(2, 3), tape.Between(2, 3));
        return sketch.Narrowest >= 3 && sketch.Widest < Widest && Put(
            sketch, sketch.For(size => sketch.Widths[size] + first + last - 2), null,
            new Into(first, stitch, Target.First), new Until(stitch, 1), new Into(last, stitch, Target.Last));
    }

    /// <summary>Stitches slipped over, left and skipped, and several worked together.</summary>
    private bool Fewer(Sketch sketch)
    {
        var stitch = Stitch();
        var (slipped, left) = (tape.Between(1, 2), tape.Between(1, 3));
        if (sketch.Rows.Min() == 0 || sketch.Narrowest < slipped + left + 7)
            return false;
        sketch.AddStep(Hand.Right);
        sketch.AddStep(Hand.Left);
        Word leave = tape.OneIn(2) ? new LeaveUnworked(null) : new LeaveUnworked(left);
        return Put(
            sketch, sketch.For(size => sketch.Widths[size] - slipped - left - 3), null,
            new SlipOver(slipped), new Each(stitch, 2), new Together(stitch, 3), new Skip(1), new Until(stitch, left), leave);
    }

    private bool Mixed(Sketch sketch)
    {
        var (one, other) = (stitches[0], stitches[^1]);
        if (sketch.Narrowest < 4 || one == other)
            return false;
        Put(sketch, sketch.Widths, null, new Each(one, 2), new Across(other));
        if (!tape.OneIn(2))
            return true;
        // Coming back, the last two are of the first kind; going to the first of them passes over the rest.
        var widths = sketch.For(_ => 3);
        return Put(sketch, widths, null, new Each(other, 1), new Into(1, other, Target.NextOf(one)), new Across(one));
    }

    /// <summary>Holes spread evenly, and most times the row that fills them.</summary>
    private bool Buttonholes(Sketch sketch)
    {
        var stitch = Stitch();
        var ends = tape.OneIn(2) ? null : new Sized(tape.Sizes(sketch.Sizes, 2, size => Math.Min(5, sketch.Widths[size] / 4)));
        // With a half gap at the ends, four plain stitches to a hole leave two of them there.
        int Room(int size) => ends is null ? sketch.Widths[size] / 6 : (sketch.Widths[size] - 2 * ends[size] + 1) / 3;
        if (sketch.Narrowest < 12 || Enumerable.Range(0, sketch.Sizes).Min(Room) < 2)
            return false;
        var times = new Sized(tape.Sizes(sketch.Sizes, 2, Room));
        var widths = sketch.Widths;
        Put(sketch, sketch.For(size => widths[size] - 2 * times[size]), null, new SpreadOver(stitch, [new Space(2), new Skip(2)], 2, times, ends));
        return Put(sketch, widths, null, new EachByKind(stitch, 2));
    }

    private bool Bobbles(Sketch sketch)
    {
        var stitch = Stitch();
        var times = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] / 5);
        return sketch.Narrowest >= 5 && sketch.Widest < Widest && Put(
            sketch, sketch.For(size => sketch.Widths[size] + times[size]), null,
            new SpreadOver(stitch, [new Into(3, stitch, Target.Next), new Together(stitch, 2)], 3, new Sized(times), null));
    }

    /// <summary>Stitches held, often with a bridge over them, once or twice.</summary>
    private bool Held(Sketch sketch)
    {
        var stitch = Stitch();
        var times = tape.Between(1, 2);
        if (sketch.Narrowest < 6 * times || (!sketch.InRounds && sketch.Rows.Min() == 0))
            return false;
        var words = new List<Word>();
        var widths = sketch.Widths.ToArray();
        for (var time = 0; time < times; time++)
        {
            var held = tape.Sizes(sketch.Sizes, 1, size => sketch.Widths[size] / (2 * times) - 1);
            words.Add(new Each(stitch, tape.Between(1, 2)));
            words.Add(new Hold(new Sized(held), Named(sketch, "held")));
            var bridge = tape.OneIn(4) ? new int[sketch.Sizes] : tape.Sizes(sketch.Sizes, 1, _ => 6);
            if (bridge.Max() > 0)
                words.Add(new Bridge(new Sized(bridge), tape.OneIn(3) ? null : Named(sketch, "under")));
            for (var size = 0; size < widths.Length; size++)
                widths[size] += bridge[size] - held[size];
        }
        words.Add(new Across(stitch));
        return Put(sketch, widths, stitch, [.. words]);
    }

    private static string Named(Sketch sketch, string sort)
    {
        var name = $"{sort}-{(char)('a' + sketch.InnerUsed++)}";
        sketch.Inner.Add(name);
        return name;
    }

    private bool Specials(Sketch sketch) => _specials.Row(sketch, Stitch(), (over, widths, words) => Put(over, widths, null, words));

    private bool Corners(Sketch sketch) => sketch.Widest < Widest && new CornerMaker(tape, Stitch()).Passage(sketch);

    private bool Mesh(Sketch sketch)
    {
        var made = new MeshMaker(tape, Stitch()).Mesh(sketch);
        if (made)
            sketch.AddRows(_ => 1);
        return made;
    }

    private bool Put(Sketch sketch, int[] widths, string? plain, params Word[] words) =>
        Put(sketch, new Sized(widths), plain, words);

    private bool Put(Sketch sketch, Sized widths, string? plain, params Word[] words)
    {
        sketch.Statements.Add(RowLineMaker.Line(tape, sketch, words));
        sketch.Widths = Enumerable.Range(0, sketch.Sizes).Select(size => widths[size]).ToArray();
        sketch.AddRows(_ => 1);
        (sketch.Ground, sketch.PlainStitch) = (plain is null ? Ground.Changed : Ground.Plain, plain);
        return true;
    }
}
