using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>
/// Tells how a piece begins on a part of an earlier one's last row. That row has no edge where the part ends: its stitches are named by
/// their number.
/// </summary>
internal static class PartTeller
{
    /// <summary>What is done before the first row.</summary>
    /// <param name="before">Where to.</param>
    /// <param name="place">The row.</param>
    /// <param name="first">The part that it meets first.</param>
    /// <param name="last">The part that it meets last: the same, but of a row over several.</param>
    /// <param name="joined">True if yarn is joined anew.</param>
    public static void Begin(List<Phrase> before, RowContext place, PartStart first, PartStart last, bool joined)
    {
        var row = place.Row;
        if (!joined) before.Add(new GoOnFrom(first.Base.Name, first.Base.EndsInRounds));
        // The length at the other end comes first, so that nothing has to be put aside for it but yarn that hangs there already.
        if (row.End is { Adds: true } end) before.Add(new ChainBehindPart(Sized.Of(end.Count), Last(row, last), !joined));
        if (!joined) return;
        if (place.ChainsBefore > 0)
        {
            before.Add(new NewChain(Sized.Of(place.Work.Opening.Chains)));
            return;
        }

        // Steps at the start of a joined row only move the place where it is joined.
        var passed = place.IsFirstOfPart ? (row.Start?.Count ?? 0) + Beginning.Of(place.Work.Words).Passed(place.Places) : 0;
        before.Add(new JoinInStitch(At(row, first, passed, CountedFrom(first, row))));
    }

    /// <summary>The stitch of the earlier row where a row on new chains goes over to it.</summary>
    public static StitchOfLast First(RowContext place, PartStart part) => At(place.Row, part, 0, CountedFrom(part, place.Row));

    // Counted from the edge that it lies at, if it lies at one.
    private static StitchOfLast Last(Row row, PartStart part)
    {
        var beyond = row.EndsAt == Hand.Left ? part.FromLeft : part.FromRight;
        return At(row, part, part.Count - 1, beyond == 0 ? row.EndsAt : CountedFrom(part, row));
    }

    // A stitch of the part behind so many others, in working order, counted along the whole row.
    private static StitchOfLast At(Row row, PartStart part, int passed, Hand from)
    {
        var nth = NthFrom(part, row, from, passed);
        return new(row.RightSide, part.Base.Name, Sized.Of(nth), from, part.Base.EndsInRounds)
        {
            OverBridge = IsOverBridge(part, from, nth),
            IsRim = part.Base.Start is AssembledStart && from == Hand.Right && nth == 1,
        };
    }

    // Counted from the edge that the part reaches, if it reaches one; else from where the row starts.
    private static Hand CountedFrom(PartStart part, Row row)
    {
        if (part.FromLeft == 0 && part.FromRight > 0) return Hand.Left;
        return part.FromRight == 0 && part.FromLeft > 0 ? Hand.Right : row.StartsAt;
    }

    private static int NthFrom(PartStart part, Row row, Hand from, int passed)
    {
        var fromRight = row.StartsAt == Hand.Right ? part.FromRight + 1 + passed : part.FromRight + part.Count - passed;
        return from == Hand.Right ? fromRight : part.Base.LastStitches + 1 - fromRight;
    }

    // The stitches up to the nth are counted along the row below: chains of a bridge among them are its stitches too.
    private static bool IsOverBridge(PartStart part, Hand from, int nth)
    {
        if (part.Base.TopFromRight is not { } top) return false;
        var along = from == Hand.Right ? top : top.Reversed();
        var counted = 0;
        for (var cursor = new PlaceCursor(along); cursor.Remaining > 0 && counted < nth;)
        {
            var run = cursor.CurrentRun(int.MaxValue);
            if (run.Place.Kind == PlaceKind.BridgeChain) return true;
            if (run.Place.TakesStitches) counted += run.Count;
            cursor.Pass(run.Count);
        }

        return false;
    }
}
