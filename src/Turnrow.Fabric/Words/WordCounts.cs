namespace Turnrow.Fabric.Words;

/// <summary>What words of a worked row use up and make: the lines of a ledger.</summary>
public static class WordCounts
{
    /// <summary>Places that a word uses up, those passed over included.</summary>
    public static int Takes(Word word) => word switch
    {
        Work { Target.Aim: Aim.Same or Aim.Ring } => 0,
        Work work => (work.Takes * work.Amount.Times) + work.Passed,
        Group { Target.Aim: Aim.Same or Aim.Ring } => 0,
        Group group => group.Times + group.Passed,
        Skip skip => skip.Count,
        SlipOver slip => slip.Count,
        Leave leave => leave.Count,
        Hold hold => hold.Count,
        Repeat { Ways.Count: > 0 } repeat => Sum(repeat.Ways, Takes),
        Repeat repeat => Sum(repeat.Words, Takes) * repeat.Amount.Times,
        _ => 0,
    };

    /// <summary>Stitches that a word makes.</summary>
    public static int Makes(Word word) => word switch
    {
        // What stands on the stitch before it is none that the next row could go into.
        Work { Stitch.IsOne: true, Takes: 0 } => 0,
        Work work => work.Makes * work.Amount.Times * work.Stitch.Stitches,
        Group group => Sum(group.Words, Makes) * group.Times,
        Repeat { Ways.Count: > 0 } repeat => Sum(repeat.Ways, Makes),
        Repeat repeat => Sum(repeat.Words, Makes) * repeat.Amount.Times,
        _ => 0,
    };

    private static int Sum(IReadOnlyList<Word> words, Func<Word, int> count)
    {
        var sum = 0;
        for (var i = 0; i < words.Count; i++) sum += count(words[i]);
        return sum;
    }
}
