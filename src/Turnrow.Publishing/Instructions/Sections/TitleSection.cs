using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>Title, version, what the pattern says of itself, and how far it is to be trusted.</summary>
internal static class TitleSection
{
    public static IEnumerable<string> Write(Pattern pattern, Wording words)
    {
        if (pattern.Title.Length > 0) yield return $"# {MarkdownText.Of(pattern.Title)}";
        var version = pattern.Version is { } v ? $"Version {MarkdownText.Of(v)}. " : string.Empty;
        yield return $"{version}Written in {words.Terms.Called} terms.";
        if (pattern.Errors > 0) yield return Draft(pattern.Errors);
        if (Introduction(pattern) is { Length: > 0 } introduction) yield return introduction;
        if (pattern.Skill is { } skill)
        {
            yield return "## Skill level";
            yield return Wording.Sentence(MarkdownText.Of(skill));
        }
    }

    private static string Draft(int errors) => errors == 1
        ? "**Draft: not to be worked from.** The pattern's file has 1 error; numbers that depend on it are missing or not checked."
        : $"**Draft: not to be worked from.** The pattern's file has {Numbers.Plain(errors)} errors; numbers that depend on them are missing or not checked.";

    // Prose before the first piece introduces the pattern.
    private static string Introduction(Pattern pattern) => string.Join(
        '\n', pattern.Items.TakeWhile(static i => i is not PieceInSizes).OfType<ProseItem>().Select(static p => p.Text));
}
