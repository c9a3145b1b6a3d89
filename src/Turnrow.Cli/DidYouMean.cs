using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Cli;

/// <summary>Spelling help for a word that was typed on the command line.</summary>
internal static class DidYouMean
{
    /// <summary><c>; did you mean `back`?</c>, or nothing where no word is near.</summary>
    public static string Clause(string word, IEnumerable<string> words) =>
        Spelling.Nearest(word, words) is { } nearest ? $"; did you mean `{nearest}`?" : string.Empty;

    /// <summary>What there is, to be chosen from: the nearest word, and then all of them.</summary>
    public static string Choice(string word, IReadOnlyList<string> words) =>
        $"{Clause(word, words)}\n  there {(words.Count == 1 ? "is" : "are")}: {string.Join(", ", words)}";
}
