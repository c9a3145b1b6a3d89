using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// What was done to a piece, in terms of its frame and with every number known. A mirrored piece is the same events turned over: all
/// that depends on where the hook is comes out anew.
/// </summary>
internal abstract record PieceEvent;

internal sealed record RuleEvent(Stitch Stitch, TurnRule Rule, bool NextRowOnly) : PieceEvent;

internal sealed record NameEvent(Hand Hand, string Name, bool FromBeginning) : PieceEvent;

internal sealed record StepEvent(Hand Hand, Step Step) : PieceEvent;

internal sealed record LaterEvent(Hand Hand, int Count, Origin Origin) : PieceEvent;

internal sealed record ApartEvent(int Count, Origin Origin) : PieceEvent;

/// <param name="Plan">The plan; its words with every number known.</param>
/// <param name="Worked">False if the row could not be worked: then it is not known in the mirror either.</param>
/// <param name="Origin">The line that made the row.</param>
/// <param name="Ordinal">Its number among that line's rows.</param>
internal sealed record RowEvent(RowPlan Plan, bool Worked, Origin Origin, int Ordinal) : PieceEvent
{
    /// <summary>The yarn that it begins with.</summary>
    public string? Yarn { get; init; }
}

/// <summary>From here on the piece is worked in rounds, or in rows.</summary>
internal sealed record RoundsEvent(bool Rounds) : PieceEvent;

/// <summary>From here on rounds follow each other in a way.</summary>
internal sealed record RoundWayEvent(RoundWay Way) : PieceEvent;

/// <summary>The next row, which may have either, has a side.</summary>
internal sealed record SideEvent(bool RightSide) : PieceEvent;

/// <summary>What waits for later rows is in doubt for so many rows.</summary>
internal sealed record TurnsDoubtEvent(int Rows) : PieceEvent;

internal sealed record FastenOffEvent : PieceEvent;

/// <summary>The number of rows is in doubt from here on.</summary>
internal sealed record RowsDoubtEvent : PieceEvent;

/// <summary>The number of rows, of stitches or both are in doubt from here on, or stitches are known again.</summary>
internal sealed record DoubtEvent(bool Rows, int? KnownStitches) : PieceEvent;
