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

    protected override string Text(Wording words) => $"go on from the last {(OfRounds ? "round" : "row")} of {Names.Title(Piece)}, with the same yarn";
}

/// <summary>Yarn is joined anew in a stitch of an earlier piece's last row.</summary>
/// <param name="RightSide">True if the right side faces.</param>
/// <param name="Piece">The earlier piece.</param>
/// <param name="Nth">Which stitch …</param>
/// <param name="From">… counted from which edge.</param>
/// <param name="OfRound">True if that row is a round: it has no edge, but a beginning.</param>
internal sealed record JoinInStitch(bool RightSide, string Piece, Sized<int> Nth, Hand From, bool OfRound) : Phrase
{
    /// <summary>True if chains of a bridge are among the stitches counted: a maker would pass them by.</summary>
    public bool OverBridge { get; init; }

    /// <summary>That the chains of a bridge are counted too.</summary>
    public static string Bridged(bool overBridge, Wording words) => overBridge ? $" (each bridging {words.Ch} counts as a {words.St} here)" : string.Empty;

    /// <summary>From where stitches of a last row are counted: <c>of its last row, counted from its left edge</c>.</summary>
    public static string Counted(Hand from, bool ofRound) => !ofRound ? $"of its last row, counted from its {Wording.Hand(from)} edge"
        : from == Hand.Right ? "of its last round" : "of its last round, counted back from where that was joined";

    protected override Phrase? Join(Phrase other) =>
        other is JoinInStitch join && join.RightSide == RightSide && join.Piece == Piece && join.From == From && join.OfRound == OfRound && join.OverBridge == OverBridge
            ? this with { Nth = Nth.And(join.Nth) }
            : null;

    protected override string Text(Wording words)
    {
        var nth = Nth.All(static n => n == 1) ? "first" : Nth.WrittenNth();
        return $"with {words.Side(RightSide)} of {Names.Title(Piece)} facing, join yarn with {words.SlipStitch} in the {nth} {words.St} {Counted(From, OfRound)}{Bridged(OverBridge, words)}";
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
internal sealed record OverPart(bool RightSide, string Piece, Sized<int> Nth, Hand From, bool OfRound) : Phrase
{
    /// <summary>As of <see cref="JoinInStitch"/>.</summary>
    public bool OverBridge { get; init; }

    protected override Phrase? Join(Phrase other) =>
        other is OverPart part && part.RightSide == RightSide && part.Piece == Piece && part.From == From && part.OfRound == OfRound && part.OverBridge == OverBridge
            ? this with { Nth = Nth.And(part.Nth) }
            : null;

    protected override string Text(Wording words) =>
        $"the row goes on, with {words.Side(RightSide)} of {Names.Title(Piece)} facing, in the {Nth.WrittenNth()} {words.St} {JoinInStitch.Counted(From, OfRound)}{JoinInStitch.Bridged(OverBridge, words)}";
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
