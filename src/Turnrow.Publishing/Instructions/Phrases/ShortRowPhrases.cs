using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Which stitches a short row leaves.</summary>
internal enum LeftForNow : byte
{
    /// <summary>The last ones of the row before.</summary>
    Last,

    /// <summary>The last ones of the row before, and beside them those that rows before left.</summary>
    LastAndBefore,

    /// <summary>Those that rows before left: it turns where one of them turned.</summary>
    Before,

    /// <summary>Of those that rows before left, the ones that it does not work over.</summary>
    Others,
}

/// <summary>Stitches that a short row leaves for a later row.</summary>
/// <param name="Count">How many; those that rows before left are not counted again.</param>
/// <param name="Which">Which they are.</param>
/// <param name="Named">True if the words before named them already ("to last 4 sts").</param>
internal sealed record LeaveForNow(Sized<int> Count, LeftForNow Which, bool Named) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is LeaveForNow leave && leave.Named == Named && leave.Which == Which ? this with { Count = Count.And(leave.Count) } : null;

    protected override string Text(Wording words)
    {
        var one = Count.All(static n => n == 1);
        var sts = one ? words.St : PlaceName.AnyStitch.Counted(Count, words);
        return Which switch
        {
            LeftForNow.Others => $"leave the other {sts} {words.Unworked}",
            LeftForNow.Before => $"leave the {sts} left before {words.Unworked}",
            _ => $"leave {(!Named ? $"the last {sts}" : one ? "this" : "these")} {words.Unworked}"
                + (Which == LeftForNow.LastAndBefore ? ", with those left before" : string.Empty),
        };
    }
}

/// <summary>All of what the row before made, to its turn: <c>each dc to the turn below</c>.</summary>
internal sealed record EachToTurn(PlaceName Place) : Where
{
    /// <summary>How many places it stays away from the turn.</summary>
    public Sized<int> Before { get; init; } = Sized.Of(0);

    public override Where? And(Where other) => other is EachToTurn to && IsShort == to.IsShort && Place.And(to.Place) is { } place ? new EachToTurn(place) { Before = Before.And(to.Before) } : null;

    public override string Written(Wording words) =>
        $"each {Place.One(words)} to {(IsShort ? $"{PlaceName.AnyStitch.Counted(Before, words)} before " : string.Empty)}the turn below";

    private bool IsShort => Before.First > 0;
}

/// <summary>Stitches that a short row left: <c>each of the 6 dc left before</c>, or the next of them.</summary>
/// <param name="Count">How many.</param>
/// <param name="Place">What they are called.</param>
/// <param name="All">True if these are all.</param>
internal sealed record LeftBefore(Sized<int> Count, PlaceName Place, bool All) : Where
{
    public override Where? And(Where other) => other is LeftBefore left && left.All == All && Place.And(left.Place) is { } place
        ? this with { Count = Count.And(left.Count), Place = place }
        : null;

    public override string Written(Wording words)
    {
        var one = Count.All(static n => n == 1);
        if (All) return one ? $"the {Place.One(words)} left before" : $"each of the {Place.Counted(Count, words)} left before";
        return one ? $"next {Place.One(words)} of those left before" : $"each of next {Place.Counted(Count, words)} of those left before";
    }
}

/// <summary>The row works over stitches left before, in words that do not name them.</summary>
internal sealed record OverLeftBefore(Sized<int> Count) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is OverLeftBefore over ? new OverLeftBefore(Count.And(over.Count)) : null;

    protected override string Text(Wording words) => Count.All(static n => n == 1)
        ? $"the last {words.St} worked over is the one left before"
        : $"the last {PlaceName.AnyStitch.Counted(Count, words)} worked over are those left before";
}
