namespace Turnrow.Fabric.Words;

/// <summary>
/// What is worked "in same" belongs to the place before it, and that place may be the last of a run, of a repeat or of the time before.
/// Here a worked row is laid out so that the word which went to the place stands in the same list, straight before what joined it there.
/// </summary>
internal static class SamePlaces
{
    /// <summary>The same row, with each place that was gone back to taken out of the repeats around it.</summary>
    public static List<Word> LayOut(IReadOnlyList<Word> worked)
    {
        var result = new List<Word>(worked.Count);
        foreach (var word in AsWorked(worked)) Add(result, word);
        return result;
    }

    // Without what was worked no times, brackets included: "in each sp" where there was none ahead may meet some from the other end.
    private static IEnumerable<Word> AsWorked(IReadOnlyList<Word> words)
    {
        foreach (var word in words)
        {
            switch (word)
            {
                case Repeat { Amount.Times: 0 } or Group { Times: 0 } or Work { Target.Aim: Aim.EachOfKind, Amount.Times: 0 }:
                    break;
                case Repeat { Ways.Count: > 0 } repeat:
                    foreach (var way in AsWorked(repeat.Ways)) yield return way;
                    break;
                case Repeat repeat:
                    if (AsWorked(repeat.Words).ToList() is { Count: > 0 } inner) yield return repeat with { Words = inner };
                    break;
                default:
                    yield return word;
                    break;
            }
        }
    }

    /// <summary>True if a word works stitches and stays in the place that was worked last.</summary>
    public static bool Stays(Word word) => word switch
    {
        Work { Target.Aim: Aim.Same, Takes: > 0 } or Group { Target.Aim: Aim.Same } => true,
        Repeat repeat => AllStay(repeat.Words),
        _ => false,
    };

    // Each word is asked once: brackets in brackets would double the work at every level.
    private static bool AllStay(IReadOnlyList<Word> words)
    {
        var any = false;
        for (var i = 0; i < words.Count; i++)
        {
            if (Stays(words[i])) any = true;
            else if (!GoesNowhere(words[i])) return false;
        }

        return any;
    }

    /// <summary>Index of the word that went to the place where the word at <paramref name="index"/> stays; below 0 if it went nowhere.</summary>
    public static int PlaceOf(List<Word> words, int index)
    {
        while (index >= 0 && (Stays(words[index]) || GoesNowhere(words[index]))) index--;
        return index;
    }

    /// <summary>
    /// True if words of a worked row stay in the place where a decrease ended: from the other end it would have to begin in a place that others are in.
    /// </summary>
    public static bool JoinDecrease(IReadOnlyList<Word> worked)
    {
        if (!AnyStays(worked)) return false;
        var words = LayOut(worked);
        for (var i = 0; i < words.Count; i++)
        {
            if (Stays(words[i]) && PlaceOf(words, i) is >= 0 and var at && words[at] is Work { Takes: > 1 }) return true;
            if (words[i] is Repeat repeat && !Stays(repeat) && JoinDecrease(repeat.Words)) return true;
        }

        return false;
    }

    private static bool AnyStays(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word is not Repeat && Stays(word));

    /// <summary>True if a word works no stitch: what is passed over is not the place that was worked last.</summary>
    public static bool GoesNowhere(Word word) => word is Chains or Skip or SlipOver or MarkCorner or RemoveCorners or ChangeYarn or Work { Amount.Times: 0 } || Knots.Is(word);

    private static void Add(List<Word> result, Word word)
    {
        switch (word)
        {
            case Repeat repeat when !Stays(repeat) && GoesBack(repeat.Words, out var leading):
                AddRotated(result, repeat, leading);
                break;
            default:
                if (Stays(word)) TakeOut(result);
                result.Add(word);
                break;
        }
    }

    // How many words at the beginning stay where the time before ended.
    private static bool GoesBack(IReadOnlyList<Word> words, out int leading)
    {
        leading = 0;
        for (var i = 0; i < words.Count && (Stays(words[i]) || GoesNowhere(words[i])); i++)
        {
            if (Stays(words[i])) leading = i + 1;
        }

        return leading > 0;
    }

    // A, (B, C) 5 times is A, B, (C, B) 4 times, C.
    private static void AddRotated(List<Word> result, Repeat repeat, int leading)
    {
        var (back, on) = (repeat.Words.Take(leading).ToList(), repeat.Words.Skip(leading).ToList());
        foreach (var word in back) Add(result, word);
        if (repeat.Amount.Times > 1) result.Add(repeat with { Words = [.. on, .. back], Amount = Amount.Of(repeat.Amount.Times - 1) });
        foreach (var word in on) Add(result, word);
    }

    // The place is the last one of a repeat: its last time stands by itself.
    private static void TakeOut(List<Word> result)
    {
        while (PlaceOf(result, result.Count - 1) is >= 0 and var at && result[at] is Repeat repeat)
        {
            var after = result.GetRange(at + 1, result.Count - at - 1);
            result.RemoveRange(at, result.Count - at);
            if (repeat.Amount.Times > 1) result.Add(repeat with { Amount = Amount.Of(repeat.Amount.Times - 1) });
            foreach (var word in repeat.Words) Add(result, word);
            result.AddRange(after);
        }
    }
}
