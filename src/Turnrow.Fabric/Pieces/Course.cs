using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// Which way the work goes: back and forth in rows, or round. From it follow the side of the next row, the edge where it starts, and the
/// order in which it meets the places that the last one made.
/// </summary>
internal struct Course
{
    private readonly bool _isAfterRow;
    private readonly bool _lastIsRound;
    private readonly RoundWay _lastWay;
    private readonly bool _side;
    private readonly bool _lastIsBack;
    private bool _turnsBack;
    private PlaceSequence? _turned;
    private bool _inRounds;
    private bool _isBack;
    private RoundWay _way;

    /// <summary>Nothing is worked yet.</summary>
    /// <param name="firstIsRightSide">The side of the first row.</param>
    public Course(bool firstIsRightSide) => _side = firstIsRightSide;

    /// <summary>The same with the side that the designer says for the next row.</summary>
    public readonly Course On(bool rightSide) => _isAfterRow
        ? this with { _turnsBack = rightSide != _side }
        : new Course(rightSide) { Last = Last, InRounds = InRounds, Way = Way, IsBack = IsBack };

    private Course(Row last, PlaceSequence? places, RoundWay way)
    {
        (_isAfterRow, _lastIsRound, _lastWay, _side, InRounds) = (true, last.IsRound, last.Way, last.RightSide, last.IsRound);
        (Last, Way, _lastIsBack) = (places, way, last.IsBack);
    }

    /// <summary>True if the next row is a round.</summary>
    public bool InRounds
    {
        readonly get => _inRounds;
        set => (_inRounds, _turned) = (value, null);
    }

    /// <summary>True if the next row is worked back from left to right, as the maker sees it; else from right to left.</summary>
    public bool IsBack
    {
        readonly get => _isBack;
        set => (_isBack, _turned) = (value, null);
    }

    /// <summary>How rounds follow each other from here on.</summary>
    public RoundWay Way
    {
        readonly get => _way;
        set => (_way, _turned) = (value, null);
    }

    /// <summary>The places that are there, in the order in which the last row made them (before the first: in its own order); null if not known.</summary>
    public PlaceSequence? Last { get; private set; }

    /// <summary>
    /// True if the next row has the right side: it starts where the last one ended, so what is worked the other way is not turned. What comes after a round goes on with the same side facing, unless it is a row that is said to
    /// go back or rounds are turned; a round after rows has the right side whichever they end on, since a tube is worked from its outside.
    /// </summary>
    public readonly bool NextIsRightSide => !_isAfterRow ? _side
        : !_lastIsRound ? InRounds || _side != (IsBack == _lastIsBack)
        : _side != (InRounds ? Way == RoundWay.Turned && IsBack == _lastIsBack : _turnsBack);

    /// <summary>
    /// True if either side may come next, as the designer says: before the first row, and for the first row after rounds. A round is worked with
    /// the right side facing, but where rounds are turned the first one may have either.
    /// </summary>
    public readonly bool SideIsOpen => InRounds ? Way == RoundWay.Turned && !_isAfterRow : !_isAfterRow || _lastIsRound;

    /// <summary>The edge where the next row starts.</summary>
    public readonly Hand StartsAt => Frame.StartOf(NextIsRightSide, IsBack);

    /// <summary>True if the work is turned before the next row.</summary>
    public readonly bool Turns => _isAfterRow && NextIsRightSide != _side;

    /// <summary>True if the next row goes on in the direction of the last one, without turning.</summary>
    public readonly bool GoesOn => _isAfterRow && StartsAt == Frame.StartOf(_side, _lastIsBack);

    /// <summary>True if a round comes next that goes the other way from where the last one was joined: the work is turned there, or it is worked back.</summary>
    public readonly bool ReturnsAtJoin => _lastIsRound && InRounds && !GoesOn;

    /// <summary>True if there is a row that the next one can go back over: a round goes back over a round.</summary>
    public readonly bool HasWayBack => _isAfterRow && (!InRounds || _lastIsRound);

    /// <summary>True if the next round goes on where the last one ends, which was not joined.</summary>
    public readonly bool IsSpiral => _lastIsRound && InRounds && _lastWay == RoundWay.Spiral && Way == RoundWay.Spiral && GoesOn;

    /// <summary>The places in the order in which the next row meets them; null if not known.</summary>
    public PlaceSequence? Ahead => !_isAfterRow || GoesOn ? Last : _turned ??= Turned(Last);

    /// <summary>What comes after a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="way">How rounds follow each other.</param>
    public static Course After(Row row, RoundWay way) => new(row, row.Next, way);

    /// <summary>What comes after a row on part of which the work goes on.</summary>
    /// <param name="row">The row.</param>
    /// <param name="fromRight">The part's places, from the right edge.</param>
    /// <param name="way">How rounds follow each other.</param>
    public static Course After(Row row, PlaceSequence? fromRight, RoundWay way) => new(row, row.StartsAt == Hand.Right ? fromRight : fromRight?.Reversed(), way);

    /// <summary>It is known by other means what is there: places that are all alike, or nothing.</summary>
    public void Set(PlaceSequence? places) => (Last, _turned) = (places, null);

    // Where a round goes the other way from a join, the hook is in the round's first place: that one still comes first.
    private readonly PlaceSequence? Turned(PlaceSequence? places) =>
        ReturnsAtJoin ? places?.Reversed().BegunAt(places.Count - 1) : places?.Reversed();
}
