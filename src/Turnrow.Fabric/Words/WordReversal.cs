namespace Turnrow.Fabric.Words;

/// <summary>A worked row read from its other end, for a mirrored piece: beginnings become ends.</summary>
internal static class WordReversal
{
    private const int NotKnown = -1;

    /// <summary>The words in reverse, with every number as it was worked.</summary>
    /// <param name="worked">The words.</param>
    /// <param name="yarn">The yarn that they begin with.</param>
    public static IReadOnlyList<Word> Reverse(IReadOnlyList<Word> worked, string? yarn = null) =>
        Reverse(YarnWords.Has(worked) ? YarnWords.BehindTheirStitches(worked, yarn) : worked, 0, Within.Row);

    // before: the places that what stands before these words takes; null in a repeat, where that is not the same each time.
    private static List<Word> Reverse(IReadOnlyList<Word> worked, int? before, Within within)
    {
        var words = SamePlaces.LayOut(worked);
        if (Knots.AreIn(words)) words = Knots.LayOut(words);
        var corners = CornerReversal.Has(words);
        if (corners) words = CornerReversal.LaidOut(words);
        var open = corners ? -1 : OnlyOpen(words);
        var result = new List<Word>(words.Count);
        for (var i = words.Count - 1; i >= 0; i--)
        {
            // What stands on a stitch comes behind it from either end.
            var knots = new List<Word>();
            if (Knots.Is(words[i]) && Knots.BearerOf(words, i) is >= 0 and var bearer && !IsJoined(words, bearer))
            {
                knots.AddRange(words.Skip(bearer + 1).Take(i - bearer));
                i = bearer;
            }

            if (JoinedKnot(words, i) is >= 0 and var joined && SamePlaces.PlaceOf(words, joined) is >= 0 and var place)
            {
                AddOnePlace(result, words, place, i, before);
                i = place;
                continue;
            }

            if (SamePlaces.Stays(words[i]) && SamePlaces.PlaceOf(words, i) is >= 0 and var at)
            {
                AddOnePlace(result, words, at, i, before);
                i = at;
                continue;
            }

            var from = result.Count;
            AddReversed(result, words[i], before + TakenBefore(words, i));
            if (knots.Count > 0) result.InsertRange(from + 1, knots);
            if (i == open) result[from] = WithReach(result[from], words, i);
            else if (corners && words[i] is Work work && result[from] is Work turned) result[from] = turned with { Amount = CornerReversal.Kept(work) };
        }

        return corners ? CornerReversal.Settle(result, within) : result;
    }

    // What went "across" or "until 5 remain" still does, from the other end: so it reads as the original does.
    private static Word WithReach(Word word, List<Word> words, int index)
    {
        var before = TakenBefore(words, index);
        var reach = before == 0 ? Amount.Across : Amount.Until(before);
        return word switch
        {
            Work work => work with { Amount = reach },
            Repeat repeat => repeat with { Amount = reach },
            _ => word,
        };
    }

    private static int OnlyOpen(List<Word> words)
    {
        var only = words.FindIndex(IsOpen);
        return only >= 0 && words.FindLastIndex(IsOpen) == only ? only : -1;
    }

    private static bool IsOpen(Word word) =>
        word is Work { Amount.Reach: not Reach.Fixed, Target.Aim: Aim.Next } or Repeat { Amount.Reach: not Reach.Fixed };

    private static int TakenBefore(List<Word> words, int index)
    {
        var taken = 0;
        for (var i = 0; i < index; i++) taken += WordCounts.Takes(words[i]);
        return taken;
    }

    private static bool IsJoined(List<Word> words, int index) => SamePlaces.Stays(words[index]) && SamePlaces.PlaceOf(words, index) >= 0;

    // The stitch that went to a place where others are, and bears the word at an index; below 0 for none.
    private static int JoinedKnot(List<Word> words, int index) =>
        index >= 0 && Knots.Is(words[index]) && Knots.BearerOf(words, index) is >= 0 and var bearer && IsJoined(words, bearer) ? bearer : -1;

