using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Rows;

/// <summary>What goes into the first place that a row works into.</summary>
internal static class FirstPlace
{
    /// <summary>True if it is more than one stitch, be it in one word, in a bracket or "in same" behind the first.</summary>
    /// <param name="words">The row's words.</param>
    /// <param name="isIdle">True of a word that does nothing.</param>
    public static bool TakesMore(IReadOnlyList<Word> words, Func<Word, bool> isIdle)
    {
        var first = (Word?)null;
        foreach (var word in Leaves(words, isIdle))
        {
            if (first is not null) return word is Work { Target.Aim: Aim.Same } or Group { Target.Aim: Aim.Same };
            if (word is Work { Takes: > 1, Stitch.IsOne: true } || StitchesOf(word) is not { } stitches) return false;
            if (stitches > 1) return true;
            if (word is Work { Amount: not { Reach: Reach.Fixed, Count: 1 } } or Group { Target.Aim: Aim.EachOfKind }) return false;
            first = word;
        }

        return false;
    }

    // The words that work something, brackets opened.
    private static IEnumerable<Word> Leaves(IReadOnlyList<Word> words, Func<Word, bool> isIdle)
    {
        for (var i = 0; i < words.Count; i++)
        {
            switch (words[i])
            {
                case var idle when isIdle(idle):
                case Work { Takes: 0 }:
                case Chains or Skip or SlipOver or MarkCorner or RemoveCorners or ChangeYarn:
                    break;
                case Repeat repeat:
                    foreach (var word in Leaves(repeat.Words, isIdle)) yield return word;
                    break;
                default:
                    yield return words[i];
                    break;
            }
        }
    }

    // How many go into the first place each time; null of words that work otherwise.
    private static int? StitchesOf(Word word) => word switch
    {
        Work { Stitch: { IsOne: false, Form: { } form } } work => (form.Takes == 1 ? work.Makes : 1) * InFirst(form.Parts),
        Work work => work.Makes,
        Group group => group.Words.Sum(static inside => inside is Work { Takes: > 0 } work ? work.Amount.Count * StitchesOf(work) ?? 0 : 0),
        _ => null,
    };

    private static int InFirst(IReadOnlyList<StitchPart> parts)
    {
        var first = parts.First(static part => part.Worked is not null).Place;
        return parts.Sum(part => part.Worked is not null && part.Place == first ? part.Count : 0);
    }
}
