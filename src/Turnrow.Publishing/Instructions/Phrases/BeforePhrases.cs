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
internal sealed record GoOnFrom(string Piece, bool IsRound) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"go on from the last {(IsRound ? "round" : "row")} of {Names.Title(Piece)}, with the same yarn";
}

/// <summary>Yarn is joined anew in a stitch of an earlier piece's last row.</summary>
/// <param name="RightSide">True if the right side faces.</param>
/// <param name="Piece">The earlier piece.</param>
/// <param name="Nth">Which stitch …</param>
/// <param name="From">… counted from which edge.</param>
internal sealed record JoinInStitch(bool RightSide, string Piece, Sized<int> Nth, Hand From) : Phrase
{
    /// <summary>True if that row is a round.</summary>
    public bool IsRound { get; init; }

    protected override Phrase? Join(Phrase other) =>
        other is JoinInStitch join && join.RightSide == RightSide && join.Piece == Piece && join.From == From && join.IsRound == IsRound
            ? this with { Nth = Nth.And(join.Nth) }
            : null;

    protected override string Text(Wording words)
    {
        var nth = Nth.All(static n => n == 1) ? "first" : Nth.WrittenNth();
        return $"with {words.Side(RightSide)} of {Names.Title(Piece)} facing, join yarn with {words.SlipStitch} in the {nth} {words.St}"
            + (IsRound ? $" of its last round{(From == Hand.Right ? string.Empty : ", counted back from its end")}" : $" of its last row, counted from its {Wording.Hand(From)} edge");
    }
}

/// <summary>Chains added where the hook is.</summary>
internal sealed record ChainOn(Sized<int> Chains, string? Edge, Hand Hand) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is ChainOn chain && chain.Edge == Edge && chain.Hand == Hand
        ? this with { Chains = Chains.And(chain.Chains) }
        : null;

    protected override string Text(Wording words) =>
        $"the yarn is at the {Wording.Edge(Edge, Hand)}: {words.Ch} {Chains.Written()}";
}

/// <summary>Chains made with new yarn, from which the row goes on over a part.</summary>
internal sealed record NewChain(Sized<int> Chains) : Phrase
{
    protected override Phrase? Join(Phrase other) => other is NewChain chain ? new NewChain(Chains.And(chain.Chains)) : null;

    protected override string Text(Wording words) => $"with new yarn {words.Ch} {Chains.Written()}";
}

/// <summary>The row goes on from new chains over a part of an earlier piece's last row.</summary>
internal sealed record OverPart(bool RightSide, string Piece, Sized<int> Nth, Hand From) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is OverPart part && part.RightSide == RightSide && part.Piece == Piece && part.From == From
            ? this with { Nth = Nth.And(part.Nth) }
            : null;

    protected override string Text(Wording words) =>
        $"the row goes on, with {words.Side(RightSide)} of {Names.Title(Piece)} facing, in the {Nth.WrittenNth()} {words.St} of its last row,"
        + $" counted from its {Wording.Hand(From)} edge";
}

/// <summary>A separate length of chain, joined where the hook is not.</summary>
internal sealed record SeparateChain(Sized<int> Chains, string? Edge, string? YarnEdge, Hand Hand, Where At) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is SeparateChain chain && chain.Edge == Edge && chain.YarnEdge == YarnEdge && chain.Hand == Hand && At.And(chain.At) is { } at
            ? this with { Chains = Chains.And(chain.Chains), At = at }
            : null;

    protected override string Text(Wording words) =>
        $"leave the yarn at the {Wording.Edge(YarnEdge == Edge ? null : YarnEdge, Hand.Opposite())}; at the {Wording.Edge(YarnEdge == Edge ? null : Edge, Hand)}, join another length of yarn with {words.SlipStitch} in {At.Written(words)}, {words.Ch} {Chains.Written()}, fasten off";
}
