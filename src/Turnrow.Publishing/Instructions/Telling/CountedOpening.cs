using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>
/// A row whose turning chain stands for its first stitch. The chain takes that stitch's place; an increase puts the rest into the base of
/// the chain, a decrease is a shorter chain and one stitch fewer.
/// </summary>
internal static class CountedOpening
{
    public static void Tell(RowContext row, WordTeller teller)
    {
        var beginning = Beginning.Of(row.Work.Words);
        if (row.Work.Opening.Chains == 0)
        {
            // A decrease that a chain of one would have stood for is worked without any.
            UncountedOpening.Tell(row, teller);
            return;
        }

        var passed = beginning.Passed(row.Places);
        var marks = new List<PlaceMarker>();
        var at = MakeChain(row, teller, beginning, passed);
        if (at is not (ChainAt.Turn or ChainAt.Back))
        {
            row.Places.Pass(passed);
            if (passed > 0) teller.ShapeSkipped(teller.Phrases.FindLastIndex(static p => p is SlipOverPlaces));
            teller.AtFirst = false;
            passed = 0;
        }

        switch (beginning.First)
        {
            case Work { Takes: > 1 } decrease:
                TakePlaceOfChain(row, teller, at, passed);
                RestOfDecrease(row, teller, decrease);
                break;
            case Work { Makes: 1 }:
                TakePlaceOfChain(row, teller, at, passed);
                if (Markers.MovedToChain(beginning.First) is { } moved) teller.Phrases.Add(moved);
                break;
            case Work or Group:
                if (passed > 0) teller.PassOver(passed);
                OpeningTeller.TellOnce(row, teller, beginning.First, BaseOfChain(row, teller, at), true, marks);
                break;
        }

        if (beginning.First is { } first) OpeningTeller.TellAgain(teller, first);
        teller.Tell(beginning.RestAfter(row.Work.Opening.Space > 0 && beginning.First is Work, marks));
        teller.Phrases.AddRange(marks.Select(mark => mark with { OfRound = row.Row.IsRound }));
    }

    // Gets to the place where the chain stands, and makes it there.
    private static ChainAt MakeChain(RowContext row, WordTeller teller, Beginning beginning, int passed)
    {
        var left = row.Row.Start is { Adds: false } start ? start.Count : 0;
        var at = row.Row.Begins == RowBegins.Back ? ChainAt.Back : ChainAt.Turn;
        if (row.Row.Begins == RowBegins.Joined)
        {
            at = ChainAt.Joined;
        }
        else if (row.GoesOn)
        {
            at = WayOn.Tell(row, teller, passed);
        }
        else if (left > 0)
        {
            teller.Phrases.Add(WayOn.AtEdge(row));
            teller.Phrases.Add(new SlipOverPlaces(Sized.Of(left + passed + 1)));
            at = ChainAt.LastSlip;
        }
        else if (passed > 0 && row.Places.At(passed) is { Kind: PlaceKind.Space } space)
        {
            teller.Phrases.Add(WayOn.AtEdge(row));
            teller.Phrases.Add(new SlipToSpace(Sized.Of(passed), PlaceName.Of(space)));
            at = ChainAt.LastSlip;
        }

        var opening = row.Work.Opening;
        var role = beginning.First is Work { Takes: > 1 } ? ChainRole.PartOfDecrease
            : beginning.Goes(opening.Stitch) ? ChainRole.Stitch
            : ChainRole.StitchAlone;
        teller.Phrases.Add(new OpeningChain(opening.Stitch, opening.Chains, opening.Space, role, at));
        return at;
    }

    private static void TakePlaceOfChain(RowContext row, WordTeller teller, ChainAt at, int passed)
    {
        var atEdge = at is ChainAt.Turn or ChainAt.Back;
        if (atEdge) teller.PassOver(passed + 1);
        else row.Places.Pass(1);
        if (atEdge && passed > 0) teller.ShapeSkipped(teller.Phrases.Count - 1);
        teller.AtFirst = false;
    }

    private static Where BaseOfChain(RowContext row, WordTeller teller, ChainAt at)
    {
        if (row.Places.At(0) is { Kind: PlaceKind.Ring }) return new InRing();
        var name = row.Places.NameOf(1);
        if (at is not (ChainAt.Turn or ChainAt.Back)) return new SamePlace(row.Places.NameOfSame());
        return row.Places.TopAt(0) is { } top ? top : new NextPlaces(Sized.Of(1), name, teller.AtFirst);
    }

    private static void RestOfDecrease(RowContext row, WordTeller teller, Work decrease)
    {
        var count = decrease.Takes - 1;
        Where where = count == 1 && row.Places.TopAt(0) is { } top
            ? top
            : new NextPlaces(Sized.Of(count), row.Places.NameOf(count), false);
        row.Places.Pass(count);
        teller.Phrases.Add(new RestOfDecrease(decrease.Stitch, decrease.Hook, decrease.Takes, row.Work.Opening.Chains, where));
        teller.Finished(decrease);
        if (decrease.Amount.Times == 1) teller.Shape(decrease);
    }
}
