namespace Turnrow.Compiler.Tests.Naive;

/// <summary>One line of a piece; a claim is the count the designer says it comes to.</summary>
public abstract record Statement
{
    public Sized? Claim { get; init; }

    /// <summary>The sizes that the line is for; null for all.</summary>
    public IReadOnlyList<bool>? Only { get; init; }

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

public sealed record LeaveAtEdge(Sized Stitches, EdgeRef Edge) : Statement;

public sealed record AddAtEdge(Sized Stitches, EdgeRef Edge, bool OneRowApart = false) : Statement;

public sealed record Shape(RowSpan Span, IReadOnlyList<Schedule> Schedules) : Statement;

/// <summary>`both edges are neck`, `from here right edge is neck`.</summary>
public sealed record NameEdge(EdgeRef Edge, string Name, bool FromHere) : Statement;

public sealed record FastenOff : Statement;

/// <summary>One change at one edge (or the same at both) and the rows it happens in.</summary>
public sealed record Schedule(bool Increase, int Stitches, EdgeRef Edge, IReadOnlyList<Leg> Legs, int After = 0);

/// <summary>`every 4 rows 5 times`; without a number of times it goes on to the end.</summary>
public sealed record Leg(int Every, int? Times = null);
