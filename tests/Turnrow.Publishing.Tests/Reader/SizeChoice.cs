using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>
/// A maker who has marked her size: of `5 (6, 7, 8)` she keeps her number, and she passes over what is for other sizes only.
/// A list of another length than there are sizes is nothing she could pick from.
/// </summary>
internal sealed partial class SizeChoice(IReadOnlyList<string> sizes, int mine)
{
    private const string Item = @"\d+(?:st|nd|rd|th|(?:\.\d+)?(?: \d+/\d+)?(?:-\d+)?|/\d+)";

    public string Name => sizes[mine];

    /// <summary>The paragraph in her numbers; null if it is for other sizes.</summary>
    public string? Choose(string paragraph)
    {
        // Of the lines of a list each is for all sizes of its paragraph, or for some.
        var lines = paragraph.Split("\n- ");
        return lines.Length == 1 || Chosen(lines[0], sizes) is not { } head ? Chosen(paragraph, sizes)
            : string.Join("\n- ", lines.Skip(1).Select(line => Chosen(line, Of(lines[0]))).OfType<string>().Prepend(head));
    }

    private IReadOnlyList<string> Of(string paragraph) => ForSomeSizes().Match(paragraph) is { Success: true } only ? Names(only.Groups["names"].Value) : sizes;

    private string? Chosen(string paragraph, IReadOnlyList<string> of)
    {
        var only = ForSomeSizes().Match(paragraph);
        var named = only.Success ? Names(only.Groups["names"].Value) : of;
        if (!named.Contains(Name)) return null;
        paragraph = SideInSizes().Replace(paragraph, side => $" ({(Names(side.Groups["first"].Value).Contains(Name) ? side.Groups["one"].Value : Names(side.Groups["others"].Value).Contains(Name) ? side.Groups["other"].Value : throw new Misread($"which side faces in {Name} is not said"))}):** ");
        var text = PhraseForSomeSizes().Replace(paragraph[only.Length..], phrase => Phrase(phrase, named));
        return Pick(text, named);
    }

    /// <summary>`S (M, L)` as names.</summary>
    public static IReadOnlyList<string> Split(string names)
    {
        var open = names.IndexOf(" (", StringComparison.Ordinal);
        return open < 0 ? [names] : [names[..open], .. names[(open + 2)..^1].Split(", ")];
    }

    private string Phrase(Match phrase, IReadOnlyList<string> within)
    {
        var named = Names(phrase.Groups["names"].Value);
        if (named.Any(name => !within.Contains(name))) throw new Misread($"`{phrase.Value}` names a size that the paragraph is not for");
        return named.Contains(Name) ? ", then " + Pick(phrase.Groups["what"].Value, named) : string.Empty;
    }

    private string Pick(string text, IReadOnlyList<string> named)
    {
        text = Numbers().Replace(text, list => One(list, named));
        return Sides().Replace(text, list => One(list, named));
    }

    private string One(Match list, IReadOnlyList<string> named)
    {
        var rest = list.Groups["rest"].Value.Split(", ");
        if (rest.Length + 1 != named.Count) throw new Misread($"`{list.Value}` has {rest.Length + 1} numbers for {named.Count} sizes");
        var at = named.ToList().IndexOf(Name);
        return at == 0 ? list.Groups["first"].Value : rest[at - 1];
    }

    private IReadOnlyList<string> Names(string text)
    {
        var names = Split(text);
        return names.All(sizes.Contains) ? names : throw new Misread($"`{text}` names a size that there is not");
    }

    [GeneratedRegex(@"^\*Sizes? (?<names>.+?) only:\* ")]
    private static partial Regex ForSomeSizes();

    [GeneratedRegex(@", then \(sizes? (?<names>.+?) only\) (?<what>(?:\([^)]*\)|[^,;.])*)")]
    private static partial Regex PhraseForSomeSizes();

    [GeneratedRegex(@"(?<=^(?:\*Sizes? .+? only:\* )?\*\*(?:Row|Round) [^*:]+):\*\* (?<one>RS|WS) faces in sizes? (?<first>[^.]+?), (?<other>RS|WS) in sizes? (?<others>[^.]+?)\. ")]
    private static partial Regex SideInSizes();

    [GeneratedRegex($@"(?<![\w.])(?<first>{Item}) \((?<rest>{Item}(?:, {Item})*)\)")]
    private static partial Regex Numbers();

    [GeneratedRegex(@"\b(?<first>RS|WS) \((?<rest>(?:RS|WS)(?:, (?:RS|WS))*)\)")]
    private static partial Regex Sides();
}
