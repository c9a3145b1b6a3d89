namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up shaping statements that fit in every size.</summary>
public sealed class ShapingMaker(ChoiceTape tape, RowMaker rows)
{
    private const int Widest = 60;

    private static readonly string[] s_names = ["neck", "armhole", "side-seam", "front-edge", "shoulder-slope", "opening"];

    public void Any(Sketch sketch)
    {
        Action<Sketch>[] kinds = [Straight, Shape, Leave, Add, AddOneRowApart, RenameEdge, SetManner, ShortRows, Spread];
        tape.Of(kinds)(sketch);
    }

    private void ShortRows(Sketch sketch)
    {
        MakePlain(sketch);
        if (!new ShortRowMaker(tape).Any(sketch))
            Straight(sketch);
    }

    private void Spread(Sketch sketch)
    {
        MakePlain(sketch);
        if (!new SpreadMaker(tape).Any(sketch))
            Straight(sketch);
    }

    private void SetManner(Sketch sketch)
    {
        sketch.Manner = Any();
        if (sketch.Manner == new Manner(null, null))
            sketch.Manner = new Manner(1, null);
        sketch.Statements.Add(new ShapeManner(sketch.Manner));
    }

    private Manner Any() => new(tape.OneIn(2) ? tape.Between(1, 2) : null, tape.Of<Way?>(null, Way.Skipping, Way.SlippingOver, Way.Together));

    /// <summary>Slip stitches lie at the very edge: such a line can't be some stitches in as well.</summary>
    private Manner Own()
    {
        if (!tape.OneIn(3))
            return new Manner(null, null);
        var own = Any();
        return own.Way == Way.SlippingOver ? own with { Inside = null } : own;
    }

    public void NameEdges(Sketch sketch)
    {
        if (tape.OneIn(2))
            Rename(sketch, EdgeRef.Both, false);
        else if (tape.OneIn(2))
        {
            Rename(sketch, EdgeRef.Right, false);
            Rename(sketch, EdgeRef.Left, false);
        }
    }

    private void RenameEdge(Sketch sketch) => Rename(sketch, tape.Of(EdgeRef.Right, EdgeRef.Left, EdgeRef.Both), true);

    /// <summary>Each name is used once in a piece, so that what bears it hangs together.</summary>
    private static void Rename(Sketch sketch, EdgeRef edge, bool fromHere)
    {
        if (sketch.NamesUsed == s_names.Length)
            return;
        var name = s_names[sketch.NamesUsed++];
        sketch.Statements.Add(new NameEdge(edge, name, fromHere));
        foreach (var hand in Hands(edge))
            sketch.Names[(int)hand] = name;
    }

    private void Straight(Sketch sketch) => Straight(sketch, tape.OneIn(4) && sketch.Sizes > 1 ? 0 : 1, Some(sketch));

    /// <summary>Now and then a line is for some of the sizes; where every size needs its rows it is for all.</summary>
    private bool[]? Some(Sketch sketch)
    {
        if (sketch.Sizes == 1 || !tape.OneIn(4))
            return null;
        var only = new bool[sketch.Sizes];
        for (var size = 0; size < only.Length; size++)
            only[size] = tape.OneIn(2);
        only[tape.Below(only.Length)] = true;
        return only;
    }

    private static bool Has(bool[]? only, int size) => only is null || only[size];

    private void Straight(Sketch sketch, int least, bool[]? only = null)
    {
        MakePlain(sketch);
        var count = tape.Sizes(sketch.Sizes, least, _ => 6);
        if (count.Max() == 0)
            count[0] = 1;
        sketch.Statements.Add(new Straight(new Sized(count)) { Only = only });
        sketch.AddRows(size => Has(only, size) ? count[size] : 0);
    }

    private void Shape(Sketch sketch) => Shape(sketch, Some(sketch));