    // All that is worked in one place: what was worked last comes first and goes there, the others stay.
    private static void AddOnePlace(List<Word> result, List<Word> words, int at, int last, int? before)
    {
        var there = new List<Word>();
        var knots = new List<Word>();
        for (var i = last; i > at; i--)
        {
            if (Knots.Is(words[i]) && Knots.BearerOf(words, i) >= 0)
            {
                knots.Insert(0, words[i]);
                continue;
            }

            // What was passed over on the way lies behind the place; from the other end it comes before it.
            if (WordCounts.Takes(words[i]) is > 0 and var over) result.Add(new Skip(over) { Origin = words[i].Origin });
            if (words[i] is Skip or SlipOver) continue;
            there.Add(Staying(words[i]));
            there.AddRange(knots);
            knots.Clear();
        }

        var (once, others) = LastOf(words[at]);
        if (once is Work { Takes: > 1 })
        {
            // A decrease can't be finished where others are: it goes first, and they join it.
            AddReversed(result, once, null);
            result.AddRange(knots);
            result.AddRange(there);
        }
        else
        {
            GoTo(there, TargetOf(once));
            result.AddRange(there);
            result.Add(WithTarget(Staying(once), new Target(Aim.Same, PlaceFilter.AnyStitch)));
            result.AddRange(knots);
        }

        if (others is not null) AddReversed(result, others, before + TakenBefore(words, at));
        else AddSkip(result, once);
    }

    private static (Word Once, Word? Others) LastOf(Word word) => word switch
    {
        Work { Amount.Times: > 1 and var n } work => (work with { Amount = Amount.Once }, work with { Amount = Amount.Of(n - 1) }),
        Group { Times: > 1 and var n } group => (group with { Times = 1 }, group with { Times = n - 1 }),
        _ => (word, null),
    };

    private static Word Staying(Word word) => word switch
    {
        Work work => work with { Stitch = work.Stitch.Mirrored },
        Group group => group with { Words = Reverse(group.Words, null, Within.OnePlace) },
        Repeat repeat => repeat with { Words = [.. repeat.Words.Where(w => w is not Skip).Reverse().Select(Staying)], Amount = Fixed(repeat.Amount) },
        _ => word,
    };

    // The first of the words goes to the place; of a repeat, its first time.
    private static void GoTo(List<Word> there, Target target)
    {
        for (var i = 0; i < there.Count; i++)
        {
            if (there[i] is Repeat repeat)
            {
                there.RemoveAt(i);
                if (repeat.Amount.Times > 1) there.Insert(i, repeat with { Amount = Amount.Of(repeat.Amount.Times - 1) });
                there.InsertRange(i, repeat.Words);
            }

            if (there[i] is not (Work { Amount.Times: > 0 } or Group)) continue;
            there[i] = WithTarget(there[i], target);
            return;
        }
    }

    private static Target TargetOf(Word word) => word switch
    {
        Work work => TargetOfOne(work.Target),
        Group group => TargetOfOne(group.Target),
        _ => Target.Next,
    };

    private static Target TargetOfOne(Target target) => target.Aim == Aim.EachOfKind ? OneOf(Turned(target)) : Turned(target);

    private static Target OneOf(Target each) => new(Aim.NextOfKind, each.Filter, true);

    private static Word WithTarget(Word word, Target target) => word switch
    {
        Work work => work with { Target = target, Amount = Fixed(work.Amount), Passed = 0, PassedBefore = 0 },
        Group group => group with { Target = target, Passed = 0, PassedBefore = 0 },
        _ => word,
    };

