using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>
/// Chains with nothing worked between them are one space, wherever they are written: the last of a bracket and the first of its next time too. Here a
/// worked row is laid out so that each space is one word, and everything that reads words can go on taking each for one place. A picot between them
/// parts the chains, since the next row can go before it or behind it; so does another yarn.
/// </summary>
internal sealed class ChainRuns
{
    private const int MostWords = 20_000;

    private int _words;

    private int _joins;

    /// <summary>The same row with such chains joined.</summary>
    /// <param name="worked">A worked row.</param>
    /// <param name="joined">Takes the row; null if there are none.</param>
    /// <returns>False if the row would have more words than can be laid out.</returns>
    public static bool TryJoin(IReadOnlyList<Word> worked, out IReadOnlyList<Word>? joined)
    {
        var runs = new ChainRuns();
        var laid = runs.Lay(worked);
        joined = runs._joins > 0 ? laid : null;
        return runs._words <= MostWords;
    }

    /// <summary>True if there are spaces among places with no stitch between them.</summary>
    public static bool AreIn(PlaceSequence places)
    {
        var before = false;
        for (var i = 0; i < places.Segments.Count; i++)
        {
            var (unit, times) = (places.Segments[i].Unit, places.Segments[i].Times);
            if (times > 1 && IsSpace(unit[0]) && IsSpace(unit[^1])) return true;
            for (var j = 0; j < unit.Count; j++)
            {
                var isSpace = IsSpace(unit[j]);
                if (isSpace && (before || unit[j].Count > 1)) return true;
                before = isSpace;
            }
        }

        return false;
    }

    private static bool IsSpace(PlaceRun run) => run.Place.Kind == PlaceKind.Space;

    private List<Word> Lay(IReadOnlyList<Word> words)
    {
        var result = new List<Word>(words.Count);
        for (var i = 0; i < words.Count; i++) Add(result, words[i]);
        return result;
    }

    private void Add(List<Word> result, Word word)
    {
        if (++_words > MostWords) return;
        switch (word)
        {
            case Chains chains when Trails(result):
                JoinLast(result, chains.Count);
                break;
            case Group { Times: > 0 } group:
                AddGroup(result, group with { Words = Lay(group.Words) });
                break;
            case Repeat { Ways.Count: > 0 } repeat when WordLists.Any(repeat.Ways, static word => word is Chains):
                AddWays(result, repeat);
                break;
            case Repeat { Amount.Times: > 0 } repeat when AllChains(repeat) is { } all:
                _joins++;
                Add(result, all);
                break;
            case Repeat { Amount.Times: > 0 } repeat:
                AddRepeat(result, repeat with { Words = Lay(repeat.Words) });
                break;
            default:
                result.Add(word);
                break;
        }
    }

    // Chains so many times are one space, however many times that is.
    private static Chains? AllChains(Repeat repeat)
    {
        var chains = 0L;
        for (var i = 0; i < repeat.Words.Count; i++)
        {
            if (repeat.Words[i] is not Chains some) return null;
            chains += some.Count;
        }

        chains *= repeat.Amount.Times;
        return chains is > 0 and <= int.MaxValue ? new Chains((int)chains) { Origin = repeat.Words[0].Origin } : null;
    }

    private void AddGroup(List<Word> result, Group group)
    {
        var goesOn = BeginsInChains(group) && Trails(result);
        var meetsItself = group.Times > 1 && BeginsInChains(group) && EndsInChains(group);
        if (!goesOn && !meetsItself)
        {
            result.Add(group);
        }
        else if (group.Times > 1)
        {
            var once = group with { Times = 1, Target = group.Target with { Aim = Aim.NextOfKind, Remain = 0, OverOthers = true } };
            AddRepeat(result, new Repeat([once], Amount.Of(group.Times)) { Origin = group.Origin });
        }
        else
        {
            JoinLast(result, ((Chains)group.Words[0]).Count);
            result.Add(group with { Words = [.. group.Words.Skip(1)] });
        }
    }

    private void AddWays(List<Word> result, Repeat repeat)
    {
        var before = _joins;
        var ways = new List<Word>();
        foreach (var way in WaysOf(repeat)) Add(ways, way);
        if (_joins > before || (Trails(result) && Leads(ways)))
        {
            foreach (var word in ways) Add(result, word);
        }
        else
        {
            result.Add(repeat);
        }
    }

    // (C, B) 5 times is C, (B, C) 4 times, B, if C ends in chains that B leads up to.
    private void AddRepeat(List<Word> result, Repeat repeat)
    {
        var times = repeat.Amount.Times;
        if (!Leads(repeat.Words) || (!Trails(result) && (times == 1 || !Trails(repeat.Words))))
        {
            result.Add(repeat);
            return;
        }

        var (before, rest) = PartedBehindChains(repeat.Words);
        foreach (var word in before) Add(result, word);
        if (times > 1) Add(result, repeat with { Words = [.. rest, .. before], Amount = Amount.Of(times - 1) });
        foreach (var word in rest) Add(result, word);
    }

