using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A ring of yarn that is drawn together.</summary>
internal sealed record MakeAdjustableRing : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "make an adjustable ring";
}

/// <summary>A few chains joined to a ring, which is worked into as one place.</summary>
internal sealed record MakeChainRing(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is MakeChainRing ring ? new MakeChainRing(Chains.And(ring.Chains)) : null;

    protected override string Text(Wording words) => $"{words.Ch} {Chains.Written()}, join with {words.SlipStitch} in first {words.Ch} to form a ring";
}

/// <summary>What is worked into an adjustable ring is drawn together.</summary>
internal sealed record CloseRing : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "pull the yarn end to close the ring";
}

/// <summary>The ring that the piece begins with.</summary>
internal sealed record InRing : Where
{
    public override Where? And(Where other) => Equals(other) ? this : null;

    public override string Written(Wording words) => "ring";
}

/// <summary>A round of a spiral over a part of a row is open until the next stitch.</summary>
internal sealed record CloseToRing : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"close these {words.Sts} to a ring with the next {words.St}";
}

/// <summary>From here on rounds are not joined.</summary>
internal sealed record SpiralBegins : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) =>
        $"do not join this round or the next ones, keep a marker in the first {words.St} of each";
}

/// <summary>A round of a spiral ends where its marker is moved to.</summary>
internal sealed record RoundEndsHere : Phrase
{
    protected override Phrase? Join(Phrase other) => other is RoundEndsHere ? this : null;

    protected override string Text(Wording words) => $"end the round here, the marker moves to the next {words.St}";
}

/// <summary>The last round of a spiral is brought level with the one below.</summary>
internal sealed record SpiralEnds : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"{words.SlipStitch} in next {words.St}, which ends the spiral";
}

/// <summary>From here on the other side of the chain is worked into.</summary>
internal sealed record OppositeSide : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "working along the opposite side of the foundation chain";
}

/// <summary>Slip stitches from where a round was joined to where it begins.</summary>
/// <param name="Count">How many, the last of them in the place where it begins.</param>
/// <param name="Over">What those before it go into.</param>
/// <param name="Place">Where it begins.</param>
internal sealed record SlipOn(Sized<int> Count, PlaceName Over, PlaceName Place) : Phrase
{
    /// <summary>True if the round begins there, and what lies before comes last; false if that is passed over.</summary>
    public bool MovesOn { get; init; }

    protected override Phrase? Join(Phrase other) => other is SlipOn slip && slip.MovesOn == MovesOn && Over.And(slip.Over) is { } over && Place.And(slip.Place) is { } place
        ? this with { Count = Count.And(slip.Count), Over = over, Place = place }
        : null;

    protected override string Text(Wording words) =>
        MovesOn ? $"{Way(words)} (the round begins here, and ends in the {words.Sts} before this)" : Way(words);

    private string Way(Wording words)
    {
        if (Count.All(static n => n == 1)) return $"{words.SlipStitch} in next {Place.One(words)}";
        if (Over == Place) return $"{words.SlipStitch} in each of next {Place.Counted(Count, words)}";
        var before = Count.Select(static n => n - 1);
        var over = before.All(static n => n == 1) ? $"next {Over.One(words)}" : $"each of next {Over.Counted(before, words)}";
        return $"{words.SlipStitch} in {over} and in next {Place.One(words)}";
    }
}
