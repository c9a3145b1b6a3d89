using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>From where the round before was joined to where this one begins.</summary>
internal static class WayOn
{
    /// <summary>Tells the slip stitches, if there are any, and where the round's chain stands then.</summary>
    /// <param name="row">The round.</param>
    /// <param name="teller">What tells it.</param>
    /// <param name="passed">Places that it passes over besides.</param>
    public static ChainAt Tell(RowContext row, WordTeller teller, int passed)
    {
        var turns = row.Row.Begins == RowBegins.RoundTurned;
        var on = row.Work.BegunAt;
        if (on + passed == 0) return turns ? ChainAt.RoundTurn : ChainAt.Round;
        if (turns) teller.Phrases.Add(new Turn());
        var below = row.Work.Below;
        var met = below.BegunAt(below.Count - on);
        if (on > 0) teller.Phrases.Add(new SlipOn(Sized.Of(on), NameOf(met, 1, on - 1), NameOf(met, on, 1)) { MovesOn = !IsPassedAtEnd(row.Work.Words, on) });
        if (passed > 0) teller.Phrases.Add(new SlipOn(Sized.Of(passed), NameOf(below, 1, passed - 1), NameOf(below, passed, 1)));
        return ChainAt.LastSlip;
    }

    /// <summary>At the edge where the row before ends: the work is turned, or it is not.</summary>
    public static Phrase AtEdge(RowContext row) => row.Row.Begins == RowBegins.Back ? new DoNotTurn() : new Turn();

    /// <summary>True if what lies before the beginning is passed over at the round's end as well.</summary>
    public static bool IsPassedAtEnd(IReadOnlyList<Word> words, int on) => words is [.., Skip { IsUnsaid: true } rest] && rest.Count >= on;

    /// <summary>What so many places are called.</summary>
    public static PlaceName NameOf(PlaceSequence places, int from, int count)
    {
        PlaceName? name = null;
        foreach (var kind in places.Slice(from, count).Kinds())
        {
            // The top of a chain that stands for a stitch is one of the stitches.
            var here = kind.Place.Kind is PlaceKind.TurningChain or PlaceKind.SkippedChains ? PlaceName.AnyStitch : PlaceName.Of(kind.Place);
            name = name is { } known ? known.With(here) : here;
        }

        return name ?? PlaceName.AnyStitch;
    }
}
