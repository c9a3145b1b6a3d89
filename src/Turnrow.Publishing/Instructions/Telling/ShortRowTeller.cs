using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells what a row leaves for later, and that it works over what was left.</summary>
internal static class ShortRowTeller
{
    /// <summary>What the row leaves for now; null if it reaches its edge.</summary>
    public static LeaveForNow? Left(RowContext place, IReadOnlyList<Phrase> told)
    {
        var turns = place.Row.Short;
        if (turns.Waiting == 0) return null;
        var named = told.Count > 0 && told[^1] is StitchesIn { Where: EachToLast { Last: var last } } && last.First == turns.Left;
        var before = turns.Waiting - turns.Left;
        var which = turns.Over.Count > 0 ? Phrases.LeftForNow.Others
            : turns.Left == 0 ? Phrases.LeftForNow.Before
            : before > 0 ? Phrases.LeftForNow.LastAndBefore
            : Phrases.LeftForNow.Last;
        return new LeaveForNow(Sized.Of(turns.Left > 0 ? turns.Left : before), which, named);
    }

    /// <summary>The row whose stitches a short row left, of one of those that a later row works over; null if that is not known.</summary>
    public static Row? RowBelow(Piece piece, Row row, int place)
    {
        foreach (var part in row.Short.Over)
        {
            // What a row leaves was made by the row before it.
            if (place < part.Count) return part.LeftBy > 1 ? piece.Rows[part.LeftBy - 2] : null;
            place -= part.Count;
        }

        return null;
    }

    /// <summary>A remark where the row works over stitches left before and no phrase says so; else null.</summary>
    public static Phrase? Remark(RowContext place, IReadOnlyList<Phrase> told) =>
        place.Row.Short.Over.Count == 0 || told.Any(static phrase => phrase is StitchesIn { Where: LeftBefore })
            ? null
            : new OverLeftBefore(Sized.Of(place.Row.Short.Taken));
}
