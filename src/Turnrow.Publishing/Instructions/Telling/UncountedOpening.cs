using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>A row whose turning chain stands for no stitch, or that needs none, or that opens with a space.</summary>
internal static class UncountedOpening
{
    public static void Tell(RowContext row, WordTeller teller)
    {
        var opening = row.Work.Opening;
        var at = GetThere(row, teller);
        IReadOnlyList<Word> words = row.Work.Words;
        if (opening is { Stitch: null, Space: > 0 })
        {
            var beginning = Beginning.Of(words);
            if (beginning.First is Chains) words = BehindChain(beginning);
            teller.Phrases.Add(new OpeningChain(null, opening.Chains, opening.Space, ChainRole.Space, at));
            teller.Finished(new Chains(opening.Space));
        }
        else if (opening is { Stitch: { } stitch, Chains: > 0 })
        {
            teller.Phrases.Add(new OpeningChain(stitch, opening.Chains, 0, ChainRole.Height, at));
        }
        else if (at is ChainAt.Turn or ChainAt.Back or ChainAt.RoundTurn)
        {
            teller.Phrases.Add(WayOn.AtEdge(row));
        }

        if (opening.Stitch is not null && IsInPlace(row, at)) words = InJoinedPlace(row, teller, words);
        else if (at is ChainAt.Round or ChainAt.RoundTurn && row.Row.Begins != RowBegins.Spiral) words = FromFirst(words);
        teller.Tell(words);
    }

    // The chain stands where the row begins: what was skipped for its space is skipped behind it, and behind a marker that goes into it.
    private static List<Word> BehindChain(Beginning beginning)
    {
        var words = beginning.Rest.ToList();
        if (beginning.Skipped > 0) words.Insert(words is [MarkCorner, ..] ? 1 : 0, new Skip(beginning.Skipped));
        return words;
    }

    // What a round skips at its beginning it skips from the place of the join on: so the first time of a repeat is told by itself.
    private static IReadOnlyList<Word> FromFirst(IReadOnlyList<Word> words)
    {
        var unrolled = Leading.Unrolled(words);
        return unrolled is [Skip, ..] ? unrolled : words;
    }

    // A spiral goes on in the next place, and a ring is named.
    private static bool IsInPlace(RowContext row, ChainAt at)
    {
        if (row.Row.Begins == RowBegins.Spiral || row.Places.At(0) is { Kind: PlaceKind.Ring }) return false;
        if (at == ChainAt.Joined || (at == ChainAt.LastSlip && row.GoesOn)) return true;
        return at is ChainAt.Round or ChainAt.RoundTurn && Beginning.Of(row.Work.Words).Passed(row.Places) == 0;
    }

    private static ChainAt GetThere(RowContext row, WordTeller teller)
    {
        if (row.Row.Begins == RowBegins.Joined) return ChainAt.Joined;
        if (row.GoesOn) return OnRound(row, teller);
        if (row.Row.Start is not { Adds: false } left) return row.Row.Begins == RowBegins.Back ? ChainAt.Back : ChainAt.Turn;
        teller.Phrases.Add(WayOn.AtEdge(row));
        teller.Phrases.Add(new SlipOverPlaces(Sized.Of(left.Count), AllAreLeft: true));
        teller.AtFirst = false;
        return ChainAt.LastSlip;
    }

    // A spiral goes on in the next place; before it comes to where it begins further on, it has not been there yet.
    private static ChainAt OnRound(RowContext row, WordTeller teller)
    {
        if (row.Row.Begins != RowBegins.Spiral) return WayOn.Tell(row, teller, OnTheWay(row));
        teller.AtFirst = false;
        if (row.Work.BegunAt == 0 || WayOn.IsPassedAtEnd(row.Work.Words, row.Work.BegunAt)) return ChainAt.Round;
        var below = row.Work.Below;
        var name = WayOn.NameOf(below, below.Count - row.Work.BegunAt, row.Work.BegunAt);
        teller.Phrases.Add(new SlipOn(Sized.Of(row.Work.BegunAt), name, name) { MovesOn = true });
        return ChainAt.Round;
    }

    // The chain stands where the first stitch goes: what lies before that kind of place is slipped over. What the designer skips is skipped behind the
    // chain, in words.
    private static int OnTheWay(RowContext row)
    {
        var beginning = Beginning.Of(row.Work.Words);
        var passed = beginning.First is Work or Group ? beginning.Passed(row.Places) : 0;
        return passed > beginning.Skipped ? passed : 0;
    }

    private static IReadOnlyList<Word> InJoinedPlace(RowContext row, WordTeller teller, IReadOnlyList<Word> words)
    {
        var beginning = Beginning.Of(words);
        if (beginning.First is not (Work or Group)) return words;
        row.Places.Pass(beginning.Passed(row.Places));
        if (beginning.First is Work { Takes: > 1 } decrease)
        {
            teller.Phrases.Add(FromJoinedPlace(row, decrease));
            teller.AtFirst = false;
            if (decrease.Amount.Times == 1) teller.Shape(decrease);
            OpeningTeller.TellAgain(teller, decrease);
            return beginning.Rest;
        }

        OpeningTeller.TellOnce(row, teller, beginning.First, new SamePlace(row.Places.NameOfSame()), false);
        OpeningTeller.TellAgain(teller, beginning.First);
        return beginning.Rest;
    }

    private static Together FromJoinedPlace(RowContext row, Work decrease)
    {
        var top = row.Places.TopAt(decrease.Takes - 1);
        var same = row.Places.NameOfSame();
        row.Places.Pass(1);
        var name = row.Places.NameOf(decrease.Takes - (top is null ? 1 : 2));
        row.Places.Pass(decrease.Takes - 1);
        return new Together(decrease.Stitch, decrease.Hook, decrease.Takes, Sized.Of(1), name, TogetherAt.Same, top) { Same = same };
    }
}
