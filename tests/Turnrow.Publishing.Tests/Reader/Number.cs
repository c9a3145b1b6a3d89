using System.Globalization;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Numbers as they stand in a sentence.</summary>
internal static class Number
{
    /// <summary>A whole number, or an ordinal: <c>19th</c>.</summary>
    public static int Of(string word) => TryOf(word) ?? throw new Misread($"`{word}` is no number");

    public static int? TryOf(string word)
    {
        var digits = word.TakeWhile(char.IsAsciiDigit).Count();
        if (digits == 0 || word[digits..] is not ("" or "st" or "nd" or "rd" or "th")) return null;
        return int.TryParse(word.AsSpan(0, digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
