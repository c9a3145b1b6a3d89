using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Stitches, so many in each place: <c>2 dc in each of next 5 dc</c>.</summary>
internal sealed record StitchesIn(Stitch Stitch, HookInto Hook, Sized<int> Each, Where Where) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is StitchesIn stitches && stitches.Stitch == Stitch && stitches.Hook == Hook && Where.And(stitches.Where) is { } where
            ? this with { Each = Each.And(stitches.Each), Where = where }
            : null;

    protected override string Text(Wording words)
    {
        var name = words.Stitch(Stitch, Hook);
        var number = Each.All(static n => n == 1) ? name : $"{Each.Written()} {name}";
        return $"{number} {Where.Into(Hook, words)}";
    }
}

/// <summary>Stitches without a place of their own, as they stand in a group: <c>2 dc</c>, <c>dc in back loop only</c>.</summary>
internal sealed record BareStitches(Stitch Stitch, HookInto Hook, Sized<int> Count) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is BareStitches bare && bare.Stitch == Stitch && bare.Hook == Hook
        ? this with { Count = Count.And(bare.Count) }
        : null;

    protected override string Text(Wording words)
    {
        var name = words.Stitch(Stitch, Hook);
        return (Count.All(static n => n == 1) ? name : $"{Count.Written()} {name}") + Wording.LoopAlone(Hook);
    }
}

/// <summary>Stitches and chains in one place: <c>(2 dc, ch 2, 2 dc) in next ch-2 sp</c>.</summary>
internal sealed record GroupIn(PhraseList Words, Where Where) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is GroupIn group && Words.And(group.Words) is { } list && Where.And(group.Where) is { } where
            ? this with { Words = list, Where = where }
            : null;

    protected override string Text(Wording words)
    {
        var shared = SharedHook.Of(Words);
        var inside = shared == HookInto.BothLoops ? Words : SharedHook.WithoutLoops(Words);
        return $"({inside.Written(words)}) {Where.Into(shared, words)}";
    }
}

/// <summary>Stitches worked together: <c>dc2tog over next 2 dc</c>.</summary>
/// <param name="Stitch">The stitch.</param>
/// <param name="Hook">Where the hook goes.</param>
/// <param name="Takes">Places that one takes.</param>
/// <param name="Times">How often.</param>
/// <param name="Place">What the places are, without the chain's top.</param>
/// <param name="At">Where in the row they are.</param>
/// <param name="Top">The chain's top, if that is the last of the places.</param>
internal sealed record Together(
    Stitch Stitch, HookInto Hook, int Takes, Sized<int> Times, PlaceName Place, TogetherAt At, ChainTop? Top) : Phrase
{
    /// <summary>What the place is where the yarn is joined, if it is one of them.</summary>
    public PlaceName Same { get; init; }

    /// <summary>Of one that goes across the turn below, how many of its places come before that; else 0.</summary>
    public int BeforeTurn { get; init; }

    protected override Phrase? Join(Phrase other) =>
        other is Together t && Place.And(t.Place) is { } place && Same.And(t.Same) is { } same && t with { Times = Times, Place = Place, Same = Same, Shaping = Shaping } == this
            ? this with { Times = Times.And(t.Times), Place = place, Same = same }
            : null;

    protected override string Text(Wording words)
    {
        var next = Sized.Of(Top is null ? Takes : Takes - 1);
        var places = Place.Counted(next, words);
        if (next.First == 1) places = Place.One(words);
        if (At == TogetherAt.Same) return $"{words.Together(Stitch, Hook, Takes)} {Wording.Over(Hook)} {FromSame(words)}";
        var at = $"{Position} {places}{(Top is null ? string.Empty : $" and {Top.Written(words)}")}";
        var turn = BeforeTurn == 0 ? string.Empty : $" ({Numbers.Plain(BeforeTurn)} before the turn below and {Numbers.Plain(Takes - BeforeTurn)} behind it)";
        var one = $"{words.Together(Stitch, Hook, Takes)} {Wording.Over(Hook)} {at}{turn}";
        return Times.All(static n => n == 1) ? one : $"[{one}] {Numbers.Times(Times)}";
    }

    private string Position => At switch
    {
        TogetherAt.First => "first",
        TogetherAt.Last => "last",
        _ => "next",
    };

    private string FromSame(Wording words)
    {
        var rest = Takes - (Top is null ? 1 : 2);
        var next = rest == 0 ? string.Empty : $" and next {(rest == 1 ? Place.One(words) : Place.Counted(Sized.Of(rest), words))}";
        return $"same {Same.One(words)}{next}{(Top is null ? string.Empty : $" and {Top.Written(words)}")}";
    }
}

/// <summary>Where in a row stitches are worked together.</summary>
internal enum TogetherAt : byte
{
    /// <summary>Over its first places.</summary>
    First,

    /// <summary>Over the next places.</summary>
    Next,

    /// <summary>Over the place where the yarn is joined and the next ones.</summary>
    Same,

    /// <summary>Over its last places.</summary>
    Last,
}

/// <summary>Stitches worked together over a chain's first places: <c>dc2tog over next 2 ch, beginning in 4th ch from hook</c>.</summary>
internal sealed record TogetherFromHook(Stitch Stitch, HookInto Hook, int Takes, PlaceName Place, Where From) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is TogetherFromHook t && t.Stitch == Stitch && t.Hook == Hook && t.Takes == Takes && t.Place == Place && From.And(t.From) is { } from
            ? this with { From = from }
            : null;

    protected override string Text(Wording words) =>
        $"{words.Together(Stitch, Hook, Takes)} over {Place.Counted(Sized.Of(Takes), words)}, beginning in {From.Written(words)}";
}

/// <summary>Chains over the work: <c>ch 3</c>.</summary>
internal sealed record ChainSpace(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is ChainSpace space ? new ChainSpace(Chains.And(space.Chains)) : null;

    protected override string Text(Wording words) => $"{words.Ch} {Chains.Written()}";
}

/// <summary>A part worked so many times: <c>[dc in each of next 4 dc, 2 dc in next dc] 6 times</c>.</summary>
internal sealed record Repeated(PhraseList Words, Sized<int> Times) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is Repeated repeated && Words.And(repeated.Words) is { } list
        ? this with { Words = list, Times = Times.And(repeated.Times) }
        : null;

    protected override string Text(Wording words) => $"[{Words.Written(words)}] {Numbers.Times(Times)}";
}