    private void Shape(Sketch sketch, bool[]? only, bool followsStep = false)
    {
        MakePlain(sketch);
        var count = tape.Sizes(sketch.Sizes, 1, _ => 12);
        var schedules = Schedules(sketch, count.Min());
        var (isFit, widths) = Work(sketch, count, schedules);
        // Chains that were just added can't be left in the same row.
        if (!isFit || (followsStep && new[] { Hand.Right, Hand.Left }.Any(hand => IsStep(sketch, schedules, 1, hand))))
        {
            Straight(sketch, 1);
            return;
        }
        var span = tape.OneIn(3)
            ? RowSpan.Between(sketch.For(s => sketch.Rows[s] + 1), sketch.For(s => sketch.Rows[s] + count[s]))
            : RowSpan.Of(new Sized(count));
        sketch.Statements.Add(new Shape(span, schedules) { Only = only });
        var before = sketch.Widths;
        sketch.Widths = Enumerable.Range(0, before.Length).Select(size => Has(only, size) ? widths[size] : before[size]).ToArray();
        for (var size = 0; size < sketch.Sizes; size++)
        {
            for (var row = 1; row <= count[size] && Has(only, size); row++)
                sketch.AddRow(size, IsStep(sketch, schedules, row, Hand.Right), IsStep(sketch, schedules, row, Hand.Left));
        }
    }

    private static bool IsStep(Sketch sketch, List<Schedule> schedules, int row, Hand hand) =>
        schedules.Exists(schedule => Hands(sketch, schedule.Edge).Contains(hand) && TaskIn(sketch, schedule, row).Left > 0);

    private List<Schedule> Schedules(Sketch sketch, int rowCount)
    {
        EdgeRef[] edges = tape.Below(4) switch
        {
            0 => [Ref(sketch, Hand.Right)],
            1 => [Ref(sketch, Hand.Left)],
            2 => [EdgeRef.Both],
            _ => [Ref(sketch, Hand.Left), Ref(sketch, Hand.Right)],
        };
        return edges.Select(edge => Schedule(edge, rowCount)).ToList();
    }

    private Schedule Schedule(EdgeRef edge, int rowCount)
    {
        var (increase, stitches, after) = (!tape.OneIn(2), tape.Between(1, 2), tape.OneIn(4) ? Math.Min(3, rowCount - 1) : 0);
        var step = tape.OneIn(4) && rowCount - after > 1 ? tape.Between(1, 4) : 0;
        return new Schedule(increase, stitches, edge, Legs(rowCount - after - (step > 0 ? 1 : 0)), after) { LeaveFirst = step, Own = Own() };
    }

    private List<Leg> Legs(int rowCount)
    {
        var every = tape.Between(1, Math.Clamp(rowCount, 1, 4));
        var fit = rowCount / every;
        if (!tape.OneIn(2))
            return [new Leg(every)];
        var times = tape.Between(1, fit);
        var rest = rowCount - every * times;
        if (rest < 2 || !tape.OneIn(2))
            return [new Leg(every, times)];
        var then = tape.Between(1, rest);
        return [new Leg(every, times), new Leg(then, tape.Between(1, rest / then))];
    }

    /// <summary>Counts the shaping through, row by row, and says whether every row has the stitches for it.</summary>
    private static (bool IsFit, int[] Widths) Work(Sketch sketch, int[] count, List<Schedule> schedules)
    {
        var widths = (int[])sketch.Widths.Clone();
        for (var size = 0; size < widths.Length; size++)
        {
            for (var row = 1; row <= count[size]; row++)
            {
                var tasks = schedules.Select(schedule => (Task: TaskIn(sketch, schedule, row), Ends: Ends(schedule.Edge))).ToList();
                if (tasks.Sum(t => (t.Task.Left + ShapingWork.Taken(t.Task)) * t.Ends) >= widths[size])
                    return (false, widths);
                widths[size] += tasks.Sum(t => (t.Task.Change - t.Task.Left) * t.Ends);
                if (widths[size] > Widest)
                    return (false, widths);
            }
        }
        return (true, widths);
    }

    private static EdgeTask TaskIn(Sketch sketch, Schedule schedule, int row)
    {
        if (!ShapingWork.RowsOf(schedule, Math.Max(row, Needed(schedule))).Contains(row))
            return default;
        return schedule.LeaveFirst > 0 && row == schedule.After + 1
            ? new EdgeTask(schedule.LeaveFirst, 0, false, 0)
            : ShapingWork.TaskOf(schedule, sketch.Manner.Of(schedule.Own));
    }

    private static int Needed(Schedule schedule) =>
        schedule.After + (schedule.LeaveFirst > 0 ? 1 : 0) + schedule.Legs.Sum(leg => leg.Every * (leg.Times ?? 0));

    private static int Ends(EdgeRef edge) => edge == EdgeRef.Both ? 2 : 1;

