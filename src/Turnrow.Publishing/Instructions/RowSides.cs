using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Folding;

namespace Turnrow.Publishing.Instructions;

/// <summary>Which side of the work faces in a row: in its heading, or in a sentence of its own where sizes differ.</summary>
/// <param name="names">The sizes' names.</param>
/// <param name="words">The terms.</param>
internal sealed class RowSides(SizeNames names, Wording words)
{
    /// <summary><c> (RS)</c>; empty where it goes without saying, or is said in the row.</summary>
    /// <param name="rows">Rows, a size.</param>
    /// <param name="at">Which of them, a size.</param>
    public string InHeading(FoldedRows rows, Func<int, int> at)
    {
        var first = rows.Sizes[0].Rows[at(0)].Row.RightSide;
        return GoesUnsaid(rows) || !AreAlike(rows, at) ? string.Empty : $" ({words.Side(first)})";
    }

    /// <summary><c>RS faces in sizes S (M), WS in size L. </c>, where sizes differ; else empty.</summary>
    /// <param name="rows">Rows, a size.</param>
    /// <param name="at">Which of them, a size.</param>
    public string InRow(FoldedRows rows, Func<int, int> at)
    {
        if (GoesUnsaid(rows) || AreAlike(rows, at)) return string.Empty;
        var first = rows.Sizes[0].Rows[at(0)].Row.RightSide;
        var like = Enumerable.Range(0, rows.Sizes.Count).ToLookup(s => rows.Sizes[s].Rows[at(s)].Row.RightSide == first, s => rows.Sizes[s].Size);
        return $"{words.Side(first)} faces in {names.Sizes([.. like[true]])}, {words.Side(!first)} in {names.Sizes([.. like[false]])}. ";
    }

    // Unless rounds are turned, the right side always faces.
    private static bool GoesUnsaid(FoldedRows rows) => rows.Sizes.All(static s => s.Rows.All(static r => r.Row is { IsRound: true, RightSide: true, Way: not RoundWay.Turned }));

    private static bool AreAlike(FoldedRows rows, Func<int, int> at)
    {
        for (var s = 1; s < rows.Sizes.Count; s++)
        {
            if (rows.Sizes[s].Rows[at(s)].Row.RightSide != rows.Sizes[0].Rows[at(0)].Row.RightSide) return false;
        }

        return true;
    }
}
