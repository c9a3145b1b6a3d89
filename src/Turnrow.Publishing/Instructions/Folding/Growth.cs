using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>What repeated rows add to the count, read off the row model.</summary>
/// <param name="Change">Stitches added (above 0) or taken, a size.</param>
/// <param name="Every">In so many rows.</param>
internal sealed record Growth(Sized<int> Change, int Every)
{
    /// <summary>The growth of a fold from its row at <paramref name="from"/> on; null if nothing is added, or not evenly.</summary>
    public static Growth? Of(FoldedRows rows, int from)
    {
        var period = rows.Round.Count;
        return Even(rows, from, 1) ?? (period > 1 ? Even(rows, from, period) : null);
    }

    private static Growth? Even(FoldedRows rows, int from, int every)
    {
        var changes = new List<int>();
        foreach (var size in rows.Sizes)
        {
            int? change = null;
            for (var i = from; i < size.Rows.Count; i++)
            {
                var number = size.Rows[i].Row.Number;
                if (StitchesOf(size.Piece, number) is not { } now || StitchesOf(size.Piece, number - every) is not { } then) return null;
                if (change is { } known && known != now - then) return null;
                change = now - then;
            }

            changes.Add(change ?? 0);
        }

        return changes.TrueForAll(c => c > 0) || changes.TrueForAll(c => c < 0) ? new Growth(Sized.Over(changes), every) : null;
    }

    private static int? StitchesOf(Piece piece, int number) => number >= 1 ? piece.Rows[number - 1].Work?.Stitches : null;
}
