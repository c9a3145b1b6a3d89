using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Places passed over: <c>skip first dc</c>, <c>skip next 2 sts</c>.</summary>
internal sealed record SkipPlaces(Sized<int> Count, PlaceName Place, bool FromFirst) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is SkipPlaces skip && Place.And(skip.Place) is { } place && skip.FromFirst == FromFirst
        ? this with { Count = Count.And(skip.Count), Place = place }
        : null;

    protected override string Text(Wording words)
    {
        var at = FromFirst ? "first" : "next";
        var places = Count.All(static n => n == 1) ? Place.One(words) : Place.Counted(Count, words);
        return $"{words.Terms.Skip} {at} {places}";
    }
}

/// <summary>The chain that stands for a stitch is passed over.</summary>
internal sealed record SkipChainTop(ChainTop Top) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"{words.Terms.Skip} {(Top.OfRound ? Top.Written(words) : words.ChainAtStart(Top.Beginning))}";
}

/// <summary>Slip stitches at a row's beginning to get past stitches.</summary>
/// <param name="Count">Over how many.</param>
/// <param name="AllAreLeft">True if the row begins behind the last of them, not in its place: where the chain does not count a maker can't tell.</param>
internal sealed record SlipOverPlaces(Sized<int> Count, bool AllAreLeft = false) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is SlipOverPlaces slip && slip.AllAreLeft == AllAreLeft ? this with { Count = Count.And(slip.Count) } : null;

    protected override string Text(Wording words)
    {
        var one = Count.All(static n => n == 1);
        var places = one ? $"first {words.St}" : $"each of first {PlaceName.AnyStitch.Counted(Count, words)}";
        var left = AllAreLeft ? $" (this row works nothing else in {(one ? "it" : "them")})" : string.Empty;
        return $"{words.SlipStitch} in {places}{left}";
    }
}

/// <summary>Slip stitches to the first space: it is worked in from there.</summary>
internal sealed record SlipToSpace(Sized<int> Passed, PlaceName Space) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is SlipToSpace slip && slip.Space == Space ? this with { Passed = Passed.And(slip.Passed) } : null;

    protected override string Text(Wording words) =>
        $"{new SlipOverPlaces(Passed).Written(words)}, {words.SlipStitch} in next {Space.One(words)}";
}

/// <summary>Stitches at the row's end stay unworked.</summary>
/// <param name="Count">How many.</param>
/// <param name="Named">True if the words before named them already ("to last 4 sts").</param>
internal sealed record LeaveLast(Sized<int> Count, bool Named) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is LeaveLast leave && leave.Named == Named ? this with { Count = Count.And(leave.Count) } : null;

    protected override string Text(Wording words)
    {
        var one = Count.All(static n => n == 1);
        if (Named) return one ? "leave this unworked" : "leave these unworked";
        return one ? $"leave the last {words.St} unworked" : $"leave the last {PlaceName.AnyStitch.Counted(Count, words)} unworked";
    }
}

/// <summary>A part ends before its row does: the others stay for later or for good.</summary>
internal sealed record LeaveOthers(Sized<int> Count) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is LeaveOthers leave ? new LeaveOthers(Count.And(leave.Count)) : null;

    protected override string Text(Wording words) => $"leave the other {PlaceName.AnyStitch.Counted(Count, words)} unworked";
}

/// <summary>The row before began with slip stitches: this one ends at them.</summary>
internal sealed record LeaveSlipStitches : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"leave the {words.SlipStitch}s unworked";
}
