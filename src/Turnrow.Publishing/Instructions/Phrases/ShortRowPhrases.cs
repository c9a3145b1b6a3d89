using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Stitches that a short row leaves for a later row.</summary>
/// <param name="Fresh">How many of those before the row; 0 if it turns where a row before it turned.</param>
/// <param name="Before">How many that rows before it left go on waiting beside them.</param>
/// <param name="Named">True if the words before named them already ("to last 4 sts").</param>
/// <param name="Others">True if the row works over some of those left before.</param>
internal sealed record LeaveForNow(Sized<int> Fresh, Sized<int> Before, bool Named, bool Others) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is LeaveForNow leave && leave.Named == Named && leave.Others == Others
        && leave.Fresh.First > 0 == Fresh.First > 0 && leave.Before.First > 0 == Before.First > 0
            ? this with { Fresh = Fresh.And(leave.Fresh), Before = Before.And(leave.Before) }
            : null;

    protected override string Text(Wording words)
    {
        if (Others) return $"leave the other {Of(Before, words)} unworked for now";
        if (Fresh.First == 0) return $"leave the {Of(Before, words)} left before unworked for now";
        var one = Fresh.All(static n => n == 1);
        var these = Named ? one ? "this" : "these" : one ? $"the last {words.St}" : $"the last {PlaceName.AnyStitch.Counted(Fresh, words)}";
        var beside = Before.First > 0 ? $", with the {Of(Before, words)} left before" : string.Empty;
        return $"leave {these} unworked for now{beside}";
    }

    private static string Of(Sized<int> count, Wording words) =>
        count.All(static n => n == 1) ? words.St : PlaceName.AnyStitch.Counted(count, words);
}

/// <summary>All of what the row before made, to its turn: <c>each dc to the turn below</c>.</summary>
internal sealed record EachToTurn(PlaceName Place) : Where
{
    public override Where? And(Where other) => other is EachToTurn to && Place.And(to.Place) is { } place ? new EachToTurn(place) : null;

    public override string Written(Wording words) => $"each {Place.One(words)} to the turn below";
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
