namespace Turnrow.Fabric.Words;

/// <summary>What the words of a row say of yarns.</summary>
public static class YarnWords
{
    /// <summary>True if a yarn is taken up within the words.</summary>
    public static bool Has(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word is ChangeYarn);

    /// <summary>The yarn that is taken up before anything else is done; null if the words go on with the one in the hand.</summary>
    public static string? First(IReadOnlyList<Word> words) =>
        (WordLists.First(words, static word => word is not Repeat, IsNothing) as ChangeYarn)?.Yarn;

    /// <summary>The yarn in the hand behind worked words; null if it is the one that they begin with.</summary>
    public static string? Last(IReadOnlyList<Word> worked)
    {
        for (var i = worked.Count - 1; i >= 0; i--)
        {
            if (worked[i] is ChangeYarn change) return change.Yarn;
            if (worked[i] is Repeat { Amount.Times: > 0 } repeat && Last(repeat.WorkedWays[^1].Words) is { } last) return last;
        }

        return null;
    }

    /// <summary>The words without the yarn that they begin with: that is the row's.</summary>
    internal static IReadOnlyList<Word> WithoutFirst(IReadOnlyList<Word> words)
    {
        var at = 0;
        while (at < words.Count && IsNothing(words[at])) at++;
        return at < words.Count && words[at] is ChangeYarn ? [.. words.Take(at), .. words.Skip(at + 1)] : words;
    }

    // What no yarn is worked by: the row begins behind it.
    private static bool IsNothing(Word word) =>
        word is Skip or SlipOver or RemoveCorners or Work { Amount: { Reach: Reach.Fixed, Times: 0 } } or Repeat { Amount: { Reach: Reach.Fixed, Times: 0 } };

    /// <summary>
    /// Hands over each word that works something, with its yarn and how often it is worked, in order. A repeat that ends with another yarn than it
    /// began with is two: its first time, and the others.
    /// </summary>
    /// <param name="worked">The words.</param>
    /// <param name="yarn">The yarn that they begin with.</param>
    /// <param name="visit">Takes a yarn, a word and the times.</param>
    public static void Visit(IReadOnlyList<Word> worked, string yarn, Action<string, Word, long> visit) => Visit(worked, ref yarn, 1, visit);

    private static void Visit(IReadOnlyList<Word> worked, ref string yarn, long times, Action<string, Word, long> visit)
    {
        for (var i = 0; i < worked.Count; i++)
        {
            if (worked[i] is ChangeYarn change)
            {
                yarn = change.Yarn;
            }
            else if (worked[i] is not Repeat repeat)
            {
                visit(yarn, worked[i], times);
            }
            else
            {
                foreach (var way in repeat.WorkedWays)
                {
                    var began = yarn;
                    long often = way.Amount.Times;
                    if (often == 0) continue;
                    if (Last(way.Words) is not { } ends || ends == began || First(way.Words) is not null)
                    {
                        Visit(way.Words, ref yarn, times * often, visit);
                        continue;
                    }

                    Visit(way.Words, ref yarn, times, visit);
                    if (often > 1) Visit(way.Words, ref yarn, times * (often - 1), visit);
                }
            }
        }
    }

    /// <summary>
    /// Hands over each repeat that is worked more than once and begins with one yarn the first time and with another from the second on: it takes up
    /// a yarn behind its beginning and does not go back.
    /// </summary>
    /// <param name="worked">The words.</param>
    /// <param name="yarn">The yarn that they begin with.</param>
    /// <param name="visit">Takes the repeat, its first yarn and the one of the other times.</param>
    public static void VisitUnlike(IReadOnlyList<Word> worked, string yarn, Action<Repeat, string, string> visit)
    {
        for (var i = 0; i < worked.Count; i++)
        {
            if (worked[i] is ChangeYarn change) yarn = change.Yarn;
            if (worked[i] is not Repeat repeat || !Has(repeat.Words)) continue;
            var ways = repeat.WorkedWays;
            var (began, times, ends) = (yarn, 0L, (string?)null);
            for (var way = 0; way < ways.Count; way++)
            {
                if (ways[way].Amount.Times == 0) continue;
                VisitUnlike(ways[way].Words, yarn, visit);
                times += ways[way].Amount.Times;
                ends ??= Last(ways[way].Words);
                yarn = Last(ways[way].Words) ?? yarn;
            }

            if (times > 1 && ends is not null && ends != began && First(repeat.Words) is null) visit(repeat, began, ends);
        }
    }

    /// <summary>
    /// The same row with each yarn named behind what is worked with it. Read from the other end, it is then named before: that is how a row is
    /// mirrored.
    /// </summary>
    internal static List<Word> BehindTheirStitches(IReadOnlyList<Word> worked, string? yarn)
    {
        var result = new List<Word>(worked.Count + 2);
        Behind(worked, ref yarn, result);
        return result;
    }

    private static void Behind(IReadOnlyList<Word> worked, ref string? yarn, List<Word> result)
    {
        var open = false;
        for (var i = 0; i < worked.Count; i++)
        {
            switch (worked[i])
            {
                case ChangeYarn change:
                    if (open) Name(yarn, result);
                    (open, yarn) = (false, change.Yarn);
                    break;
                case Repeat { Amount.Times: > 0 } repeat when Has(repeat.Words):
                    if (open) Name(yarn, result);
                    open = false;
                    foreach (var way in repeat.WorkedWays) Again(way, ref yarn, result);
                    break;
                default:
                    open = true;
                    result.Add(worked[i]);
                    break;
            }
        }

        if (open) Name(yarn, result);
    }

    // The first time may begin with another yarn than the others: then it stands by itself.
    private static void Again(Repeat repeat, ref string? yarn, List<Word> result)
    {
        var times = repeat.Amount.Times;
        if (First(repeat.Words) is null && Last(repeat.Words) is { } ends && ends != yarn)
        {
            Behind(repeat.Words, ref yarn, result);
            times--;
        }

        if (times == 0) return;
        var inside = new List<Word>();
        Behind(repeat.Words, ref yarn, inside);
        result.Add(repeat with { Words = inside, Ways = [], Amount = times == repeat.Amount.Times ? repeat.Amount : Amount.Of(times) });
    }

    private static void Name(string? yarn, List<Word> result)
    {
        if (yarn is not null) result.Add(new ChangeYarn(yarn));
    }
}
