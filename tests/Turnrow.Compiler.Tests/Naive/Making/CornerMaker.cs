namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up rows round corners: one that marks them, some that meet them from either end, and one that takes the markers out.</summary>
public sealed class CornerMaker(ChoiceTape tape, string stitch)
{
    private int _corners;
    private int[][] _between = [];
    private bool _areSpaces;

    /// <summary>The whole passage; false if the row below is too narrow for it.</summary>
    public bool Passage(Sketch sketch)
    {
        _corners = tape.Between(1, 4);
        if (sketch.Narrowest < 2 * _corners + 1)
            return false;
        MarkRow(sketch);
        GoOn(sketch);
        return true;
    }

    /// <summary>From a row that has corners already, with so many stitches before each and behind the last one as the next row meets them.</summary>
    public void GoOn(Sketch sketch, int[][] between)
    {
        _between = between;
        _corners = between.Length - 1;
        GoOn(sketch);
    }

    /// <summary>Rows that mark corners and keep them, the last of a piece; false if the row below is too narrow.</summary>
    public bool Ending(Sketch sketch)
    {
        _corners = tape.Between(1, 3);
        if (sketch.Narrowest < 2 * _corners + 1)
            return false;
        MarkRow(sketch);
        Rows(sketch);
        sketch.EndsInCorners = true;
        return true;
    }

    private void GoOn(Sketch sketch)
    {
        Rows(sketch);
        Remove(sketch);
    }

    private void Rows(Sketch sketch)
    {
        for (var rows = tape.Below(4); rows > 0; rows--)
        {
            Action<Sketch>[] kinds = [Several, WithSpace, Plain, Fewer, Chosen, One, Netted];
            tape.Of(kinds)(sketch);
        }
    }

    private void Remove(Sketch sketch)
    {
        Word last = _areSpaces ? new InEach(stitch, EachOf.StitchAndSpace) : new Across(stitch);
        Word[] words = [last, new RemoveCorners()];
        Put(sketch, tape.OneIn(2) ? words : [.. words.Reverse()]);
        sketch.Widths = sketch.Widths.Select(width => width + (_areSpaces ? _corners : 0)).ToArray();
        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
    }

    private void MarkRow(Sketch sketch)
    {
        _areSpaces = tape.OneIn(3);
        var own = _areSpaces ? 0 : 1;
        var first = tape.Between(1, 3);
        _between = new int[_corners + 1][];
        for (var i = 0; i <= _corners; i++)
            _between[i] = sketch.Widths.Select(width => Between(width - own * _corners, i, first)).ToArray();
        var words = new List<Word>();
        for (var i = 0; i < _corners; i++)
        {
            words.Add(new Each(stitch, new Sized(_between[i].Select(n => n + own).ToArray())));
            if (_areSpaces)
                words.Add(new Space(tape.Between(1, 2)));
            words.Add(new MarkCorner());
        }
        words.Add(new Across(stitch));
        Put(sketch, [.. words]);
        (sketch.PlainStitch, sketch.Ground) = (_areSpaces ? null : stitch, Ground.Changed);
    }

    // The stitches before each corner and behind the last one; at least one of each where there are enough.
    private int Between(int stitches, int index, int first)
    {
        var each = stitches / (_corners + 1);
        var start = Math.Min(first, each);
        if (index < _corners)
            return index == 0 ? start : each;
        return stitches - start - each * (_corners - 1);
    }

    private void Several(Sketch sketch) => IntoEach(sketch, new Into(tape.Between(1, 2) * 2 + 1, stitch, Target.Corner));

    private void One(Sketch sketch) => IntoEach(sketch, new Into(1, stitch, Target.Corner));

    /// <summary>A space behind each stitch up to the last corner, and a row that goes into what it made.</summary>
    private void Netted(Sketch sketch)
    {
        if (_between.Any(stitches => stitches.Min() < 1) || sketch.Widest > 40 || sketch.TurnsRounds)
        {
            Plain(sketch);
            return;
        }
        var net = new List<Word>();
        for (var i = 0; i < _corners; i++)
            net.AddRange([Repeat.Times(new Sized(_between[i]), new Each(stitch, 1), new Space(tape.Between(1, 2))), new Into(1, stitch, Target.Corner)]);
        Put(sketch, [.. net, new Across(stitch)]);
        sketch.Widths = sketch.Widths.Select(width => width + (_areSpaces ? _corners : 0)).ToArray();
        (_areSpaces, sketch.PlainStitch) = (false, null);
        var bare = sketch.InRounds ? _corners : 0;
        // A row that counts by the kind of place, or leaves the spaces out.
        var of = tape.OneIn(3) ? EachOf.Stitch : EachOf.StitchAndSpace;
        var filled = new List<Word>();
        for (var i = 0; i <= _corners; i++)
        {
            if (i < _corners)
                filled.AddRange([new InEachToCorner(stitch, of), new Into(1, stitch, Target.Corner)]);
            if (i == bare || of == EachOf.Stitch)
                continue;
            sketch.Widths = sketch.Widths.Select((width, size) => width + _between[i][size]).ToArray();
            Add(_between[i], _between[i]);
        }
        // Coming back, the space behind the first stitch comes before it, so that the row ends in a stitch.
        Put(sketch, [.. filled, new InEach(stitch, of)]);
    }

