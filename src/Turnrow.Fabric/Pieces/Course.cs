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
    private readonly bool _side;
    private bool _turnsBack;
    private PlaceSequence? _turned;

    /// <summary>Nothing is worked yet.</summary>
    /// <param name="firstIsRightSide">The side of the first row.</param>
    public Course(bool firstIsRightSide) => _side = firstIsRightSide;

    /// <summary>The same with the side that the designer says for the next row.</summary>
    public readonly Course On(bool rightSide) => _isAfterRow
        ? this with { _turnsBack = rightSide != _side }
        : new Course(rightSide) { Last = Last, InRounds = InRounds };

    private Course(Row last, PlaceSequence? places)
    {
        (_isAfterRow, _lastIsRound, _side, InRounds) = (true, last.IsRound, last.RightSide, last.IsRound);
        Last = places;
    }

    /// <summary>True if the next row is a round.</summary>
    public bool InRounds { get; set; }

    /// <summary>The places that are there, in the order in which the last row made them (before the first: in its own order); null if not known.</summary>
    public PlaceSequence? Last { get; private set; }

    /// <summary>
    /// True if the next row has the right side. What comes after a round goes on with the same side facing, unless it is a row that is said to
    /// go back; a round after rows has the right side whichever they end on, since a tube is worked from its outside.
    /// </summary>
    public readonly bool NextIsRightSide => !_isAfterRow ? _side
        : _lastIsRound ? _side != (_turnsBack && !InRounds)
        : InRounds || !_side;

    /// <summary>
    /// True if either side may come next, as the designer says: before the first row, and for the first row after rounds. A round is worked with
    /// the right side facing.
    /// </summary>
    public readonly bool SideIsOpen => !InRounds && (!_isAfterRow || _lastIsRound);

    /// <summary>True if the next row goes on in the direction of the last one, without turning.</summary>
    public readonly bool GoesOn => _isAfterRow && NextIsRightSide == _side;

    /// <summary>The places in the order in which the next row meets them; null if not known.</summary>
    public PlaceSequence? Ahead => !_isAfterRow || GoesOn ? Last : _turned ??= Last?.Reversed();

    /// <summary>What comes after a row.</summary>
    public static Course After(Row row) => new(row, row.Work?.Tops);

    /// <summary>What comes after a row on part of which the work goes on.</summary>
    /// <param name="row">The row.</param>
    /// <param name="fromRight">The part's places, from the right edge.</param>
    public static Course After(Row row, PlaceSequence? fromRight) => new(row, row.RightSide ? fromRight : fromRight?.Reversed());

    /// <summary>It is known by other means what is there: places that are all alike, or nothing.</summary>
    public void Set(PlaceSequence? places) => (Last, _turned) = (places, null);
}
