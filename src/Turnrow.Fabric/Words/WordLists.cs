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

    /// <summary>The first of the words, brackets opened, of which something holds; null if there is none.</summary>
    /// <param name="words">The words.</param>
    /// <param name="holds">What is asked of each; of one that holds others, before these are.</param>
    /// <param name="isLeftOut">True of a word that is passed over with all that it holds.</param>
    public static Word? First(IReadOnlyList<Word> words, Func<Word, bool> holds, Func<Word, bool>? isLeftOut = null)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (isLeftOut?.Invoke(words[i]) == true) continue;
            if (holds(words[i])) return words[i];
            if (words[i].Held is { Count: > 0 } held && First(held, holds, isLeftOut) is { } found) return found;
        }

        return null;
    }

    /// <summary>True if something holds of any of the words, brackets opened.</summary>
    public static bool Any(IReadOnlyList<Word> words, Func<Word, bool> holds, Func<Word, bool>? isLeftOut = null) => First(words, holds, isLeftOut) is not null;

    /// <summary>True if any of the words is measured by an end of the row: what it takes hangs on all that is ahead, or behind.</summary>
    internal static bool ReachEnd(IReadOnlyList<Word> words) =>
        Any(words, static word => word is Leave || word.Reach is Reach.Across or Reach.Until or Reach.ToTurn || (word.GoesTo is { } target && IsOfEnd(target)));

    private static bool IsOfEnd(Target target) => target.Aim is Aim.First or Aim.Last || target is { Aim: Aim.EachOfKind, ToCorner: false };
}
