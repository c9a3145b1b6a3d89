using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Joins;

/// <summary>Why a row has no loops that could be worked into later.</summary>
public enum LoopsFault : byte
{
    /// <summary>It has them.</summary>
    None,

    /// <summary>There is no such row.</summary>
    NoRow,

    /// <summary>It is the last row: nothing is worked into it yet.</summary>
    IsLast,

    /// <summary>Spaces are among its stitches, and they have no loops.</summary>
    HasSpaces,

    /// <summary>The row above goes through both loops, or round posts.</summary>
    BothLoops,

    /// <summary>The row above goes through the front loop here and through the back loop there.</summary>
    OtherLoops,

    /// <summary>The row above is not worked into each of its stitches.</summary>
    NotAll,
}

/// <summary>
/// The loops of a row in the middle of a piece that the row above has left free: where that goes through the back loops alone, the front loops are an edge
/// that a skirt, a sole or a row of scales is picked up along, and the other way round.
/// </summary>
public static class FreeLoops
{
    /// <summary>The loops as an edge; null if there are none, or if the rows are not known.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="row">The number of the row whose loops they are.</param>
    /// <param name="fault">Why there are none.</param>
    public static JoinSide? Of(Piece piece, int row, out LoopsFault fault)
    {
        fault = row < 1 || row > piece.Rows.Count ? LoopsFault.NoRow : row == piece.Rows.Count ? LoopsFault.IsLast : LoopsFault.None;
        if (fault != LoopsFault.None || piece.Rows[row - 1].Work is not { } below || piece.Rows[row].Work is not { } above) return null;
        fault = piece.Rows[row] is { Start: null, End: null, Short.IsNone: true } ? FaultOf(below, above) : LoopsFault.NotAll;
        return fault == LoopsFault.None ? new JoinSide(piece, null, [new Stretch(StretchKind.FreeLoops, row, below.Tops.Count, null, null)]) : null;
    }

    /// <summary>True if they lie on the right side of the fabric.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="row">The number of the row whose loops they are.</param>
    public static bool LieOnRightSide(Piece piece, int row) =>
        piece.Rows[row] is { Work: { } above } over && over.RightSide == (LoopOf(above.Words) == HookInto.BackLoop);

    private static LoopsFault FaultOf(RowWork below, RowWork above)
    {
        if (below.Spaces > 0) return LoopsFault.HasSpaces;
        if (above.Below.Count != below.Tops.Count || Passes(above.Words)) return LoopsFault.NotAll;
        var (back, front) = (GoInto(above.Words, HookInto.BackLoop), GoInto(above.Words, HookInto.FrontLoop));
        var other = WordLists.Any(above.Words, static word => word is Work { To: null, Hook: not (HookInto.BackLoop or HookInto.FrontLoop) });
        return other ? LoopsFault.BothLoops : back == front ? LoopsFault.OtherLoops : LoopsFault.None;
    }

    private static HookInto LoopOf(IReadOnlyList<Word> words) =>
        GoInto(words, HookInto.BackLoop) ? HookInto.BackLoop : GoInto(words, HookInto.FrontLoop) ? HookInto.FrontLoop : HookInto.BothLoops;

    private static bool GoInto(IReadOnlyList<Word> words, HookInto loop) => WordLists.Any(words, word => word is Work { To: null } work && work.Hook == loop);

    private static bool Passes(IReadOnlyList<Word> words) =>
        WordLists.Any(words, static word => word is Skip { Count: > 0 } or SlipOver { Count: > 0 } or Hold or Leave);
}