    // The words up to the first chains, which come out of the brackets that they stand in, and what is behind.
    private static (List<Word> Before, List<Word> After) PartedBehindChains(IReadOnlyList<Word> words)
    {
        var rest = words.ToList();
        var at = 0;
        while (rest[at] is not Chains)
        {
            if (rest[at] is Repeat { Ways.Count: > 0 } several)
            {
                rest.RemoveAt(at);
                rest.InsertRange(at, WaysOf(several));
            }
            else if (rest[at] is Repeat { Amount.Times: > 0 } repeat)
            {
                rest.RemoveAt(at);
                if (repeat.Amount.Times > 1) rest.Insert(at, repeat with { Amount = Amount.Of(repeat.Amount.Times - 1) });
                rest.InsertRange(at, repeat.Words);
            }
            else if (rest[at] is Group { Times: 1 } group)
            {
                rest[at] = group with { Words = [.. group.Words.Skip(1)] };
                rest.Insert(at, group.Words[0]);
            }
            else
            {
                at++;
            }
        }

        return (rest[..(at + 1)], rest[(at + 1)..]);
    }

    // The chains that the words so far end in get so many more.
    private void JoinLast(List<Word> words, int count)
    {
        _joins++;
        while (LastMade(words) is >= 0 and var at)
        {
            if (words[at] is Chains chains)
            {
                words[at] = new Chains(chains.Count + count) { Origin = chains.Origin };
                return;
            }

            if (words[at] is Group group && group.Times == 1)
            {
                var inside = group.Words.ToList();
                JoinLast(inside, count);
                words[at] = group with { Words = inside };
                return;
            }

            LastTimeApart(words, at);
        }
    }

    private static IEnumerable<Repeat> WaysOf(Repeat repeat) => repeat.Ways.Select(way => way with { Amount = Amount.Of(way.Amount.Times), Origin = repeat.Origin });

    private static void LastTimeApart(List<Word> words, int at)
    {
        var last = words[at];
        words.RemoveAt(at);
        if (last is Repeat { Ways.Count: > 0 } several)
        {
            words.InsertRange(at, WaysOf(several));
        }
        else if (last is Repeat { Amount.Times: var times } repeat)
        {
            words.InsertRange(at, repeat.Words);
            if (times > 1) words.Insert(at, repeat with { Amount = Amount.Of(times - 1) });
        }
        else if (last is Group group)
        {
            var once = group with { Times = 1, Target = group.Target with { Aim = Aim.NextOfKind, Remain = 0, OverOthers = true } };
            words.Insert(at, once);
            words.Insert(at, group.Times == 2 ? once : new Repeat([once], Amount.Of(group.Times - 1)) { Origin = group.Origin });
        }
    }

    private static bool Leads(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (MakesNothing(words[i])) continue;
            return words[i] switch
            {
                Chains => true,
                Group { Times: 1 } group => BeginsInChains(group),
                Repeat { Ways.Count: > 0 } repeat => Leads(repeat.Ways),
                Repeat repeat => Leads(repeat.Words),
                _ => false,
            };
        }

        return false;
    }

    private static bool Trails(IReadOnlyList<Word> words) => LastMade(words) is >= 0 and var at && words[at] switch
    {
        Chains => true,
        Group group => EndsInChains(group),
        Repeat { Ways.Count: > 0 } repeat => Trails(repeat.Ways),
        Repeat repeat => Trails(repeat.Words),
        _ => false,
    };

    private static int LastMade(IReadOnlyList<Word> words)
    {
        var at = words.Count - 1;
        while (at >= 0 && MakesNothing(words[at])) at--;
        return at;
    }

    // Chains alone in a place leave nothing there: they stay as they are.
    private static bool BeginsInChains(Group group) => group.Words is [Chains, ..] && !IsOnlyChains(group);

    private static bool EndsInChains(Group group) => !IsOnlyChains(group) && LastMade(group.Words) is >= 0 and var at && group.Words[at] is Chains;

    private static bool IsOnlyChains(Group group) => group.Words.All(static word => word is Chains or MarkCorner);

    private static bool MakesNothing(Word word) => word is Skip or SlipOver or Leave or Hold or MarkCorner or RemoveCorners
        or Work { Amount.Times: 0 } or Repeat { Amount.Times: 0 } or Group { Times: 0 } || (word is Repeat repeat && MakeNothing(repeat.Ways.Count > 0 ? repeat.Ways : repeat.Words));

    private static bool MakeNothing(IReadOnlyList<Word> words) => words.All(MakesNothing);
}
