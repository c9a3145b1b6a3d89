namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>
/// Makes up stitch patterns of a few families with numbers of their own, and works pieces in them where their stitches fit. Each leaves as many
/// plain stitches as it began on, so that anything may come behind it.
/// </summary>
public sealed class StitchPatternMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    private static readonly string[] s_names = ["shells", "ripples", "ribs", "nets", "crumbs", "tiles"];

    private readonly List<StitchPattern> _made = [];

    public IReadOnlyList<StitchPattern> Made => [.. _made];

    /// <summary>One that is there, or a new one.</summary>
    public StitchPattern Any()
    {
        if (_made.Count > 0 && (_made.Count == s_names.Length || tape.OneIn(2)))
            return tape.Of<StitchPattern>(_made);
        Func<string, StitchPattern>[] families = [Shells, Ripples, Ribs, Nets, Crumbs, Tiles];
        var pattern = tape.Of(families)(s_names[_made.Count]);
        _made.Add(pattern);
        return pattern;
    }

    /// <summary>Goes on with the pattern that the piece is worked in, or begins one that fits it.</summary>
    public bool Goes(Sketch sketch)
    {
        if (!tape.OneIn(6) || !sketch.StandsOnStitches || sketch.TurnsRounds)
            return false;
        var goesOn = sketch.Statements is [.., StraightIn last] && last.Rows.Min > 0 ? last.Pattern : null;
        var fitting = _made.FindAll(pattern => Array.TrueForAll(sketch.Widths, pattern.Fits)
            && (sketch.Statements.Count == 0 || (sketch.Statements[^1] as EdgedIn)?.Pattern != pattern) && (pattern is Picture ? sketch.InRounds || pattern == goesOn || IsRightSideNext(sketch) : !sketch.InRounds));
        if (fitting.Count == 0 || tape.OneIn(4))
            return Edged(sketch) || (fitting.Count > 0 && In(sketch, fitting));
        return In(sketch, fitting);
    }

    private bool In(Sketch sketch, List<StitchPattern> fitting)
    {
        Work(sketch, sketch.Statements is [.., StraightIn before] && fitting.Contains(before.Pattern) ? before.Pattern : tape.Of<StitchPattern>(fitting));
        return true;
    }

    // With plain edges beside it a pattern need not fit; what is shaped in them leaves room for what is there.
    private bool Edged(Sketch sketch)
    {
        if (sketch.InRounds || sketch.HasShortRows || sketch.Rows.Min() == 0 || sketch.Ground == Ground.Mesh)
            return false;
        var before = sketch.Statements.Count > 0 ? sketch.Statements[^1] : null;
        var roomy = _made.FindAll(made => made is not Picture && Array.TrueForAll(sketch.Widths, width => (width - made.Plus) / made.Multiple >= 2) && (before as StraightIn)?.Pattern != made && (before as EdgedIn)?.Pattern != made);
        if (roomy.Count == 0)
            return false;
        var (pattern, stitch) = (tape.Of<StitchPattern>(roomy), Stitch);
        var step = StepOf(pattern);
        var rows = step * tape.Between(1, 3);
        var (increase, edge) = (tape.OneIn(2), tape.Of(EdgeRef.Right, EdgeRef.Left, EdgeRef.Both));
        var times = tape.Below(rows + 1);
        var narrow = sketch.Widths.Min(width => (width - pattern.Plus) % pattern.Multiple / 2);
        var wide = sketch.Widths.Max(width => ((width - pattern.Plus) % pattern.Multiple + 1) / 2);
        var fits = times > 0 && (increase ? narrow >= 1 && wide + times < pattern.Multiple : narrow > times);
        var by = !fits ? 0 : (increase ? times : -times) * (edge == EdgeRef.Both ? 2 : 1);
        var schedule = new Schedule(increase, 1, edge, [new Leg(1, times)]) { Own = new Manner(0, Way.Together) };
        sketch.Statements.Add(new EdgedIn(pattern, rows, true, stitch, fits ? [schedule] : []));
        sketch.Widths = [.. sketch.Widths.Select(width => width + by)];
        sketch.AddRows(_ => rows);
        if (tape.OneIn(3))
        {
            sketch.Statements.Add(new EdgedIn(pattern, step, false, stitch, []));
            sketch.AddRows(_ => step);
        }

        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
        return true;
    }

    // Nets are plain again behind every second row.
    private static int StepOf(StitchPattern pattern) => pattern.Rows is [[Each, Repeat { Words: [Space, ..] }], _] ? 2 : 1;

    /// <summary>True if it surely is, in all sizes: rows that went to and fro from the right side on, an even number of them.</summary>
    private static bool IsRightSideNext(Sketch sketch) => sketch is { Start: BeginWith or ChainStart, FirstSide: Side.RS }
        && Array.TrueForAll(sketch.Rows, rows => rows > 0 && rows % 2 == 0)
        && sketch.Statements.TrueForAll(statement => !statement.IsRound && statement is not RowLine { Words: [.., Across { Stitch: "rsc" }] });

    public void Work(Sketch sketch, StitchPattern pattern)
    {
        var step = StepOf(pattern);
        var rows = tape.Sizes(sketch.Sizes, 1, _ => 4).Select(times => times * step).ToArray();
        var goesOn = sketch.Statements.Count > 0 && sketch.Statements[^1] is StraightIn before && before.Pattern == pattern && before.Rows.Min > 0;
        sketch.Statements.Add(new StraightIn(pattern, new Sized(rows), !goesOn || tape.OneIn(2)) { IsRound = sketch.InRounds });
        sketch.AddRows(size => rows[size]);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
    }

    private string Stitch => tape.Of(stitches);

    private StitchPattern Shells(string name)
    {
        var (skip, foot, fan) = (tape.Between(1, 3), Stitch, Stitch);
        var half = skip + 1;
        Repeat Repeated(RepeatEnd end) => new([new Skip(skip), new Into((2 * skip) + 1, fan, Target.Next), new Skip(skip), new Each(foot, 1)], end, end == RepeatEnd.Across ? 0 : half);
        List<Word> whole = [new Each(foot, 1), Repeated(RepeatEnd.Across)];
        List<Word> halves = [new Into(half, fan, Target.First), new Skip(skip), new Each(foot, 1), Repeated(RepeatEnd.Until), new Skip(skip), new Into(half, fan, Target.Next)];
        return new StitchPattern(name, 2 * half, 1, tape.OneIn(2) ? [whole, halves] : [whole, halves, whole], tape.OneIn(2) ? 0 : 1);
    }

    private StitchPattern Ripples(string name)
    {
        var (side, stitch) = (tape.Between(1, 4), Stitch);
        List<Word> Up() => [new Each(stitch, side), new Together(stitch, 3), new Each(stitch, side)];
        List<Word> row =
        [
            new Into(2, stitch, Target.First), .. Up(), new Repeat([new Into(3, stitch, Target.Next), .. Up()], RepeatEnd.Until, 1), new Into(2, stitch, Target.Next),
        ];
        return new StitchPattern(name, (2 * side) + 4, 1, [row], 0);
    }

    private StitchPattern Ribs(string name)
    {
        var (one, other, first) = (Stitch, Stitch, tape.Between(1, 3));
        List<Word> plain = [new Across(one)];
        List<Word> rib = [new Each(one, 1), Repeat.Until(1, new Each(other, first), new Each(one, 1)), new Each(one, 1)];
        return tape.OneIn(2) ? new StitchPattern(name, first + 1, 2, [plain, rib, rib], tape.Below(3)) : new StitchPattern(name, first + 1, 2, [rib], 0);
    }

    private StitchPattern Nets(string name)
    {
        var (skip, stitch) = (tape.Between(1, 3), Stitch);
        List<Word> open = [new Each(stitch, 1), Repeat.Across(new Space(skip), new Skip(skip), new Each(stitch, 1))];
        List<Word> closed = [new EachByKind(stitch, skip)];
        return new StitchPattern(name, skip + 1, 1, [open, closed], 0);
    }

    private Picture Tiles(string name)
    {
        var (width, height, letters) = (tape.Between(1, 6), tape.Between(1, 4), "xo.");
        var lines = Enumerable.Range(0, height).Select(_ => string.Concat(Enumerable.Range(0, width).Select(_ => letters[tape.Below(letters.Length)]))).ToList();
        var yarns = YarnMaker.Yarns;
        var shift = tape.Below(yarns.Count);
        return new Picture(name, Stitch, lines, [.. letters.Select((letter, at) => (letter, yarns[(at + shift) % yarns.Count]))]);
    }

    private StitchPattern Crumbs(string name)
    {
        var (one, other, many) = (Stitch, Stitch, tape.Between(1, 3));
        List<Word> crumb = [new Into(1, one, Target.Next), new Into(many, other, Target.Next)];
        List<Word> row = [new Group(crumb, Target.First), Repeat.Until(many + 1, new Skip(many), new Group(crumb, Target.Next)), new Skip(many), new Each(one, 1)];
        return new StitchPattern(name, many + 1, 1, [row], 0);
    }
}
