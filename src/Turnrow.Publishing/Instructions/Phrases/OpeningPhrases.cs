using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>What the chain that a row opens with stands for.</summary>
internal enum ChainRole : byte
{
    /// <summary>The row's first stitch, as everywhere in the pattern.</summary>
    Stitch,

    /// <summary>The row's first stitch, where the next is another: it is said once more.</summary>
    StitchAlone,

    /// <summary>Nothing: it only gives height.</summary>
    Height,

    /// <summary>A space.</summary>
    Space,

    /// <summary>A stitch worked together with the next: a shorter chain.</summary>
    PartOfDecrease,
}

/// <summary>Where the chain stands that a row opens with.</summary>
internal enum ChainAt : byte
{
    /// <summary>At the edge; the work is turned after it.</summary>
    Turn,

    /// <summary>At the edge; the row goes back without a turn.</summary>
    Back,

    /// <summary>In the place of the last slip stitch.</summary>
    LastSlip,

    /// <summary>Where the yarn was joined.</summary>
    Joined,

    /// <summary>Where the round before was joined.</summary>
    Round,

    /// <summary>The same, and the work is turned after it.</summary>
    RoundTurn,
}

/// <summary>The chain that a row opens with.</summary>
/// <param name="Stitch">The stitch whose chain it is; null for a space.</param>
/// <param name="Chains">Its length.</param>
/// <param name="Space">Chains of it that are a space.</param>
/// <param name="Role">What it stands for.</param>
/// <param name="At">Where it stands.</param>
internal sealed record OpeningChain(Stitch? Stitch, int Chains, int Space, ChainRole Role, ChainAt At) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words)
    {
        var chain = $"{words.Ch} {Numbers.Plain(Chains)}{Meaning(words)}";
        return At == ChainAt.Back ? chain + ", do not turn" : At is ChainAt.Turn or ChainAt.RoundTurn ? chain + ", turn" : chain;
    }

    private string Meaning(Wording words)
    {
        switch (Role)
        {
            case ChainRole.StitchAlone when Space == 0 && At is ChainAt.Turn or ChainAt.Back or ChainAt.Round or ChainAt.RoundTurn:
                return $" (counts as 1 {words.Stitch(Stitch!)})";
            case ChainRole.Stitch or ChainRole.StitchAlone when Space > 0:
                return $" (counts as 1 {words.Stitch(Stitch!)} and {words.Ch} {Numbers.Plain(Space)}{(At == ChainAt.LastSlip ? $", in the place of the last {words.SlipStitch}" : string.Empty)})";
            case ChainRole.Stitch or ChainRole.StitchAlone when At == ChainAt.LastSlip:
                return $" (counts as 1 {words.Stitch(Stitch!)}, in the place of the last {words.SlipStitch})";
            case ChainRole.Stitch or ChainRole.StitchAlone when At == ChainAt.Joined:
                return $" (counts as 1 {words.Stitch(Stitch!)}, in the joined {words.St})";
            case ChainRole.Stitch:
                return words.TurningChainCounts(Stitch!, Chains);
            case ChainRole.Height:
                return words.TurningChainDoesNotCount(Stitch!, Chains);
            case ChainRole.Space:
                return $" (a {words.Ch}-{Numbers.Plain(Chains)} {words.Sp})";
            default:
                return string.Empty;
        }
    }
}

/// <summary>The rest of a decrease that a shorter chain began: <c>dc in next dc (the ch 2 and this dc count as dc2tog)</c>.</summary>
internal sealed record RestOfDecrease(Stitch Stitch, HookInto Hook, int Takes, int Chains, Where Where) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is RestOfDecrease rest && rest.Stitch == Stitch && rest.Hook == Hook && rest.Takes == Takes && rest.Chains == Chains
        && Where.And(rest.Where) is { } where
            ? this with { Where = where }
            : null;

    protected override string Text(Wording words)
    {
        var rest = Takes == 2 ? words.Stitch(Stitch, Hook) : words.Together(Stitch, Hook, Takes - 1);
        var whole = words.Together(Stitch, Hook, Takes);
        var over = Takes == 2 ? Wording.Into(Hook) : Wording.Over(Hook);
        if (Where is ChainFromHook from)
            return $"{rest} {over} {from.Place(words)} (the {words.Terms.Skipped} {from.Chains} {words.Ch} and this {rest} {words.Noting(Note.DecreaseAtStart, "count as")} {whole})";
        // Two together go over two, not over each of them.
        var where = Takes > 2 && Where is NextPlaces next ? $"next {next.Place.Counted(next.Count, words)}" : Where.Written(words);
        return $"{rest} {over} {where} (the {words.Ch} {Numbers.Plain(Chains)} and this {rest} {words.Noting(Note.DecreaseAtStart, "count as")} {whole})";
    }
}

/// <summary>The work is turned without a chain.</summary>
internal sealed record Turn : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "turn";
}

/// <summary>A row goes back without a chain and without a turn.</summary>
internal sealed record DoNotTurn : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => "do not turn";
}

/// <summary>Chains made before, where nothing is worked into a chain after them; the stitch that they stand for, if it is one by itself.</summary>
/// <param name="Stitch">The stitch; null where they stand for none by themselves.</param>
/// <param name="Chains">How many.</param>
/// <param name="Space">Chains among them that are a space behind the stitch.</param>
internal sealed record PassChains(Stitch? Stitch, int Chains, int Space = 0) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => $"{words.Terms.Skip} the {Numbers.Plain(Chains)} {words.Ch}{Meaning(words)}";

    private string Meaning(Wording words)
    {
        if (Stitch is null) return string.Empty;
        return $" (they count as 1 {words.Stitch(Stitch)}{(Space > 0 ? $" and {words.Ch} {Numbers.Plain(Space)}" : string.Empty)})";
    }
}
