namespace Turnrow.Compiler.Tests.Naive;

/// <summary>One line of a piece; a claim is the count the designer says it comes to.</summary>
public abstract record Statement
{
    public Sized? Claim { get; init; }

    /// <summary>The sizes that the line is for; null for all.</summary>
    public IReadOnlyList<bool>? Only { get; init; }

    /// <summary>True if what it works is said to be rounds.</summary>
    public bool IsRound { get; init; }

    public bool IsFor(int size) => Only is null || Only[size];
}

/// <summary>How many rows: a number of them, or from a row to a row by number.</summary>
public sealed record RowSpan(Sized? From, Sized Last)
{
    public static RowSpan Of(Sized rows) => new(null, rows);

    public static RowSpan Between(Sized from, Sized to) => new(from, to);

    public int Count(int size) => From is null ? Last[size] : Last[size] - From[size] + 1;
}

/// <summary>`row: …`, `row 5 WS: …`.</summary>
public sealed record RowLine(IReadOnlyList<Word> Words, int? Number = null, Side? Side = null) : Statement;

/// <summary>`rows 2 to 19: …`.</summary>
public sealed record RowsLine(RowSpan Span, IReadOnlyList<Word> Words) : Statement;

public sealed record Straight(Sized Rows) : Statement;

/// <summary>`straight 8 rows, in shells`; without a name it goes on in what the piece is worked in.</summary>
public sealed record StraightIn(StitchPattern Pattern, Sized Rows, bool IsNamed) : Statement;

/// <summary>
/// `straight 8 rows, in shells, edges in sc`, or with schedules `shape 8 rows, in shells, edges in sc: …`; without a name it goes on between the edges
/// that are there.
/// </summary>
public sealed record EdgedIn(StitchPattern Pattern, Sized Rows, bool IsNamed, string Stitch, IReadOnlyList<Schedule> Schedules) : Statement;

public sealed record LeaveAtEdge(Sized Stitches, EdgeRef Edge) : Statement;

/// <summary>`leave 4 for later at left edge`.</summary>
public sealed record LeaveForLater(Sized Stitches, EdgeRef Edge) : Statement;

public sealed record AddAtEdge(Sized Stitches, EdgeRef Edge, bool OneRowApart = false) : Statement;

public sealed record Shape(RowSpan Span, IReadOnlyList<Schedule> Schedules) : Statement;

/// <summary>`shape 12 rounds: inc 6 evenly every 2 rounds, staggered`.</summary>
public sealed record SpreadSchedule(Sized Rows, bool Increase, Sized Many, int Every, bool Staggered) : Statement;

/// <summary>`shape 12 rounds evenly to 60, around`.</summary>
public sealed record SlopeAround(Sized Rows, Sized To) : Statement;

/// <summary>`both edges are neck`, `from here right edge is neck`.</summary>
public sealed record NameEdge(EdgeRef Edge, string Name, bool FromHere) : Statement;

public sealed record FastenOff : Statement;

/// <summary>`with navy`, as a line.</summary>
public sealed record TakeYarn(string Yarn) : Statement;

/// <summary>`stripes are navy 2 rows, cream 4 rows`.</summary>
public sealed record StripesAre(IReadOnlyList<(string Yarn, Sized Rows)> Order) : Statement;

/// <summary>`rounds are spiral`.</summary>
public sealed record RoundsAre(RoundsWay Way) : Statement;

public enum RoundsWay { Joined, Turned, Spiral }

/// <summary>One change at one edge (or the same at both) and the rows it happens in.</summary>
public sealed record Schedule(bool Increase, int Stitches, EdgeRef Edge, IReadOnlyList<Leg> Legs, int After = 0)
{
    /// <summary>Stitches left in the row before the legs begin; 0 for no such row.</summary>
    public int LeaveFirst { get; init; }

    /// <summary>True if it leaves the stitches for later: in the last row of an interval that goes to the edge.</summary>
    public bool ForLater { get; init; }

    /// <summary>Its own place and way; null where the piece's is meant.</summary>
    public Manner Own { get; init; } = new(null, null);
}

public enum Way { Together, Skipping, SlippingOver }

/// <summary>How many stitches in from the edge, and how it is decreased; null for unsaid.</summary>
public sealed record Manner(int? Inside, Way? Way)
{
    /// <summary>What a schedule says itself goes before what was said for the piece.</summary>
    public Manner Of(Manner own)
    {
        var inherited = own.Inside is not null && Way == Naive.Way.SlippingOver ? Naive.Way.Together : Way;
        return new Manner(own.Inside ?? Inside, own.Way ?? inherited);
    }
}

/// <summary>`shape 1 stitch in, by skipping`: from here on.</summary>
public sealed record ShapeManner(Manner Manner) : Statement;

/// <summary>`every 4 rows 5 times`; without a number of times it goes on to the end.</summary>
public sealed record Leg(int Every, int? Times = null);
