using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// What is not known of a piece's rows so far, because a line could not be read or a row does not come out. What hangs on it is not worked, so that
/// nothing is said of it that may not be true.
/// </summary>
internal readonly record struct Doubts
{
    /// <summary>How many rows there are, and with it sides and ends.</summary>
    public bool Rows { get; init; }

    /// <summary>Which places of the last row are corners.</summary>
    public bool Corners { get; init; }

    /// <summary>Of which kind each place of the last row is.</summary>
    public bool Kinds { get; init; }

    /// <summary>What waits beside the last row is known again once there are so many rows.</summary>
    public int TurnsBefore { get; init; }

    /// <summary>What is not known where a piece goes on from others.</summary>
    public static Doubts Of(params IEnumerable<Piece> pieces)
    {
        var doubts = default(Doubts);
        foreach (var piece in pieces) doubts = doubts with { Rows = doubts.Rows || piece.RowsInDoubt, Corners = doubts.Corners || piece.CornersInDoubt };
        return doubts;
    }

    /// <summary>True if words speak of what is not known.</summary>
    /// <param name="words">The words of the next row.</param>
    /// <param name="rows">How many rows there are.</param>
    public bool Hide(IReadOnlyList<Word> words, int rows) =>
        (Corners && Turnrow.Fabric.Words.Corners.AreSaid(words))
        || (Kinds && PlaceKinds.AreSaid(words))
        || ((Rows || HideTurns(rows)) && Turns.AreSaid(words));

    /// <summary>True if it is not known what waits beside the last row.</summary>
    /// <param name="rows">How many rows there are.</param>
    public bool HideTurns(int rows) => rows < TurnsBefore;
}
