namespace Turnrow.Syntax.Diagnostics;

/// <summary>Finds the word that was most likely meant.</summary>
public static class Spelling
{
    private const int LongestWord = 40;

    // No pattern has more names; a file that has is not worth a look at all of them for each word.
    private const int MostCandidates = 500;

    /// <summary>
    /// The candidate nearest to a word, counting a letter too many, too few, wrong, or two exchanged as one slip each; capitals don't count.
    /// Null if none is near: one slip for words up to four letters, two up to eight, three for longer ones. Of equals the
    /// first wins.
    /// </summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        if (word.Length is 0 or > LongestWord) return null;
        var allowed = word.Length switch
        {
            1 => 0,
            <= 4 => 1,
            <= 8 => 2,
            _ => 3,
        };
        string? nearest = null;
        var least = allowed + 1;
        foreach (var candidate in candidates.Take(MostCandidates))
        {
            if (Math.Abs(candidate.Length - word.Length) >= least || candidate.Length > LongestWord) continue;
            var slips = Slips(word, candidate);
            if (slips >= least) continue;
            least = slips;
            nearest = candidate;
        }

        return nearest;
    }

    private static int Slips(string word, string other)
    {
        Span<int> beforeLast = stackalloc int[LongestWord + 1];
        Span<int> last = stackalloc int[LongestWord + 1];
        Span<int> row = stackalloc int[LongestWord + 1];
        for (var j = 0; j <= other.Length; j++) last[j] = j;
        for (var i = 1; i <= word.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= other.Length; j++)
            {
                var same = char.ToLowerInvariant(word[i - 1]) == char.ToLowerInvariant(other[j - 1]);
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && word[i - 1] == other[j - 2] && word[i - 2] == other[j - 1])
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }

            last.CopyTo(beforeLast);
            row.CopyTo(last);
        }

        return last[other.Length];
    }
}
