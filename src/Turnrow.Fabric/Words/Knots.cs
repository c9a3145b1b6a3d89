namespace Turnrow.Fabric.Words;

/// <summary>
/// What stands on the stitch before it and takes no place, as a picot does. Read from the other end it still stands on that stitch, which is then the
/// one that has to come before it; so here a worked row is laid out so that each is behind one stitch, or one bracket, of its own.
/// </summary>
internal static class Knots
{
    /// <summary>True for a word that stands on the stitch before it.</summary>
    public static bool Is(Word word) => word is Work { Takes: 0, Stitch.IsOne: true };

    /// <summary>True if such a word is somewhere among words, those in brackets left out.</summary>
    public static bool AreIn(IReadOnlyList<Word> words) => WordLists.Any(words, Is, static word => word is Group);

    /// <summary>The same row, with each stitch that bears one taken out of the run or the repeat around it.</summary>
    public static List<Word> LayOut(IReadOnlyList<Word> words)
    {
        var result = new List<Word>(words.Count);
        foreach (var word in words) Add(result, word);
        return result;
    }

    /// <summary>Index of the stitch or bracket that bears the word at <paramref name="index"/>; below 0 where that is no stitch, as behind chains.</summary>
    public static int BearerOf(List<Word> words, int index)
    {
        while (index >= 0 && Is(words[index])) index--;
        return index >= 0 && words[index] is Work { Amount.Times: > 0 } or Group ? index : -1;
    }

    private static void Add(List<Word> result, Word word)
    {
        switch (word)
        {
            // A, (picot, B) 5 times is A, picot, (B, picot) 4 times, B.
            case Repeat { Ways.Count: 0 } repeat when repeat.Words.Count > 1 && Is(repeat.Words[0]):
                Add(result, repeat.Words[0]);
                IReadOnlyList<Word> rest = [.. repeat.Words.Skip(1)];
                if (repeat.Amount.Times > 1) Add(result, repeat with { Words = [.. rest, repeat.Words[0]], Amount = Amount.Of(repeat.Amount.Times - 1) });
                foreach (var one in rest) Add(result, one);
                break;
            case var knot when Is(knot):
                TakeOut(result);
                result.Add(knot);
                break;
            default:
                result.Add(word);
                break;
        }
    }

    private static void TakeOut(List<Word> result)
    {
        if (result.Count == 0) return;
        switch (result[^1])
        {
            case Repeat { Ways.Count: 0 } repeat:
                result.RemoveAt(result.Count - 1);
                if (repeat.Amount.Times > 1) result.Add(repeat with { Amount = Amount.Of(repeat.Amount.Times - 1) });
                foreach (var word in repeat.Words) Add(result, word);
                TakeOut(result);
                break;
            case Work { Target.Aim: Aim.Next or Aim.Same or Aim.Ring, Amount.Times: > 1 and var times, Takes: > 0 } run:
                result[^1] = run with { Amount = Amount.Of(times - 1), Corners = 0 };
                result.Add(run with { Amount = Amount.Once, Corners = 0 });
                TakeOut(result);
                break;
            // On the second of two in one place: that one joins the first there.
            case Work { Takes: 1, Makes: > 1 and var makes, Target.Aim: Aim.Next, Amount.Times: 1, Stitch.IsOne: true } several:
                result[^1] = several with { Makes = makes - 1 };
                result.Add(several with { Makes = 1, Target = new Target(Aim.Same, PlaceFilter.AnyStitch), Corners = 0 });
                break;
        }
    }
}
