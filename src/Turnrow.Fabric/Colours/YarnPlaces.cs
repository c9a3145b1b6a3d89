using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Colours;

/// <summary>The yarn of a place that a row makes: read off its words, since no place knows it.</summary>
/// <param name="row">The row.</param>
public sealed class YarnPlaces(Row row)
{
    private readonly bool _changes = row.Work is { } work && YarnWords.Has(work.Words);

    /// <summary>The yarn of the place at an index, in working order; null where the pattern names none.</summary>
    public string? Of(int place)
    {
        if (!_changes || row.Yarn is not { } yarn) return row.Yarn;
        var left = (long)place;
        Find(row.Work!.Words, ref yarn, ref left);
        return yarn;
    }

    /// <summary>Places that a word of a worked row makes.</summary>
    public static int Made(Word word) => word switch
    {
        Work { Takes: 0, Stitch.IsOne: true } => 0,
        Work work => work.Makes * work.Amount.Times * work.Stitch.Tops.Count,
        Chains => 1,
        Bridge bridge => bridge.Count,
        Group group => group.Times * group.Words.Sum(Made),
        Repeat { Ways.Count: > 0 } repeat => repeat.Ways.Sum(Made),
        Repeat repeat => repeat.Words.Sum(Made) * repeat.Amount.Times,
        _ => 0,
    };

    // True once the place is among those that were passed.
    private static bool Find(IReadOnlyList<Word> words, ref string yarn, ref long left)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is ChangeYarn change) yarn = change.Yarn;
            else if (words[i] is Repeat repeat && YarnWords.Has(repeat.Words)) { if (FindInTimes(repeat, ref yarn, ref left)) return true; }
            else if ((left -= Made(words[i])) < 0) return true;
        }

        return false;
    }

    private static bool FindInTimes(Repeat repeat, ref string yarn, ref long left)
    {
        foreach (var way in repeat.WorkedWays)
        {
            if (way.Amount.Times == 0) continue;
            if (Find(way.Words, ref yarn, ref left)) return true;
            // All times after the first are alike, and end with the same yarn.
            var (once, more) = ((long)way.Words.Sum(Made), way.Amount.Times - 1);
            if (once == 0 || more == 0) continue;
            var times = Math.Min(more, left / once);
            left -= times * once;
            if (times < more) return Find(way.Words, ref yarn, ref left);
        }

        return false;
    }
}
