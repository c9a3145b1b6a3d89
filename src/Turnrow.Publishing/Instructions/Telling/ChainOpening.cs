using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>A row that begins on a foundation, or on chains added where the hook is: its first stitch goes into a chain counted from the hook.</summary>
internal static class ChainOpening
{
    public static void Tell(RowContext row, WordTeller teller)
    {
        if (row.Row.Begins is RowBegins.Turned or RowBegins.Back) teller.Phrases.Add(WayOn.AtEdge(row));
        var opening = row.Work.Opening;
        teller.AtFirst = false;
        if (opening.Stitch is null) teller.Tell(row.Work.Words);
        else if (opening.Counts) Counted(row, teller, opening.Stitch);
        else InChain(row, teller, row.Work.Words, 0, null);
    }

    private static void Counted(RowContext row, WordTeller teller, Stitch stitch)
    {
        var beginning = Beginning.Of(row.Work.Words);
        var marks = new List<PlaceMarker>();
        var passed = beginning.Passed(row.Places);
        row.Places.Pass(passed);
        switch (beginning.First)
        {
            case Work { Takes: > 1 } decrease:
                teller.Phrases.AddRange(RestOf(row, decrease, stitch, passed));
                row.Places.Pass(decrease.Takes);
                teller.Finished(decrease);
                if (decrease.Amount.Times == 1) teller.Shape(decrease);
                break;
            case Work { Makes: 1 } when row.Work.Opening.SharesPlace:
                // What goes in beside the chain goes into the chain that it stands on.
                row.Places.Pass(1);
                InSame(row, teller, beginning.RestAfter(row.Work.Opening.Space > 0, marks), FromHook(row, passed, stitch));
                teller.Phrases.AddRange(marks.Select(mark => mark with { OfRound = row.Row.IsRound }));
                return;
            case Work { Makes: 1 } work:
                row.Places.Pass(1);
                // However far it was to go, the chain may be all there is of it.
                List<Word> words = work.Amount.Times > 1 ? [work with { Amount = work.Amount with { Times = work.Amount.Times - 1 }, Passed = 0 }] : [];
                words.AddRange(beginning.RestAfter(row.Work.Opening.Space > 0, marks));
                InChain(row, teller, words, passed, stitch);
                teller.Phrases.AddRange(marks.Select(mark => mark with { OfRound = row.Row.IsRound }));
                return;
            case { } first:
                // The chain and what is worked into its base share one place: alone in it the chain is told to be passed over.
                OpeningTeller.TellOnce(row, teller, first, FromHook(row, row.Work.Opening.SharesPlace ? passed : passed - 1, stitch), true, marks);
                break;
        }

        if (beginning.First is { } again) OpeningTeller.TellAgain(teller, again);
        teller.Tell(beginning.RestAfter(row.Work.Opening.Space > 0 && beginning.First is Work, marks));
        teller.Phrases.AddRange(marks.Select(mark => mark with { OfRound = row.Row.IsRound }));
    }

    private static void InSame(RowContext row, WordTeller teller, IReadOnlyList<Word> words, ChainFromHook where)
    {
        var same = Beginning.Of(words);
        if (same.First is not { } first) return;
        OpeningTeller.TellOnce(row, teller, first, where, false);
        OpeningTeller.TellAgain(teller, first);
        teller.Tell(same.Rest);
    }

    // The chain is one decrease with what follows; where it is all there is of chains, that goes into the row below.
    private static IEnumerable<Phrase> RestOf(RowContext row, Work decrease, Stitch stitch, int passed)
    {
        var chains = row.Work.Opening.FirstStitchIn - 1;
        Where where = FromHook(row, passed, stitch);
        if (row.Places.At(1) is not { Kind: PlaceKind.FoundationChain or PlaceKind.AddedChain } and { } next)
        {
            yield return new PassChains(null, chains);
            where = new NextPlaces(Sized.Of(decrease.Takes - 1), PlaceName.Of(next), false);
        }

        yield return new RestOfDecrease(stitch, decrease.Hook, decrease.Takes, chains, where);
    }

    // The next word goes, for its first time, into a chain counted from the hook.
    private static void InChain(RowContext row, WordTeller teller, IReadOnlyList<Word> words, int passed, Stitch? countsAs)
    {
        var beginning = Beginning.Of(words);
        var skipped = beginning.Passed(row.Places);
        // Behind the chain that counts, another yarn may be taken up before any stitch is worked.
        var isOfOtherYarn = countsAs is not null && YarnWords.First(words) is not null;
        if (isOfOtherYarn || beginning.First is not (Work or Group) || row.Places.At(skipped) is not { Kind: PlaceKind.FoundationChain or PlaceKind.AddedChain })
        {
            if (countsAs is not null) teller.Phrases.Add(new PassChains(countsAs, row.Work.Opening.FirstStitchIn - 1, row.Work.Opening.Space));
            teller.Tell(words);
            return;
        }

        row.Places.Pass(skipped);
        OpeningTeller.TellOnce(row, teller, beginning.First, FromHook(row, passed + skipped, countsAs), false);
        if (passed + skipped > 0) teller.ShapeSkipped(teller.Phrases.Count - 1);
        OpeningTeller.TellAgain(teller, beginning.First);
        teller.Tell(beginning.Rest);
    }

    private static ChainFromHook FromHook(RowContext row, int passed, Stitch? countsAs)
    {
        var opening = row.Work.Opening;
        return new ChainFromHook(Sized.Of(opening.FirstStitchIn + passed), countsAs, opening.Space, Sized.Of(Math.Max(0, passed)));
    }
}
