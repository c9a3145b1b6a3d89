using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>How the end of a round is joined to its beginning.</summary>
internal static class Joins
{
    /// <summary>The join at the end of a round.</summary>
    public static JoinRound OfRound(RowWork work)
    {
        var opening = work.Opening;
        if (opening.Stitch is null && opening.Space > 0) return new JoinRound(RoundJoin.FirstSpace, null, 0, opening.Chains);
        var first = Leading.First(work.Words) as Work;
        var decreases = first is { IsDecrease: true };
        if (opening is { Counts: true, Chains: > 0 } && first is { IsDecrease: true, Takes: 2 }) return new JoinRound(RoundJoin.BesideChain, first.Stitch, 0, opening.Chains);
        if (opening is { Counts: true, FirstStitchIn: > 0 } && !decreases) return new JoinRound(RoundJoin.TopOfSkipped, null, 0, 0);
        if (opening is { Counts: true, Chains: > 0 } && !decreases)
            return new JoinRound(RoundJoin.TopOfChain, null, opening.Space > 0 ? opening.Chains - opening.Space : 0, opening.Chains);
        return new JoinRound(RoundJoin.FirstStitch, decreases || work.Tops.Count == 0 ? null : work.Tops.First.Stitch, 0, 0);
    }

    /// <summary>True if a round's end is left open: a row comes next that goes back over it.</summary>
    public static bool IsOpen(RowContext row) => IsLeftOpen(row.Piece, row.Index);

    /// <summary>The same of a round by its index.</summary>
    public static bool IsLeftOpen(Piece piece, int index) => index + 1 < piece.Rows.Count && piece.Rows[index + 1].Begins is RowBegins.Turned or RowBegins.Back;
}
