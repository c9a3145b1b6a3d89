namespace Turnrow.Fabric.Rows;

/// <summary>Stitches that waited side by side, all left by one row.</summary>
/// <param name="LeftBy">The number of the row that left them.</param>
/// <param name="From">How many of those that it left lie between its turn and these.</param>
/// <param name="Count">How many.</param>
public sealed record WaitingStitches(int LeftBy, int From, int Count);

/// <summary>What a row has to do with stitches that are left for later: it turns before them, starts where one turned, or works over them.</summary>
/// <param name="StartsAtTurn">True if stitches wait at the edge where it starts: it starts where the row before turned.</param>
/// <param name="Left">Stitches of what was before it that it leaves for later.</param>
/// <param name="Waiting">Stitches that wait at the edge where it would have ended, with those that rows before left; 0 if it reaches the edge.</param>
/// <param name="Over">The waiting stitches that it works over, in working order: its last places.</param>
public sealed record ShortWork(bool StartsAtTurn, int Left, int Waiting, IReadOnlyList<WaitingStitches> Over)
{
    /// <summary>A row from edge to edge.</summary>
    public static ShortWork None { get; } = new(false, 0, 0, []);

    /// <summary>Of the stitches left, those that a statement asked for, not the row's words.</summary>
    public int Said { get; init; }

    /// <summary>How many waiting stitches it works over.</summary>
    public int Taken => Over.Sum(static part => part.Count);

    /// <summary>True if it goes from edge to edge over the row before it and nothing else.</summary>
    public bool IsNone => !StartsAtTurn && Waiting == 0 && Over.Count == 0;
}
