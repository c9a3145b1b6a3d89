namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What the maker knows of stitch words: the table of US and UK terms, and no more.</summary>
internal sealed class StitchWords(bool uk)
{
    // Each UK word is the US word one lower. "Crochet Terms Translation Chart" and "Crochet hook, yarn and stitch conversions"; the last pair
    // of the Craft Yarn Council's table is from memory.
    private static readonly string[] s_us = ["sc", "hdc", "dc", "tr", "dtr", "trtr"];
    private static readonly string[] s_uk = ["dc", "htr", "tr", "dtr", "trtr", "qtr"];

    /// <summary>The stitch's US word; null if this is no stitch's word.</summary>
    public string? Find(string word)
    {
        if (word.StartsWith("FP", StringComparison.Ordinal) || word.StartsWith("BP", StringComparison.Ordinal)) word = word[2..];
        var at = Array.FindIndex(uk ? s_uk : s_us, known => string.Equals(known, word, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : s_us[at];
    }

    /// <summary>What the pattern calls a stitch of this US word.</summary>
    public string Called(string us) => uk && Array.IndexOf(s_us, us) is >= 0 and var at ? s_uk[at] : us;

    /// <summary><c>dc3tog</c>: the stitch and how many are worked together.</summary>
    public (string Stitch, int Over)? FindTogether(string word)
    {
        if (!word.EndsWith("tog", StringComparison.OrdinalIgnoreCase)) return null;
        var digits = word[..^3].SkipWhile(c => !char.IsDigit(c)).ToArray();
        var stitch = Find(word[..(word.Length - 3 - digits.Length)]);
        return stitch is not null && digits.Length > 0 ? (stitch, Number.Of(new string(digits))) : null;
    }
}
