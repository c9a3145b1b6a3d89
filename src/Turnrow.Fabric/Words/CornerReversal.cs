namespace Turnrow.Fabric.Words;

/// <summary>
/// A row with corners read from its other end. A marker follows the stitch that it goes into, and what went up to a corner from one side
/// goes up to the one before it from the other; so both are said anew, and what then comes again is a repeat once more.
/// </summary>
internal static class CornerReversal
{
    private const int MostLaidOut = 64;
    private const int LongestRound = 4;

    /// <summary>True if words place or meet corners.</summary>
    public static bool Has(IReadOnlyList<Word> words) =>
        WordLists.Any(words, static word => word is MarkCorner || CornersOf(word) > 0 || word.Reach == Reach.ToCorner || word.GoesTo is { ToCorner: true });

    /// <summary>Repeats with corners laid out, if they are few, so that each stretch between two corners stands by itself.</summary>
    public static List<Word> LaidOut(List<Word> words)
    {
        var result = new List<Word>(words.Count);
        foreach (var word in words)
        {
            if (word is not Repeat repeat || !Has(repeat.Words) || (long)repeat.Words.Count * repeat.Amount.Times > MostLaidOut)
            {
                result.Add(word);
                continue;
            }

            var inside = LaidOut(SamePlaces.LayOut(repeat.Words));
            for (var i = 0; i < repeat.Amount.Times; i++) result.AddRange(inside);
        }

        return result;
    }

    /// <summary>The reach that a reversed word keeps until it is settled; what was a number stays one.</summary>
    public static Amount Kept(Work work) =>
        work is { Takes: 1, Target.Aim: Aim.Next, Amount.Reach: not Reach.Fixed }
            ? work.Amount with { Reach = Reach.ToCorner, Count = 0 }
            : Amount.Of(work.Amount.Times);

    /// <summary>The reversed words with each marker behind its stitch and each reach said from this end.</summary>
    /// <param name="reversed">The words.</param>
    /// <param name="within">What they are all the words of.</param>
    public static List<Word> Settle(List<Word> reversed, Within within)
    {
        var wholeRow = within == Within.Row;
        var words = new List<Word>(reversed.Count);
        for (var i = 0; i < reversed.Count; i++)
        {
            if (reversed[i] is Work { Target.ToCorner: true } or Group { Target.ToCorner: true }) words.AddRange(WordReversal.EachOf(reversed[i], i + 1 < reversed.Count ? reversed[i + 1] : null));
            else words.Add(reversed[i] is Work { Amount.Reach: Reach.ToCorner } work ? work with { Amount = ReachOf(reversed, i, work, wholeRow) } : reversed[i]);
        }

        for (var i = 0; i < words.Count; i++) words[i] = Unworked(words[i]);
        PlaceMarkers(words, within);
        return wholeRow ? Folded(words) : words;
    }

    private static int CornersOf(Word word) => word is Work work ? work.Corners : word is Group group ? group.Corners : 0;

    private static Amount ReachOf(List<Word> words, int index, Work work, bool wholeRow)
    {
        var number = Amount.Of(work.Amount.Times);
        var between = 0;
        for (var i = index + 1; i < words.Count; i++)
        {
            if (CornersOf(words[i]) > 0)
            {
                if (work.Corners > 0) return number;
                if (Corners.IsIn(words[i])) return Amount.ToCorner(between);
                return words[i] is Work { Takes: > 1, Amount.Times: 1 } together ? Amount.ToCorner(between + (together.Takes / 2)) : number;
            }

            if (words[i] is RemoveCorners or Repeat or Skip or Work { Target.Aim: Aim.EachOfKind or Aim.NextOfKind }) return number;
            between += WordCounts.Takes(words[i]);
        }

        if (!wholeRow) return number;
        return between == 0 ? Amount.Across : Amount.Until(between);
    }

