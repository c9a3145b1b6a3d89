namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What the maker knows of stitch words: the table of US and UK terms, what the page explains, and no more.</summary>
/// <param name="uk">True in UK terms.</param>
/// <param name="explained">The page's lines on special stitches.</param>
internal sealed class StitchWords(bool uk, IReadOnlyList<string> explained)
{
    // Each UK word is the US word one lower. "Crochet Terms Translation Chart" and "Crochet hook, yarn and stitch conversions"; the last pair
    // of the Craft Yarn Council's table is from memory.
    private static readonly string[] s_us = ["sc", "hdc", "dc", "tr", "dtr", "trtr"];
    private static readonly string[] s_uk = ["dc", "htr", "tr", "dtr", "trtr", "qtr"];

    /// <summary>The stitch's US word; null if this is no stitch's word.</summary>
    public string? Find(string word) => FindBasic(word) ?? Special(word)?.Name ?? Singulars(word).Select(one => Special(one)?.Name).FirstOrDefault(name => name is not null);

    // A name that is written out has a plural.
    private static IEnumerable<string> Singulars(string word)
    {
        // `wings of 3`: its number stands behind the name.
        if (word.IndexOf(" of ", StringComparison.Ordinal) is > 0 and var of)
        {
            foreach (var one in Singulars(word[..of])) yield return one + word[of..];
        }

        if (word.EndsWith("ves", StringComparison.Ordinal)) yield return word[..^3] + "f";
        if (word.EndsWith("ies", StringComparison.Ordinal)) yield return word[..^3] + "y";
        if (word.EndsWith("es", StringComparison.Ordinal)) yield return word[..^2];
        if (word.EndsWith('s')) yield return word[..^1];
    }

    /// <summary>The special stitch of this name; null if the page explains none.</summary>
    public SpecialStitch? Special(string name)
    {
        if (FindTogether(name) is not null) return null;
        foreach (var line in explained)
        {
            if (!line.StartsWith($"**{name}:** ", StringComparison.OrdinalIgnoreCase)) continue;
            return new SpecialStitch(InUs(name.Length == 0 ? name : line[2..(2 + name.Length)]), line[(name.Length + 6)..]);
        }

        return null;
    }

    // Stitches in a name change with the terms: a 4-tr BO in UK terms is a 4-dc BO.
    private string InUs(string name)
    {
        if (!uk) return name;
        if (name[0] is 'e' or 'l' or 'r' && FindBasic(name[1..]) is { } variant) return name[0] + variant;
        return string.Join(' ', name.Split(' ').Select(word => string.Join('-', word.Split('-').Select(part => FindBasic(part) ?? part))));
    }

    /// <summary>The basic stitch's US word; null if this is none.</summary>
    public string? FindBasic(string word)
    {
        if (word.StartsWith("FP", StringComparison.Ordinal) || word.StartsWith("BP", StringComparison.Ordinal)) word = word[2..];
        var at = Array.FindIndex(uk ? s_uk : s_us, known => string.Equals(known, word, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : s_us[at];
    }

    /// <summary>True if the page says of this stitch that it is worked from left to right.</summary>
    public bool IsBack(string us) => explained.Any(line => line.Contains("worked back without a turn, from left to right", StringComparison.Ordinal) && InUs(line[2..line.IndexOf(":**", StringComparison.Ordinal)]) == us);

    /// <summary>What the pattern calls a stitch of this US word.</summary>
    public string Called(string us) => !uk ? us
        : Array.IndexOf(s_us, us) is >= 0 and var at ? s_uk[at]
        : us[0] is 'e' or 'l' or 'r' && Array.IndexOf(s_us, us[1..]) is >= 0 and var of ? us[0] + s_uk[of]
        : us;

    /// <summary><c>dc3tog</c>: the stitch and how many are worked together.</summary>
    public (string Stitch, int Over)? FindTogether(string word)
    {
        if (!word.EndsWith("tog", StringComparison.OrdinalIgnoreCase)) return null;
        var digits = word[..^3].SkipWhile(c => !char.IsDigit(c)).ToArray();
        var stitch = Find(word[..(word.Length - 3 - digits.Length)]);
        return stitch is not null && digits.Length > 0 ? (stitch, Number.Of(new string(digits))) : null;
    }
}
