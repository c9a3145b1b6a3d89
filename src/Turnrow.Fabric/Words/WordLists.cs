namespace Turnrow.Fabric.Words;

/// <summary>Equality of lists of words, since records compare lists by reference.</summary>
public static class WordLists
{
    /// <summary>True if both hold equal words in the same order.</summary>
    public static bool Same(IReadOnlyList<Word> a, IReadOnlyList<Word> b)
    {
        if (ReferenceEquals(a, b)) return true;
        if (a.Count != b.Count) return false;
        for (var i = 0; i < a.Count; i++)
        {
            if (!a[i].Equals(b[i])) return false;
        }

        return true;
    }

    /// <summary>A hash that agrees with <see cref="Same"/>.</summary>
    public static int Hash(IReadOnlyList<Word> words)
    {
        var hash = new HashCode();
        for (var i = 0; i < words.Count; i++) hash.Add(words[i]);
        return hash.ToHashCode();
    }

    /// <summary>True if any of the words is measured by an end of the row: what it takes hangs on all that is ahead, or behind.</summary>
    internal static bool ReachEnd(IReadOnlyList<Word> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (ReachesEnd(words[i])) return true;
        }

        return false;
    }

    private static bool ReachesEnd(Word word) => word switch
    {
        Work work => IsOfEnd(work.Target) || IsToEnd(work.Amount),
        Group group => IsOfEnd(group.Target),
        Repeat repeat => IsToEnd(repeat.Amount) || ReachEnd(repeat.Words),
        Spread spread => IsToEnd(spread.Over),
        Leave or ByPlace { ToCorner: false } => true,
        _ => false,
    };

    private static bool IsOfEnd(Target target) => target.Aim is Aim.First or Aim.Last || target is { Aim: Aim.EachOfKind, ToCorner: false };

    private static bool IsToEnd(Amount amount) => amount.Reach is Reach.Across or Reach.Until or Reach.ToTurn;
}
