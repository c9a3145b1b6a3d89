using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A stitch that the page explains: what it takes and makes, as far as a maker has to know to go on.</summary>
/// <param name="Name">Its name, stitches in it by their US words.</param>
/// <param name="Text">The explanation.</param>
internal sealed partial record SpecialStitch(string Name, string Text)
{
    /// <summary>True if it makes nothing that is worked into.</summary>
    public bool IsNothing => Text.Contains("It does not count as a st,", StringComparison.Ordinal);

    /// <summary>True if it makes the chain that it stands on.</summary>
    public bool IsOnItsOwnChain => Text.Contains("makes the ch at its own foot", StringComparison.Ordinal);

    /// <summary>Places that it takes.</summary>
    public int Takes => Over().Match(Text) is { Success: true } over ? Number.Of(over.Groups["n"].Value)
        : Begun().Match(Text) is { Success: true } begun && begun.Groups["parts"].Value.Contains("next", StringComparison.Ordinal) ? Places(begun.Groups["parts"].Value)
        : 1;

    /// <summary>What it makes, each part with how many, chains without a stitch; null for one stitch of its own name.</summary>
    public IReadOnlyList<(int Count, string? Stitch)>? Parts(StitchWords words)
    {
        if (InOne().Match(Text) is { Success: true } one) return Read(one.Groups["parts"].Value, words);
        return Over().Match(Text) is { Success: true } over ? Read(over.Groups["parts"].Value, words) : null;
    }

    /// <summary>The stitch by whose ch its rows begin.</summary>
    public string Base(StitchWords words)
    {
        if (!IsOnItsOwnChain && (Text.Contains("up to the first loop drawn up", StringComparison.Ordinal) || Text.Contains("worked back without a turn", StringComparison.Ordinal))) return Name;
        // Its full name may have other stitches' words in it: `foundation half treble` is no treble.
        var known = Word().Matches(IsOnItsOwnChain ? Text[(Text.IndexOf(": ", StringComparison.Ordinal) + 1)..] : Text).Select(match => words.FindBasic(match.Value)).FirstOrDefault(stitch => stitch is not null);
        return known ?? "hdc";
    }

    private static int Places(string parts) => Next().Matches(parts).Sum(match => match.Groups["n"].Success ? Number.Of(match.Groups["n"].Value) : 1);

    private static List<(int, string?)> Read(string text, StitchWords words)
    {
        var parts = new List<(int, string?)>();
        while (Again().Match(text) is { Success: true } again)
            text = text.Replace(again.Value, string.Join(", ", Enumerable.Repeat(again.Groups["parts"].Value, Number.Of(again.Groups["times"].Value))), StringComparison.Ordinal);
        var before = string.Empty;
        foreach (var part in text.Split(", "))
        {
            // How it crosses is said of what went back, and of nothing else.
            if (Crossing().Match(part) is { Success: true })
            {
                if (!before.Contains("skipped", StringComparison.Ordinal) && !before.Contains("missed", StringComparison.Ordinal)) throw new Misread($"`{part}` is said of `{before}`, which goes back to nothing");
                continue;
            }

            before = part;
            // What is no stitch stands on the one before it.
            if (Skip().IsMatch(part) || Knot(part, words)) continue;
            var match = Part().Match(part);
            if (!match.Success) throw new Misread($"`{part}` is no part of a stitch");
            var count = match.Groups["n"].Success ? Number.Of(match.Groups["n"].Value) : 1;
            var each = match.Groups["each"].Success ? Number.Of(match.Groups["each"].Value) : 1;
            if (match.Groups["ch"].Success) parts.Add((Number.Of(match.Groups["ch"].Value), null));
            else parts.Add((count * each, match.Groups["stitch"].Value == "sl st" ? "sl st" : words.Find(match.Groups["stitch"].Value) ?? throw new Misread($"`{part}` is no stitch")));
        }

        return parts;
    }

    private static bool Knot(string part, StitchWords words) => words.Special(Counted().Replace(part, string.Empty)) is { IsNothing: true } || words.Special(part) is { IsNothing: true };

    [GeneratedRegex(@"\[(?<parts>[^\[\]]+)\] (?<times>\d+) times")]
    private static partial Regex Again();

    [GeneratedRegex(@"^\d+ ")]
    private static partial Regex Counted();

    [GeneratedRegex(@"^(?:[^:]+: )?(?<parts>[^:]+), all (?:in (?:(?:back|front) loop only of )?|around |over )the place named\. \d+ sts?\.$")]
    private static partial Regex InOne();

    [GeneratedRegex(@"^(?:[^:]+: )?(?<parts>[^:\[\]]+)\. Over (?<n>\d+) sts; \d+ sts?\.$")]
    private static partial Regex Over();

    [GeneratedRegex(@"begin (?<parts>.+?), each up to")]
    private static partial Regex Begun();

    [GeneratedRegex(@"next (?:(?<n>\d+) )?sts?")]
    private static partial Regex Next();

    [GeneratedRegex("^working (?:in front of|behind) the sts? just made$")]
    private static partial Regex Crossing();

    [GeneratedRegex(@"^(?:skip|miss) next (?:\d+ )?sts?$")]
    private static partial Regex Skip();

    [GeneratedRegex(@"^(?:ch (?<ch>\d+)|(?:(?<n>\d+) )?(?<stitch>sl st|(?:\d+-[a-z]+ )?[A-Za-z][\w-]*)(?: in (?:back|front) loop only)?(?: (?:in|around|over|of) (?:(?:next|same) st|the (?:skipped|missed) st|each of (?:next|the) (?<each>\d+) (?:(?:skipped|missed) )?sts))?)$")]
    private static partial Regex Part();

    [GeneratedRegex(@"[A-Za-z]+")]
    private static partial Regex Word();
}
