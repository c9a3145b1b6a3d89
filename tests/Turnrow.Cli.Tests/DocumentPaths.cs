using System.Text.RegularExpressions;

namespace Turnrow.Cli.Tests;

/// <summary>The places inside the repository that a Markdown document names.</summary>
internal static partial class DocumentPaths
{
    /// <summary>Paths from the root: the targets of relative links, and words in code that begin with a folder of ours.</summary>
    public static IEnumerable<string> Named(string document)
    {
        var text = File.ReadAllText(Repository.PathOf(document));
        var folder = Path.GetDirectoryName(document) ?? "";
        var links = Link().Matches(text).Select(match => match.Groups[1].Value)
            .Where(target => !target.Contains(':', StringComparison.Ordinal) && !target.StartsWith('#'))
            .Select(target => Path.GetRelativePath(".", Path.Combine(folder, target.Split('#')[0])).Replace('\\', '/'));
        var words = Code().Matches(text).SelectMany(match => OwnPath().Matches(match.Value)).Select(match => match.Value.TrimEnd('.', '/'));
        return links.Concat(words).Where(IsConcrete).Distinct();
    }

    // `NAME.md` and `src/*/X.cs` stand for many files, and the patterns arrive with the first pattern.
    private static bool IsConcrete(string path) =>
        path.IndexOfAny(['*', '<', '>', '{', '…']) < 0 && !path.Contains("NAME", StringComparison.Ordinal)
        && (!path.StartsWith("patterns/", StringComparison.Ordinal) || HasPatterns);

    private static bool HasPatterns => TrackedFiles.All.Any(file => file.EndsWith(".turnrow", StringComparison.Ordinal));

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"```[^`]*```|`[^`\n]+`")]
    private static partial Regex Code();

    [GeneratedRegex(@"(?<![\w./-])(src|tests|grammar|patterns|\.ci)/[^\s`""',;:)\]]*")]
    private static partial Regex OwnPath();
}
