namespace Turnrow.Fabric.Words;

/// <summary>
/// Increases or decreases spread evenly over a row, balanced: half a gap at each end, the gaps between differ by one stitch at most,
/// and the longer ones lie in the middle, so that the row is the same from both ends and can be said in a few words.
/// </summary>
internal static class Spreading
{
    /// <summary>The words for a spread over so many places; null if it does not fit.</summary>
    public static IReadOnlyList<Word>? Over(Spread spread, int places)
    {
        var changes = Math.Abs(spread.Change);
        if (changes == 0) return [Work.Plain(spread.Stitch, Amount.Of(places)) with { Origin = spread.Origin }];
        var plain = places - ((long)changes * (spread.Change > 0 ? 1 : 2));
        if (plain < 0) return null;
        var gap = (int)(plain / changes);
        var longer = (int)(plain % changes);
        var change = spread.Change > 0 ? Work.Increase(spread.Stitch, 1) : Work.Decrease(spread.Stitch, 1);
        var between = changes - 1;
        // Gaps that are all alike are one run of them, to be said once.
        var before = longer == 0 ? between : (between - longer) / 2;
        var words = new List<Word>();
        AddPlain(words, spread, gap / 2);
        AddGaps(words, spread, change, gap, before);
        AddGaps(words, spread, change, gap + 1, longer);
        AddGaps(words, spread, change, gap, between - longer - before);
        words.Add(change with { Origin = spread.Origin });
        AddPlain(words, spread, gap - (gap / 2));
        return words;
    }

    private static void AddPlain(List<Word> words, Spread spread, int count)
    {
        if (count > 0) words.Add(Work.Plain(spread.Stitch, Amount.Of(count)) with { Origin = spread.Origin });
    }

    private static void AddGaps(List<Word> words, Spread spread, Work change, int gap, int times)
    {
        if (times <= 0) return;
        List<Word> body = [change with { Origin = spread.Origin }];
        AddPlain(body, spread, gap);
        if (gap == 0) words.Add(change with { Amount = Amount.Of(times), Origin = spread.Origin });
        else if (times == 1) words.AddRange(body);
        else words.Add(new Repeat(body, Amount.Of(times)) { Origin = spread.Origin });
    }
}
