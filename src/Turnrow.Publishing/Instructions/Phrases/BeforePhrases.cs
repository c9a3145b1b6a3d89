using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A foundation chain: <c>ch 79</c>.</summary>
internal sealed record MakeChain(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is MakeChain chain ? new MakeChain(Chains.And(chain.Chains)) : null;

    protected override string Text(Wording words) => $"{words.Ch} {Chains.Written()}";
}

/// <summary>An earlier piece is gone on with, by the yarn that is there.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="OfRounds">True if it ends in rounds.</param>
internal sealed record GoOnFrom(string Piece, bool OfRounds) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) =>
        $"{words.LoopOf(Piece)}go on from the last {(OfRounds ? "round" : "row")} of {Names.Title(Piece)}, with the same yarn";
}

/// <summary>Yarn is joined anew in a stitch of an earlier piece's last row.</summary>
internal sealed record JoinInStitch(StitchOfLast Stitch) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is JoinInStitch join && Stitch.And(join.Stitch) is { } stitch ? new JoinInStitch(stitch) : null;

    protected override string Text(Wording words) => $"{Stitch.Facing(words)}, join yarn with {words.SlipStitch} in {Stitch.Written(words)}";
}

/// <summary>Chains added where the hook is.</summary>
internal sealed record ChainOn(Sized<int> Chains, string? Edge, Hand Hand) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is ChainOn chain && chain.Edge == Edge && chain.Hand == Hand
        ? this with { Chains = Chains.And(chain.Chains) }
        : null;

    protected override string Text(Wording words) =>
        $"the yarn is at the {words.Edge(Edge, Hand)}: {words.Ch} {Chains.Written()}";
}

/// <summary>Chains made with new yarn, from which the row goes on over a part.</summary>
internal sealed record NewChain(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is NewChain chain ? new NewChain(Chains.And(chain.Chains)) : null;

    protected override string Text(Wording words) => $"with new yarn {words.Ch} {Chains.Written()}";
}

/// <summary>
/// A row that begins on new chains goes on over a part of an earlier piece's last row, said beforehand: some stitch of it is worked over both.
/// </summary>
internal sealed record OverPart(StitchOfLast Stitch) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is OverPart part && Stitch.And(part.Stitch) is { } stitch ? new OverPart(stitch) : null;

    protected override string Text(Wording words) => $"the row goes on, {Stitch.Facing(words)}, in {Stitch.Written(words)}";
}

/// <summary>The same, said within the row where it comes to that stitch.</summary>
internal sealed record GoOver(StitchOfLast Stitch) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is GoOver over && Stitch.And(over.Stitch) is { } stitch ? new GoOver(stitch) : null;

    protected override string Text(Wording words) => $"then, {Stitch.Facing(words)}, beginning with {Stitch.Written(words)}";
}

/// <summary>A separate length of chain behind the last stitch of a part.</summary>
/// <param name="Chains">Its chains.</param>
/// <param name="Stitch">That stitch.</param>
/// <param name="YarnHangs">True if the row goes on with yarn that hangs at its beginning.</param>
internal sealed record ChainBehindPart(Sized<int> Chains, StitchOfLast Stitch, bool YarnHangs) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is ChainBehindPart chain && chain.YarnHangs == YarnHangs && Stitch.And(chain.Stitch) is { } stitch
            ? this with { Chains = Chains.And(chain.Chains), Stitch = stitch }
            : null;

    protected override string Text(Wording words) =>
        $"{(YarnHangs ? "leave the yarn where it is; " : string.Empty)}{Stitch.Facing(words)}, join {(YarnHangs ? "another" : "a separate")} length of yarn with {words.SlipStitch} in {Stitch.Written(words)}, {words.Ch} {Chains.Written()}, fasten off";
}

/// <summary>A separate length of chain, joined where the hook is not.</summary>
internal sealed record SeparateChain(Sized<int> Chains, string? Edge, string? YarnEdge, Hand Hand, Where At) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is SeparateChain chain && chain.Edge == Edge && chain.YarnEdge == YarnEdge && chain.Hand == Hand && At.And(chain.At) is { } at
            ? this with { Chains = Chains.And(chain.Chains), At = at }
            : null;

    protected override string Text(Wording words) =>
        $"leave the yarn at the {words.Edge(YarnEdge == Edge ? null : YarnEdge, Hand.Opposite())}; at the {words.Edge(YarnEdge == Edge ? null : Edge, Hand)}, join another length of yarn with {words.SlipStitch} in {At.Written(words)}, {words.Ch} {Chains.Written()}, fasten off";
}
