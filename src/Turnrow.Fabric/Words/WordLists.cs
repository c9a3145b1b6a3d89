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
}
