using Turnrow.Fabric.Colours;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>What follows is worked with a yarn.</summary>
internal sealed record WithYarn(string Yarn) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"with {Names.Words(Yarn)}";
}

/// <summary>A piece begins with a yarn, its chain included.</summary>
internal sealed record BeginWithYarn(string Yarn) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"begin with {Names.Words(Yarn)}";
}

/// <summary>A row ends with the yarn that the next one begins with.</summary>
/// <param name="Yarn">That yarn.</param>
/// <param name="AtJoin">True of a round that a slip stitch joins.</param>
internal sealed record ChangeAtEnd(string Yarn, bool AtJoin) : Phrase
{
    /// <summary>True if it is in the row already, and was cut there.</summary>
    public bool Anew { get; init; }

    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => AtJoin
        ? $"change to {Yarns} in the {words.SlipStitch} that joins"
        : $"change to {Yarns} in the last {words.Terms.YarnOver}";

    private string Yarns => Anew ? $"{Names.Words(Yarn)} (joined anew)" : Names.Words(Yarn);
}

/// <summary>What becomes of a yarn that rests from here.</summary>
internal sealed record RestYarn(string Yarn, YarnRest Rest, bool OfRound) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => Rest switch
    {
        YarnRest.Cut => $"cut {Names.Words(Yarn)}",
        YarnRest.CutThere => $"cut {Names.Words(Yarn)} where it was left",
        YarnRest.Carried => $"carry {Names.Words(Yarn)} up {(OfRound ? "inside" : "the side")}",
        _ => $"do not cut {Names.Words(Yarn)}",
    };
}