    private static void AddReversed(List<Word> result, Word word, int? before)
    {
        switch (word)
        {
            // How far it goes from this end hangs on what comes behind it.
            case Work { Target.ToCorner: true } work:
                result.Add(work with { Stitch = work.Stitch.Mirrored, Amount = Fixed(work.Amount), Target = Turned(work.Target) with { Remain = before ?? NotKnown }, Passed = 0 });
                break;
            case Group { Target.ToCorner: true } group:
                result.Add(group with { Words = Reverse(group.Words, null, Within.OnePlace), Target = Turned(group.Target) with { Remain = before ?? NotKnown }, Passed = 0 });
                break;
            case Work work:
                result.Add(OfEach(work with { Stitch = work.Stitch.Mirrored, Amount = Fixed(work.Amount), Target = Turned(work.Target), Passed = 0, PassedBefore = 0 }, before + work.PassedBefore));
                AddSkip(result, work);
                break;
            case Group group:
                result.Add(OfEach(group with { Words = Reverse(group.Words, null, Within.OnePlace), Target = Turned(group.Target), Passed = 0, PassedBefore = 0 }, before + group.PassedBefore));
                AddSkip(result, group);
                break;
            case Repeat repeat:
                result.Add(repeat with { Words = Reverse(repeat.Words, before == 0 ? 0 : null, Within.Repeat), Amount = Fixed(repeat.Amount) });
                break;
            case SlipOver slip:
                result.Add(new Leave(slip.Count) { Origin = slip.Origin });
                break;
            case Leave leave:
                result.Add(new SlipOver(leave.Count) { Origin = leave.Origin });
                break;
            default:
                result.Add(word);
                break;
        }
    }

    // "In each sp" goes as far as it can. From the other end it stays away from what was worked before it; where that is not known, it is
    // so many.
    private static Word OfEach(Word word, int? before) => (word, before) switch
    {
        (Work { Target.Aim: Aim.EachOfKind } work, { } remain) => work with { Target = work.Target with { Remain = remain } },
        (Group { Target.Aim: Aim.EachOfKind } group, { } remain) => group with { Target = group.Target with { Remain = remain } },
        (Work { Target: { Aim: Aim.EachOfKind } target, Takes: 1 } work, null) =>
            new Repeat([work with { Target = OneOf(target), Amount = Amount.Once }], Fixed(work.Amount)) { Origin = work.Origin },
        (Group { Target: { Aim: Aim.EachOfKind } target } group, null) =>
            new Repeat([group with { Target = OneOf(target), Times = 1 }], Amount.Of(group.Times)) { Origin = group.Origin },
        _ => word,
    };

    /// <summary>What went into each of a kind up to a corner, from the other end: up to the corner that comes next, or so far as it went.</summary>
    internal static List<Word> EachOf(Word word, Word? next)
    {
        var (target, passed) = word is Work work ? (work.Target, work.PassedBefore) : (((Group)word).Target, ((Group)word).PassedBefore);
        if (next is Work { Target.Aim: Aim.Corner } or Group { Target.Aim: Aim.Corner }) return [With(word, target with { Remain = 0 })];
        int? remain = target.Remain == NotKnown ? null : target.Remain + passed;
        var result = new List<Word> { OfEach(With(word, target with { Remain = 0, ToCorner = false }), remain) };
        if (passed > 0) result.Add(new Skip(passed) { Origin = word.Origin });
        return result;
    }

    private static Word With(Word word, Target target) => word switch
    {
        Work work => work with { Target = target, PassedBefore = 0 },
        Group group => group with { Target = target, PassedBefore = 0 },
        _ => word,
    };

    private static void AddSkip(List<Word> result, Word word)
    {
        var before = word is Work work ? work.PassedBefore : word is Group group ? group.PassedBefore : 0;
        if (before > 0) result.Add(new Skip(before) { Origin = word.Origin });
    }

    private static Amount Fixed(Amount amount) => Amount.Of(amount.Times);

    // The nth place from one end is not the next one from the other: aims become plain places, which the skips put right.
    private static Target Turned(Target target) => target.Aim switch
    {
        Aim.NextOfKind or Aim.EachOfKind => target with { Filter = target.Filter.FromOtherEnd() },
        Aim.First => target with { Aim = Aim.Last },
        Aim.Last => target with { Aim = Aim.First },
        _ => target,
    };
}