    private void IntoEach(Sketch sketch, Into into)
    {
        Around(sketch, into, into.Count / 2);
        sketch.Widths = sketch.Widths.Select(width => width + (into.Count - (_areSpaces ? 0 : 1)) * _corners).ToArray();
        _areSpaces = false;
    }

    private void WithSpace(Sketch sketch)
    {
        var many = tape.Between(1, 2);
        var half = new Into(many, stitch, Target.Next);
        Around(sketch, new Group([half, new Space(tape.Between(1, 3)), half], Target.Corner), many);
        sketch.Widths = sketch.Widths.Select(width => width + (2 * many - (_areSpaces ? 0 : 1)) * _corners).ToArray();
        _areSpaces = true;
    }

    /// <summary>`(dc, mark corner, dc) in corner`: an even number, and which of them it is.</summary>
    private void Chosen(Sketch sketch)
    {
        var one = new Into(1, stitch, Target.Next);
        Around(sketch, new Group([one, new MarkCorner(), one], Target.Corner), 0);
        // The other one lies behind the corner, before it on the way back.
        for (var i = 0; i < _corners; i++)
            Add(_between[sketch.InRounds ? i + 1 : i], 1);
        sketch.Widths = sketch.Widths.Select(width => width + (2 - (_areSpaces ? 0 : 1)) * _corners).ToArray();
        _areSpaces = false;
    }

    private void Plain(Sketch sketch)
    {
        if (_areSpaces)
        {
            Put(sketch, new InEach(stitch, EachOf.StitchAndSpace));
            sketch.Widths = sketch.Widths.Select(width => width + _corners).ToArray();
            _areSpaces = false;
        }
        else if (sketch.PlainStitch is not null && tape.OneIn(2))
        {
            var rows = tape.Between(1, 3);
            sketch.Statements.Add(new Straight(rows) { IsRound = sketch.InRounds });
            sketch.AddRows(_ => rows);
            if (rows % 2 == 1 && !sketch.InRounds)
                Array.Reverse(_between);
        }
        else
            Put(sketch, new Across(stitch));
    }

    private void Fewer(Sketch sketch)
    {
        if (_areSpaces || _between.Any(stitches => stitches.Min() < 2))
        {
            Plain(sketch);
            return;
        }
        var words = new List<Word>();
        for (var i = 0; i < _corners; i++)
            words.AddRange([new ToCorner(stitch, 1), new Together(stitch, 3)]);
        words.Add(new Across(stitch));
        for (var i = 0; i <= _corners; i++)
            Add(_between[i], i == 0 || i == _corners ? -1 : -2);
        Put(sketch, [.. words]);
        sketch.Widths = sketch.Widths.Select(width => width - 2 * _corners).ToArray();
        sketch.PlainStitch = null;
    }

    /// <summary>Up to each corner and into it, as a repeat of one kind or another.</summary>
    private void Around(Sketch sketch, Word into, int half)
    {
        Word[] body = [tape.OneIn(4) ? new InEachToCorner(stitch, EachOf.StitchAndSpace) : new ToCorner(stitch, 0), into];
        Word[] words = tape.Below(3) switch
        {
            0 => [Repeat.Times(_corners, body), new Across(stitch)],
            1 => [Repeat.Across(body), new Across(stitch)],
            _ => [.. Enumerable.Repeat(body, _corners).SelectMany(word => word), new Across(stitch)],
        };
        for (var i = 0; i <= _corners; i++)
            Add(_between[i], i == 0 || i == _corners ? half : 2 * half);
        Put(sketch, words);
        sketch.PlainStitch = null;
    }

    private static void Add(int[] stitches, int[] more)
    {
        for (var i = 0; i < stitches.Length; i++)
            stitches[i] += more[i];
    }

    private static void Add(int[] stitches, int more)
    {
        for (var i = 0; i < stitches.Length; i++)
            stitches[i] += more;
    }

    private void Put(Sketch sketch, params Word[] words)
    {
        sketch.Statements.Add(RowLineMaker.Line(tape, sketch, words));
        sketch.AddRows(_ => 1);
        // A round is met again from where it began.
        if (!sketch.InRounds)
            Array.Reverse(_between);
    }
}
