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
    public static void Begin(List<Phrase> before, RowContext place, PartStart part)
    {
        var (row, ofRound) = (place.Row, part.Base.EndsInRounds);
        if (!part.Joined) before.Add(new GoOnFrom(part.Base.Name, ofRound));
        // The length at the other end comes first, so that nothing has to be put aside for it but yarn that hangs there already.
        if (row.End is { Adds: true } end) before.Add(new ChainBehindPart(Sized.Of(end.Count), At(place, part, part.Count - 1), !part.Joined));
        if (!part.Joined) return;
        if (row.Start is { Adds: true })
        {
            before.Add(new NewChain(Sized.Of(place.Work.Opening.Chains)));
            return;
        }

        // Steps at the start of a joined row only move the place where it is joined.
        var passed = (row.Start?.Count ?? 0) + Beginning.Of(place.Work.Words).Passed(place.Places);
        before.Add(new JoinInStitch(At(place, part, passed)));
    }

    /// <summary>The stitch of the earlier row where a row on new chains goes over to it.</summary>
    public static StitchOfLast First(RowContext place, PartStart part) => At(place, part, 0);

    /// <summary>A stitch of the part, counted along the whole row.</summary>
    /// <param name="place">The row on the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="passed">Stitches of the part before it, in working order.</param>
    private static StitchOfLast At(RowContext place, PartStart part, int passed)
    {
        var from = CountedFrom(part, place.Row);
        var nth = NthFrom(part, place.Row, from, passed);
        return new(place.Row.RightSide, part.Base.Name, Sized.Of(nth), from, part.Base.EndsInRounds) { OverBridge = IsOverBridge(part, from, nth) };
    }

    /// <summary>The first stitch of a row over several pieces, counted along the row of the piece that it meets first.</summary>
    public static StitchOfLast FirstAcross(Row row, PartStart part) =>
        new(row.RightSide, part.Base.Name, Sized.Of(NthFrom(part, row, row.StartsAt, 0)), row.StartsAt, part.Base.EndsInRounds);

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
