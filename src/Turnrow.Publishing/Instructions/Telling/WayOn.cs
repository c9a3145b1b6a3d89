using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
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
        var count = row.Work.BegunAt + passed;
        if (count == 0) return turns ? ChainAt.RoundTurn : ChainAt.Round;
        if (turns) teller.Phrases.Add(new Turn());
        var below = row.Work.Below;
        var met = below.BegunAt(below.Count - row.Work.BegunAt);
        teller.Phrases.Add(new SlipOn(Sized.Of(count), NameOf(met, 1, count - 1), NameOf(met, count, 1)));
        return ChainAt.LastSlip;
    }

    /// <summary>What so many places are called.</summary>
    public static PlaceName NameOf(PlaceSequence places, int from, int count)
    {
        PlaceName? name = null;
        foreach (var kind in places.Slice(from, count).Kinds()) name = name is { } known ? known.With(PlaceName.Of(kind.Place)) : PlaceName.Of(kind.Place);
        return name ?? PlaceName.AnyStitch;
    }
}
