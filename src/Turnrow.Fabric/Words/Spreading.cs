namespace Turnrow.Fabric.Words;

/// <summary>
/// Words spread evenly over plain stitches, balanced: half a gap at each end, or what was asked for there; the gaps between differ by one
/// stitch at most, and the longer ones lie in the middle, so that the row is the same from both ends and can be said in a few words. Where there are more
/// words than plain stitches, it is those that are spread: single plain stitches between groups of the words.
/// </summary>
internal static class Spreading
{
    /// <summary>The words for a spread over so many places; null if it does not fit.</summary>
    /// <param name="spread">What is spread.</param>
    /// <param name="places">The places.</param>
    /// <param name="isRound">
    /// True if it goes all round: then there are no ends to be alike, and each part ends in what is spread, as print has it. "Calculating where to
    /// place the increases", woolpackyarn.com: 51 and 4 more are 13, 13, 13 and 12 in the round, and half a gap at each end in rows.
    /// </param>
    public static IReadOnlyList<Word>? Over(Spread spread, int places, bool isRound = false)
    {
        if (isRound && spread is { AtEachEnd: null, Shifted: false, Times: > 0 }) return Round(spread, places);
        if (spread.Times == 0) return [Plain(spread, places)];
        var between = spread.Times - 1;
        var ends = 2 * (long)(spread.AtEachEnd ?? 0);
        var plain = places - ((long)spread.Times * spread.Takes) - ends;
        // One alone has no gap that could take up what is left.
        if (plain < 0 || (spread.AtEachEnd is not null && between == 0 && plain > 0)) return null;
        var gaps = spread.AtEachEnd is null ? spread.Times : Math.Max(1, between);
        var gap = (int)(plain / gaps);
        var longer = (int)(plain % gaps);
        if (gap == 0 && between > longer && spread.StandsApart) return null;
        if (gap == 0 && plain > 0 && between > longer) return Grouped(spread, (int)plain, spread.Shifted);
        // Gaps that are all alike are one run of them, to be said once.
        var before = longer == 0 ? between : (between - longer) / 2;
        var words = new List<Word>();
        AddPlain(words, spread, spread.AtEachEnd ?? (spread.Shifted ? gap : gap / 2));
        AddGaps(words, spread, gap, before);
        AddGaps(words, spread, gap + 1, longer);
        AddGaps(words, spread, gap, between - longer - before);
        words.AddRange(spread.Words.Select(w => w with { Origin = spread.Origin }));
        AddPlain(words, spread, spread.AtEachEnd ?? (spread.Shifted ? 0 : gap - (gap / 2)));
        // In each of all places: said so, not counted.
        if (spread is { Over.Reach: Reach.Across, Times: > 1 } && words is [Work { Target.Aim: Aim.Next } all]) words[0] = all with { Amount = Amount.Across };
        return words;
    }

    private static List<Word>? Round(Spread spread, int places)
    {
        var plain = places - ((long)spread.Times * spread.Takes);
        var (gap, longer) = ((int)(plain / spread.Times), (int)(plain % spread.Times));
        if (plain < 0 || (gap == 0 && spread.Times > longer && spread.Times > 1 && spread.StandsApart)) return null;
        if (gap == 0 && plain > 0) return Grouped(spread, (int)plain, !spread.Shifted);
        var words = new List<Word>();
        AddParts(words, spread, gap + 1, longer);
        AddParts(words, spread, gap, spread.Times - longer);
        // In each of all places: said so, not counted.
        if (spread is { Over.Reach: Reach.Across, Times: > 1 } && words is [Work { Target.Aim: Aim.Next } all]) words[0] = all with { Amount = Amount.Across };
        return words;
    }

    // Single plain stitches among more words than there are of them, each behind a group: 60 and 40 more are 2 in each of 2 and 1 in the next, 20 times. In a
    // row half a group, or what was asked for, stands at each end.
    private static List<Word> Grouped(Spread spread, int plain, bool whole)
    {
        var words = new List<Word>();
        AddPlain(words, spread, spread.AtEachEnd ?? 0);
        if (spread.AtEachEnd is { } ends)
        {
            var (each, more) = (spread.Times / (plain + 1), spread.Times % (plain + 1));
            var first = more == 0 ? plain : (plain - more) / 2;
            AddGroups(words, spread, each, first);
            AddGroups(words, spread, each + 1, more);
            AddGroups(words, spread, each, plain - more - first);
            words.AddRange(Group(spread, each));
            AddPlain(words, spread, ends);
            return words;
        }

        var (group, longer) = (spread.Times / plain, spread.Times % plain);
        var atStart = whole ? 0 : group - (group / 2);
        // The first plain stitch stands behind what is at the start.
        if (!whole)
        {
            words.AddRange(Group(spread, atStart));
            AddPlain(words, spread, 1);
        }

        var inner = whole ? plain : plain - 1;
        var before = whole ? 0 : longer == 0 ? inner : (inner - longer) / 2;
        AddGroups(words, spread, group, before);
        AddGroups(words, spread, group + 1, longer);
        AddGroups(words, spread, group, inner - longer - before);
        if (!whole) words.AddRange(Group(spread, group - atStart));
        return words;
    }

    private static void AddGroups(List<Word> words, Spread spread, int group, int times)
    {
        if (times <= 0) return;
        List<Word> body = [.. Group(spread, group)];
        AddPlain(body, spread, 1);
        Add(words, spread, body, times);
    }

    private static IEnumerable<Word> Group(Spread spread, int times)
    {
        if (times <= 0) return [];
        var words = spread.Words.Select(w => w with { Origin = spread.Origin }).ToList();
        if (times == 1) return words;
        return words is [Work { Amount: { Reach: Reach.Fixed, Times: 1 } } only] ? [only with { Amount = Amount.Of(times) }] : [new Repeat(words, Amount.Of(times)) { Origin = spread.Origin }];
    }

    private static void AddParts(List<Word> words, Spread spread, int gap, int times)
    {
        if (times <= 0) return;
        var body = new List<Word>();
        AddPlain(body, spread, gap);
        body.AddRange(spread.Words.Select(w => w with { Origin = spread.Origin }));
        Add(words, spread, body, times);
    }

    private static void Add(List<Word> words, Spread spread, List<Word> body, int times)
    {
        if (body is [Work { Amount.Times: 1 } only]) words.Add(only with { Amount = Amount.Of(times) });
        else if (times == 1) words.AddRange(body);
        else words.Add(new Repeat(body, Amount.Of(times)) { Origin = spread.Origin });
    }

    private static Work Plain(Spread spread, int count) => Work.Plain(spread.Stitch, Amount.Of(count)) with { Hook = spread.Hook, Origin = spread.Origin };

    private static void AddPlain(List<Word> words, Spread spread, int count)
    {
        if (count > 0) words.Add(Plain(spread, count));
    }

    private static void AddGaps(List<Word> words, Spread spread, int gap, int times)
    {
        if (times <= 0) return;
        var body = spread.Words.Select(w => w with { Origin = spread.Origin }).ToList();
        AddPlain(body, spread, gap);
        Add(words, spread, body, times);
    }
}
