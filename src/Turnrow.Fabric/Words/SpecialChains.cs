using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>
/// Chains at an end of a special stitch that lie beside other chains. To a maker both are one space; in the words it would belong to the stitch and not
/// belong to it, and no place can do that. So they are found here, and the row that has them is at fault.
/// </summary>
internal static class SpecialChains
{
    private enum End : byte
    {
        Nothing,
        Other,
        Chains,
        OfSpecial,
    }

    /// <summary>The word at which such chains meet; null if they meet nowhere.</summary>
    /// <param name="worked">A worked row.</param>
    public static Word? Meeting(IReadOnlyList<Word> worked) => Walk(worked).Met;

    private static (End First, End Last, Word? Met) Walk(IReadOnlyList<Word> words)
    {
        var (first, last) = (End.Nothing, End.Nothing);
        for (var i = 0; i < words.Count; i++)
        {
            var (begins, ends, met) = Walk(words[i]);
            if (met is not null) return (first, last, met);
            if (begins == End.Nothing) continue;
            if (AreOne(last, begins)) return (first, last, words[i]);
            if (first == End.Nothing) first = begins;
            last = ends;
        }

        return (first, last, null);
    }

    private static (End First, End Last, Word? Met) Walk(Word word)
    {
        switch (word)
        {
            case Chains:
                return (End.Chains, End.Chains, null);
            case Repeat { Ways.Count: > 0 } repeat:
                return Walk(repeat.Ways);
            case Repeat repeat:
                return Again(repeat, Walk(repeat.Words), repeat.Amount.Times);
            case Group group:
                return Again(group, Walk(group.Words), group.Times);
            case Work { Amount.Times: 0 } or Work { To: not null, Takes: 0 }:
            case Skip or SlipOver or Leave or Hold or MarkCorner or RemoveCorners:
                return (End.Nothing, End.Nothing, null);
            case Work { Stitch: { IsOne: false, Form: { } form } } work:
                return Again(work, (OfPart(form.Parts[0]), OfPart(form.Parts[^1]), null), work.Makes * work.Amount.Times);
            default:
                return (End.Other, End.Other, null);
        }
    }

    private static (End First, End Last, Word? Met) Again(Word word, (End First, End Last, Word? Met) once, int times)
    {
        if (times == 0) return (End.Nothing, End.Nothing, null);
        return times > 1 && AreOne(once.Last, once.First) ? once with { Met = once.Met ?? word } : once;
    }

    private static End OfPart(StitchPart part) => part.Stitch is null ? End.OfSpecial : End.Other;

    private static bool AreOne(End last, End first) => last >= End.Chains && first >= End.Chains && (last == End.OfSpecial || first == End.OfSpecial);
}
