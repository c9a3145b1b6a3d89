namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What happens at an edge in a row: stitches left before it, or so many increases (above zero) or decreases (below) in it.</summary>
public readonly record struct EdgeTask(int Left, int Change, bool IsSkipping, int Inside)
{
    /// <summary>Stitches that the next row to go to the edge leaves for later.</summary>
    public int Later { get; init; }
}

/// <summary>What happens at each edge in each row of a shaping.</summary>
public sealed class ShapingWork
{
    private readonly EdgeTask[] _right;
    private readonly EdgeTask[] _left;

    public ShapingWork(int rows, IReadOnlyList<Schedule> schedules, Manner manner, Func<EdgeRef, List<Hand>> handsOf)
    {
        _right = new EdgeTask[rows + 1];
        _left = new EdgeTask[rows + 1];
        foreach (var schedule in schedules)
        {
            var hands = handsOf(schedule.Edge);
            foreach (var row in RowsOf(schedule, rows))
            {
                var isStep = schedule.LeaveFirst > 0 && row == schedule.After + 1;
                foreach (var hand in hands)
                    Put(hand, row, isStep ? new EdgeTask(schedule.LeaveFirst, 0, false, 0) : TaskOf(schedule, manner.Of(schedule.Own)));
            }
        }
    }

    public EdgeTask At(Hand hand, int row) => hand == Hand.Right ? _right[row] : _left[row];

    public static EdgeTask TaskOf(Schedule schedule, Manner manner)
    {
        if (schedule.ForLater)
            return new EdgeTask(0, 0, false, 0) { Later = schedule.Stitches };
        if (schedule.Increase)
            return new EdgeTask(0, schedule.Stitches, false, manner.Inside ?? 0);
        return manner.Way switch
        {
            Way.SlippingOver => new EdgeTask(schedule.Stitches, 0, false, 0),
            Way.Skipping => new EdgeTask(0, -schedule.Stitches, true, manner.Inside ?? 1),
            _ => new EdgeTask(0, -schedule.Stitches, false, manner.Inside ?? 0),
        };
    }

    /// <summary>Stitches that a row's change needs of those that are there.</summary>
    public static int Taken(EdgeTask task) => task.Change == 0 ? 0 : task.Inside + Changed(task);

    /// <summary>A row from the right edge to the left, its changes side by side, as far in as they are.</summary>
    public static List<Place> MakeRow(IReadOnlyList<Place> below, string stitch, EdgeTask right, EdgeTask left)
    {
        var plain = below.Count - Taken(right) - Taken(left);
        if (plain < 0)
            throw new UnworkableException("the changes of this row need more stitches than there are");
        var made = AtEdge(below.Take(Taken(right)).ToList(), stitch, right);
        made.AddRange(below.Skip(Taken(right)).Take(plain).Select(place => Carried(stitch, place)));
        var end = AtEdge(below.TakeLast(Taken(left)).Reverse().ToList(), stitch, left);
        end.Reverse();
        made.AddRange(end);
        return made;
    }

    /// <summary>From an edge inwards: plain stitches, then the changes.</summary>
    private static List<Place> AtEdge(List<Place> below, string stitch, EdgeTask task)
    {
        if (task.Change == 0)
            return [];
        if (below.Skip(task.Inside).Any(place => place.IsCorner))
            throw new UnworkableException("a change at an edge has no middle for a corner");
        var made = below.Take(task.Inside).Select(place => Carried(stitch, place)).ToList();
        var count = Math.Abs(task.Change);
        if (task.Change > 0)
            made.AddRange(Enumerable.Repeat(new Place(stitch), 2 * count));
        else if (task.IsSkipping)
            made.AddRange(Enumerable.Repeat(new Place(stitch), count - 1));
        else
            made.AddRange(Enumerable.Repeat(Place.Together(stitch, 2), count));
        return made;
    }

    private static Place Carried(string stitch, Place place) => new(stitch) { IsCorner = place.IsCorner };

    // Between two that are skipped one is worked.
    private static int Changed(EdgeTask task) =>
        task.Change > 0 ? task.Change : task.IsSkipping ? -2 * task.Change - 1 : -2 * task.Change;

    private void Put(Hand hand, int row, EdgeTask task)
    {
        var tasks = hand == Hand.Right ? _right : _left;
        if (tasks[row] != default)
            throw new UnworkableException("two schedules change the same edge in one row");
        tasks[row] = task;
    }

    /// <summary>Each change happens in the last row of its interval; a step before them has a row of its own.</summary>
    public static List<int> RowsOf(Schedule schedule, int rows)
    {
        var changed = new List<int>();
        var row = schedule.After;
        if (schedule.LeaveFirst > 0)
            changed.Add(++row);
        foreach (var leg in schedule.Legs)
        {
            if (leg.Every < 1)
                throw new UnworkableException("every no rows");
            if (schedule.ForLater && leg is { Every: 1, Times: not 1 and not 0 })
                throw new UnworkableException("only every second row goes to an edge");
            for (var time = 0; leg.Times is { } times ? time < times : row + leg.Every <= rows; time++)
            {
                row += leg.Every;
                // One of the last two rows of the interval goes to the edge.
                changed.Add(schedule.ForLater && leg.Every > 1 ? row - 1 : row);
            }
        }
        // One that goes on for as long as there are rows needs none.
        if (schedule.Legs.All(leg => leg.Times is not null) && row > rows)
            throw new UnworkableException("the schedule does not fit in its rows");
        return changed.Where(changing => changing <= rows).ToList();
    }
}
