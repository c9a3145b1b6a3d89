namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>Abbreviations and special stitches: those that the text uses, and no other.</summary>
internal static class AbbreviationsSection
{
    public static IEnumerable<string> Write(Wording words)
    {
        // Explaining a special stitch uses words of its own, which are in the list then.
        var specials = words.Specials.Select(static s => $"- **{s.Key}:** {s.Value}").ToList();
        if (words.Abbreviations.Count > 0)
        {
            yield return "## Abbreviations";
            yield return string.Join('\n', words.Abbreviations.Select(static a => $"- **{a.Key}:** {a.Value}"));
        }

        if (specials.Count == 0) yield break;
        yield return "## Special stitches";
        yield return string.Join('\n', specials);
    }
}
