using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>
/// The beginning of a row's words. A chain stands for the first stitch, or it goes into a chain counted from the hook: so the first time of
/// a repeat is told by itself.
/// </summary>
internal static class Leading
{
    /// <summary>The words such that the first one, skips aside, is no repeat; words worked no times are left out, and so is what is said of markers and of the yarn that the row begins with.</summary>
    public static List<Word> Unrolled(IReadOnlyList<Word> words)
    {
        var rest = words.ToList();
        var at = 0;
        while (at < rest.Count)
        {
            switch (rest[at])
            {
                case Work { Amount.Times: 0 } or Group { Times: 0 } or Repeat { Amount.Times: 0 } or Skip { Count: 0 } or RemoveCorners or ChangeYarn:
                    rest.RemoveAt(at);
                    continue;
                case Repeat repeat:
                    rest.RemoveAt(at);
                    rest.InsertRange(at, OnceAndTheRest(repeat));
                    continue;
                case Skip or Completed:
                    at++;
                    continue;
                default:
                    return rest;
            }
        }

        return rest;
    }

    /// <summary>The first word that works or chains something; null for none.</summary>
    public static Word? First(IReadOnlyList<Word> words) => Unrolled(words).Find(static w => w is not (Skip or Completed));

    private static IEnumerable<Word> OnceAndTheRest(Repeat repeat)
    {
        var ways = repeat.WorkedWays.Where(static way => way.Amount.Times > 0).ToList();
        if (ways.Count == 0) yield break;
        foreach (var word in ways[0].Words) yield return word;
        var times = ways[0].Amount.Times - 1;
        if (times > 0) ways[0] = ways[0] with { Amount = Amount.Of(times) };
        else ways.RemoveAt(0);
        if (ways.Count > 0) yield return new Repeat(ways[0].Words, Amount.Of(ways.Sum(static way => way.Amount.Times))) { Ways = ways };
    }
}
