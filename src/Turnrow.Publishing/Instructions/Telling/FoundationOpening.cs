using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>
/// A row that makes its own foundation: its first stitch goes into one of the few chains that are there, each of the others into the chain
/// at the foot of the one before.
/// </summary>
internal static class FoundationOpening
{
    public static void Tell(RowContext row, WordTeller teller)
    {
        var opening = row.Work.Opening;
        if (opening.Stitch is not { } plain || StitchBook.FoundationOf(plain) is not { } stitch) return;
        var others = row.Work.Below.Count - (opening.Counts ? 1 : 0);
        row.Places.Pass(row.Work.Below.Count);
        teller.AtFirst = false;
        if (others == 0)
        {
            teller.Phrases.Add(new PassChains(plain, opening.FirstStitchIn - 1));
            return;
        }

        var first = new ChainFromHook(Sized.Of(opening.FirstStitchIn), opening.Counts ? plain : null, 0, Sized.Of(0));
        teller.Phrases.Add(new StitchesIn(stitch, HookInto.BothLoops, Sized.Of(1), first));
        if (others > 1) teller.Phrases.Add(new BareStitches(stitch, HookInto.BothLoops, Sized.Of(others - 1)));
    }
}
