namespace Turnrow.Compiler.Tests.Naive;

/// <summary>How many increases (above zero) or decreases (below) happen at each edge in each row of a shaping.</summary>
public sealed class ShapingWork
{
    private readonly int[] _right;
    private readonly int[] _left;

    public ShapingWork(int rows, IReadOnlyList<Schedule> schedules, Func<EdgeRef, List<Hand>> handsOf)
    {
        _right = new int[rows + 1];
        _left = new int[rows + 1];
        foreach (var schedule in schedules)
        {
            var hands = handsOf(schedule.Edge);
            foreach (var row in RowsOf(schedule, rows))
            {
                foreach (var hand in hands)
                    Put(hand, row, schedule.Increase ? schedule.Stitches : -schedule.Stitches);
            }
        }
    }

    public int At(Hand hand, int row) => hand == Hand.Right ? _right[row] : _left[row];

    /// <summary>A row from the right edge to the left, its changes side by side from the edges.</summary>
    public static List<Place> MakeRow(IReadOnlyList<Place> below, string stitch, int right, int left)
    {
        var plain = below.Count - Taken(right) - Taken(left);
        if (plain < 0)
            throw new UnworkableException("the changes of this row need more stitches than there are");
        if (below.Take(Taken(right)).Concat(below.TakeLast(Taken(left))).Any(place => place.IsCorner))
            throw new UnworkableException("a change at an edge has no middle for a corner");
        var made = Changes(stitch, right);
        made.AddRange(below.Skip(Taken(right)).Take(plain).Select(place => new Place(stitch) { IsCorner = place.IsCorner }));
        made.AddRange(Changes(stitch, left));
        return made;
    }

    private void Put(Hand hand, int row, int change)
    {
        var changes = hand == Hand.Right ? _right : _left;
        if (changes[row] != 0)
            throw new UnworkableException("two schedules change the same edge in one row");
        changes[row] = change;
    }

    /// <summary>Each change happens in the last row of its interval.</summary>
    private static List<int> RowsOf(Schedule schedule, int rows)
    {
        var changed = new List<int>();
        var row = schedule.After;
        foreach (var leg in schedule.Legs)
        {
            if (leg.Every < 1)
                throw new UnworkableException("every no rows");
            for (var time = 0; leg.Times is { } times ? time < times : row + leg.Every <= rows; time++)
                changed.Add(row += leg.Every);
        }
        if (row > rows)
            throw new UnworkableException("the schedule does not fit in its rows");
        return changed;
    }

    private static int Taken(int change) => change >= 0 ? change : -2 * change;

    private static List<Place> Changes(string stitch, int change) => change >= 0
        ? Enumerable.Repeat(new Place(stitch), 2 * change).ToList()
        : Enumerable.Repeat(Place.Together(stitch, 2), -change).ToList();
}
