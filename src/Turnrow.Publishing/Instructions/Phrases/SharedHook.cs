using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>
/// Where the hook goes in stitches that share one place: where all of them go there in one manner it is said once, at the place; where they
/// do not, each says its own loop.
/// </summary>
internal static class SharedHook
{
    /// <summary>The manner of all stitches of a bracket; both loops where they do not go one way.</summary>
    public static HookInto Of(PhraseList phrases)
    {
        HookInto? shared = null;
        return IsOne(phrases, ref shared) ? shared ?? HookInto.BothLoops : HookInto.BothLoops;
    }

    /// <summary>The manner of all parts of a stitch; both loops where they do not go one way.</summary>
    public static HookInto Of(IReadOnlyList<StitchPart> parts)
    {
        HookInto? shared = null;
        foreach (var part in parts)
        {
            if (part.Worked is not null && !Take(part.Hook, ref shared)) return HookInto.BothLoops;
        }

        return shared ?? HookInto.BothLoops;
    }

    /// <summary>What is left for the stitch to say where its loop is said at the place: a post or a row further down is in its name.</summary>
    public static HookInto InName(this HookInto hook) => hook is HookInto.BackLoop or HookInto.FrontLoop ? HookInto.BothLoops : hook;

    /// <summary>The phrases, their loops said elsewhere.</summary>
    public static PhraseList WithoutLoops(PhraseList phrases) => new([.. phrases.Phrases.Select(static phrase => phrase switch
    {
        BareStitches bare => bare with { Hook = bare.Hook.InName() },
        Repeated repeated => repeated with { Words = WithoutLoops(repeated.Words) },
        _ => phrase,
    })]);

    private static bool IsOne(PhraseList phrases, ref HookInto? shared)
    {
        foreach (var phrase in phrases.Phrases)
        {
            if (phrase is BareStitches { Stitch.Takes: > 0 } bare && !Take(bare.Hook, ref shared)) return false;
            if (phrase is Repeated repeated && !IsOne(repeated.Words, ref shared)) return false;
        }

        return true;
    }

    private static bool Take(HookInto hook, ref HookInto? shared)
    {
        shared ??= hook;
        return shared == hook;
    }
}
