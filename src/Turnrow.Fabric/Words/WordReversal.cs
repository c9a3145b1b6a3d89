namespace Turnrow.Fabric.Words;

/// <summary>A worked row read from its other end, for a mirrored piece: beginnings become ends.</summary>
internal static class WordReversal
{
    /// <summary>The words in reverse, with every number as it was worked.</summary>
    public static IReadOnlyList<Word> Reverse(IReadOnlyList<Word> worked)
    {
        var result = new List<Word>(worked.Count);
        var before = WordCounts.Takes(worked);
        for (var i = worked.Count - 1; i >= 0; i--)
        {
            before -= WordCounts.Takes(worked[i]);

            // Words "in the same place" belong to the word before them: together they are one group in one place.
            var together = new List<Word>();
            while (i > 0 && IsInSame(worked[i]))
            {
                together.Add(worked[i--]);
                before -= WordCounts.Takes(worked[i]);
            }

            if (together.Count == 0) AddReversed(result, worked[i], before);
            else AddTogether(result, worked[i], together);
        }

        KeepOpenReach(worked, result);
        return result;
    }

    // What went "across" or "until 5 remain" still does, from the other end: so it reads as the original does.
    private static void KeepOpenReach(IReadOnlyList<Word> worked, List<Word> reversed)
    {
        var open = 0;
        foreach (var word in worked) open += IsOpen(word) ? 1 : 0;
        if (open != 1 || reversed.Count != worked.Count) return;
        var after = 0;
        for (var i = reversed.Count - 1; i >= 0; i--)
        {
            if (IsOpen(worked[reversed.Count - 1 - i]))
            {
                var reach = after == 0 ? Amount.Across : Amount.Until(after);
                reversed[i] = reversed[i] switch
                {
                    Work work => work with { Amount = reach },
                    Repeat repeat => repeat with { Amount = reach },
                    var other => other,
                };
                return;
            }

            after += WordCounts.Takes(reversed[i]);
        }
    }

    private static bool IsOpen(Word word) =>
        word is Work { Amount.Reach: not Reach.Fixed, Target.Aim: Aim.Next } or Repeat { Amount.Reach: not Reach.Fixed, Ways.Count: 0 };

    private static bool IsInSame(Word word) =>
        word is Work { Target.Aim: Aim.Same } or Group { Target.Aim: Aim.Same };

    private static void AddTogether(List<Word> result, Word first, List<Word> others)
    {
        // Last worked comes first, in the place that the first one went to.
        for (var i = 0; i < others.Count; i++)
        {
            result.Add(i == 0 ? WithAim(others[i], Target.Next) : others[i]);
        }

        result.Add(WithAim(first, new Target(Aim.Same, PlaceFilter.AnyStitch)));
    }

    private static Word WithAim(Word word, Target target) => word switch
    {
        Work work => work with { Target = target, Amount = Amount.Of(work.Amount.Times), Passed = 0, PassedBefore = 0 },
        Group group => group with { Target = target, Passed = 0, PassedBefore = 0, Words = Reverse(group.Words) },
        _ => word,
    };

    private static void AddReversed(List<Word> result, Word word, int before)
    {
        switch (word)
        {
            case Work work:
                result.Add(work with { Amount = Fixed(work.Amount), Target = Turned(work.Target, before + work.PassedBefore), Passed = 0, PassedBefore = 0 });
                if (work.PassedBefore > 0) result.Add(new Skip(work.PassedBefore) { Origin = work.Origin });
                break;
            case Group group:
                result.Add(group with { Words = Reverse(group.Words), Target = Turned(group.Target, before + group.PassedBefore), Passed = 0, PassedBefore = 0 });
                if (group.PassedBefore > 0) result.Add(new Skip(group.PassedBefore) { Origin = group.Origin });
                break;
            case Repeat { Ways.Count: > 0 } repeat:
                for (var i = repeat.Ways.Count - 1; i >= 0; i--) AddReversed(result, repeat.Ways[i], before);
                break;
            case Repeat repeat:
                if (repeat.Amount.Times > 0) result.Add(repeat with { Words = Reverse(repeat.Words), Amount = Fixed(repeat.Amount) });
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

    private static Amount Fixed(Amount amount) => Amount.Of(amount.Times);

    // The nth place from one end is not the next one from the other: aims become plain places, which the skips put right.
    // "In each" goes on as far as there was something before it.
    private static Target Turned(Target target, int before) => target.Aim switch
    {
        Aim.First => target with { Aim = Aim.Last },
        Aim.Last => target with { Aim = Aim.First },
        Aim.EachOfKind => target with { Remain = before },
        _ => target,
    };
}
