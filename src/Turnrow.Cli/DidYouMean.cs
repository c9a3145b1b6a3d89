namespace Turnrow.Cli;

/// <summary>Spelling help for a word that was typed on the command line.</summary>
internal static class DidYouMean
{
    /// <summary><c>; did you mean `back`?</c>, or nothing where no word is near.</summary>
    public static string Clause(string word, IEnumerable<string> words) =>
        Nearest(word, words) is { } nearest ? $"; did you mean `{nearest}`?" : string.Empty;

    /// <summary>What there is, to be chosen from: the nearest word, and then all of them.</summary>
    public static string Choice(string word, IReadOnlyList<string> words) =>
        $"{Clause(word, words)}\n  there {(words.Count == 1 ? "is" : "are")}: {string.Join(", ", words)}";

    private static string? Nearest(string word, IEnumerable<string> words)
    {
        string? nearest = null;
        var least = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in words)
        {
            var distance = Distance(word, candidate);
            if (distance >= least) continue;
            (nearest, least) = (candidate, distance);
        }

        return nearest;
    }

    private static int Distance(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]);
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (same ? 0 : 1)));
            }
        }

        return row[b.Length];
    }
}