    // What is known of a word once it is worked is found out anew.
    private static Word Unworked(Word word) => word switch
    {
        Work { Corners: > 0 } work => work with { Corners = 0 },
        Group { Corners: > 0 } group => group with { Corners = 0 },
        _ => word,
    };

    // Read from the other end, a marker stands before its stitch, which is the first one that comes.
    private static void PlaceMarkers(List<Word> words, Within within)
    {
        for (var i = words.Count - 2; i >= 0; i--)
        {
            if (words[i] is not MarkCorner mark) continue;
            words.RemoveAt(i);
            PutBehindFirst(words, i, mark, within);
        }
    }

    private static void PutBehindFirst(List<Word> words, int at, MarkCorner mark, Within within)
    {
        while (at < words.Count)
        {
            switch (words[at])
            {
                case Work { Amount: { Reach: Reach.Fixed, Times: 0 } } or Skip or MarkCorner or RemoveCorners or ChangeYarn:
                    at++;
                    continue;
                case Repeat { Amount.Times: 0 }:
                    words.RemoveAt(at);
                    continue;
                case Repeat repeat:
                    words.RemoveAt(at);
                    if (repeat.Amount.Times > 1) words.Insert(at, repeat with { Amount = Amount.Of(repeat.Amount.Times - 1) });
                    words.InsertRange(at, repeat.Words);
                    continue;
                case Work { Makes: > 1 } work when within == Within.OnePlace:
                    words.RemoveAt(at);
                    words.InsertRange(at, OneThenTheRest(work, mark));
                    return;
                case Work { Makes: > 1 } work:
                    words[at] = new Group(OneThenTheRest(work, mark), work.Target) { Origin = work.Origin };
                    AddRest(words, at + 1, work);
                    return;
                case Work work:
                    words[at] = work with { Amount = Amount.Once };
                    words.Insert(at + 1, mark);
                    AddRest(words, at + 2, work);
                    return;
                case Group group:
                    var inside = group.Words.ToList();
                    PutBehindFirst(inside, 0, mark, Within.OnePlace);
                    words[at] = group with { Words = inside };
                    return;
                default:
                    words.Insert(at + 1, mark);
                    return;
            }
        }

        words.Add(mark);
    }

    private static List<Word> OneThenTheRest(Work work, MarkCorner mark)
    {
        var one = Work.Plain(work.Stitch, Amount.Once) with { Hook = work.Hook, Origin = work.Origin };
        return [one, mark, one with { Makes = work.Makes - 1 }];
    }

    private static void AddRest(List<Word> words, int at, Work work)
    {
        if (work.Amount.Reach != Reach.Fixed) words.Insert(at, work);
        else if (work.Amount.Times > 1) words.Insert(at, work with { Amount = Amount.Of(work.Amount.Times - 1) });
    }

    // Words that come again, one round behind the other, as a repeat.
    private static List<Word> Folded(List<Word> words)
    {
        var result = new List<Word>(words.Count);
        for (var i = 0; i < words.Count;)
        {
            var (length, times) = RoundAt(words, i);
            if (times > 1) result.Add(new Repeat(words.GetRange(i, length), Amount.Of(times)) { Origin = words[i].Origin });
            else result.AddRange(words.GetRange(i, length));
            i += length * times;
        }

        return result;
    }

    private static (int Length, int Times) RoundAt(List<Word> words, int start)
    {
        for (var length = 1; length <= LongestRound && start + (2 * length) <= words.Count; length++)
        {
            if (!words.GetRange(start, length).Exists(Corners.IsIn)) continue;
            var times = 1;
            while (start + ((times + 1) * length) <= words.Count && IsAgain(words, start, length, times)) times++;
            if (times > 1) return (length, times);
        }

        return (1, 1);
    }

    private static bool IsAgain(List<Word> words, int start, int length, int times)
    {
        for (var i = 0; i < length; i++)
        {
            if (!words[start + i].Equals(words[start + (times * length) + i])) return false;
        }

        return true;
    }
}
