using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>What repeated rows add to the count, read off the row model.</summary>
/// <param name="Change">Stitches added (above 0) or taken, a size.</param>
/// <param name="Every">In so many rows, a size.</param>
internal sealed record Growth(Sized<int> Change, Sized<int> Every)
{
    /// <summary>The growth of a fold, without its first so many rows, in the pattern's own way of counting; null if nothing is added, or not evenly.</summary>
    public static Growth? Of(FoldedRows rows, Sized<int> without, Counting counting) =>
        Even(rows, without, without.Select(static _ => 1), counting) ?? (rows.Round.Count > 1 ? Even(rows, without, rows.RoundRows, counting) : null);

    private static Growth? Even(FoldedRows rows, Sized<int> without, Sized<int> every, Counting counting)
    {
        var changes = new List<int>();
        for (var s = 0; s < rows.Sizes.Count; s++)
        {
            if (ChangeIn(rows.Sizes[s], without.Values[s], every.Values[s], counting) is not { } change) return null;
            changes.Add(change);
        }

        return changes.TrueForAll(static c => c > 0) || changes.TrueForAll(static c => c < 0) ? new Growth(Sized.Over(changes), every) : null;
    }

    private static int? ChangeIn(SizeRows size, int without, int every, Counting counting)
    {
        int? change = null;
        for (var i = without; i < size.Rows.Count; i++)
        {
            var number = size.Rows[i].Row.Number;
            if (StitchesOf(size.Piece, number, counting) is not { } now || StitchesOf(size.Piece, number - every, counting) is not { } then) return null;
            if (change is { } known && known != now - then) return null;
            change = now - then;
        }

        return change;
    }

    private static int? StitchesOf(Piece piece, int number, Counting counting) => number >= 1 ? piece.Rows[number - 1].Work?.Count(counting) : null;
}