    private void Leave(Sketch sketch)
    {
        MakePlain(sketch);
        var edge = AnyRef(sketch);
        var ends = Hands(edge).Count;
        if (sketch.Narrowest < 2 + ends)
            return;
        var count = tape.Sizes(sketch.Sizes, tape.OneIn(4) ? 0 : 1, size => Math.Min(6, (sketch.Widths[size] - 2) / ends));
        if (count.Max() == 0)
            count[0] = 1;
        var only = Some(sketch);
        sketch.Statements.Add(new LeaveAtEdge(new Sized(count), edge) { Only = only });
        Step(sketch, Hands(sketch, edge), size => Has(only, size) ? -count[size] : 0);
        if (ends == 1 && tape.OneIn(4))
        {
            var other = Frame.Opposite(Hands(sketch, edge)[0]);
            sketch.Statements.Add(new AddAtEdge(2, Ref(sketch, other)));
            Step(sketch, [other], _ => 2);
        }
        FollowedByRows(sketch, 1);
    }

    private void Add(Sketch sketch)
    {
        MakePlain(sketch);
        if (sketch.Widest > Widest)
            return;
        var edge = AnyRef(sketch);
        var count = tape.Sizes(sketch.Sizes, 1, _ => 8);
        var only = Some(sketch);
        sketch.Statements.Add(new AddAtEdge(new Sized(count), edge) { Only = only });
        Step(sketch, Hands(sketch, edge), size => Has(only, size) ? count[size] : 0);
        FollowedByRows(sketch, 1);
    }

    private void AddOneRowApart(Sketch sketch)
    {
        MakePlain(sketch);
        if (sketch.Widest > Widest)
            return;
        var count = tape.Sizes(sketch.Sizes, 1, _ => 8);
        sketch.Statements.Add(new AddAtEdge(new Sized(count), EdgeRef.Both, true));
        Step(sketch, [Hand.Right, Hand.Left], size => count[size]);
        // Which edge comes one row later depends on the hook, so both are taken to have a step there as well.
        sketch.AddRows(_ => 1);
        Step(sketch, [Hand.Right, Hand.Left], _ => 0);
        var rowCount = tape.Sizes(sketch.Sizes, 2, _ => 6);
        sketch.Statements.Add(new Straight(new Sized(rowCount)));
        sketch.AddRows(size => rowCount[size] - 1);
    }

    private void FollowedByRows(Sketch sketch, int least)
    {
        if (tape.OneIn(3))
            rows.PlainRow(sketch);
        else if (tape.OneIn(3))
            Shape(sketch, null, true);
        else
            Straight(sketch, least);
    }

    private static void Step(Sketch sketch, IReadOnlyList<Hand> hands, Func<int, int> change)
    {
        foreach (var hand in hands)
        {
            sketch.AddStep(hand);
            for (var size = 0; size < sketch.Sizes; size++)
                sketch.Widths[size] += change(size);
        }
    }

    /// <summary>Shaping goes on with one plain stitch; where the last row has none, a row of one is worked first.</summary>
    private void MakePlain(Sketch sketch)
    {
        while (sketch.Ground == Ground.Mesh)
            rows.AnyRow(sketch);
        if (sketch.PlainStitch is null)
            rows.PlainRow(sketch);
    }

    private EdgeRef AnyRef(Sketch sketch) => tape.Below(3) switch
    {
        0 => EdgeRef.Both,
        1 => Ref(sketch, Hand.Right),
        _ => Ref(sketch, Hand.Left),
    };

    /// <summary>A hand, or the name in force there if the other edge has another.</summary>
    private EdgeRef Ref(Sketch sketch, Hand hand)
    {
        var name = sketch.Names[(int)hand];
        var isOwn = name.Length > 0 && name != sketch.Names[(int)Frame.Opposite(hand)];
        return isOwn && tape.OneIn(2) ? EdgeRef.Named(name) : EdgeRef.Of(hand);
    }

    private static List<Hand> Hands(EdgeRef edge) =>
        edge.Hand is { } hand ? [hand] : edge == EdgeRef.Both ? [Hand.Right, Hand.Left] : [Hand.Right];

    private static List<Hand> Hands(Sketch sketch, EdgeRef edge) =>
        edge.Name is { } name ? [name == sketch.Names[0] ? Hand.Right : Hand.Left] : Hands(edge);
}
