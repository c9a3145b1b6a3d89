using System.Globalization;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// Folds characters into the classes that the lexer's grammar tells apart (its header lists them). Within ASCII nearly all stand for themselves.
/// </summary>
internal static class FoldedCharacters
{
    /// <summary>An accent or another mark, which a word may hold.</summary>
    public const char Mark = '\u0001';

    private const char Letter = 'Q';
    private const char TimesSign = '\u0002';
    private const char Fraction = '\u0003';
    private const char High = '\u0004';
    private const char Low = '\u0005';
    private const char Other = '\u0006';

    public static char Fold(char c) => c is >= ' ' and <= '~' ? c : FoldRare(c);

    private static char FoldRare(char c)
    {
        switch (c)
        {
            case '\t':
                return c;
            case '\u00D7':
                return TimesSign;
            case '\u201C' or '\u201D' or '\u201E':
                return '"';
            case (>= '\u00BC' and <= '\u00BE') or (>= '\u2150' and <= '\u215E') or '\u2189':
                return Fraction;
        }

        if (char.IsHighSurrogate(c)) return High;
        if (char.IsLowSurrogate(c)) return Low;
        if (char.IsWhiteSpace(c)) return ' ';
        if (char.IsLetter(c)) return Letter;
        return char.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark
            ? Mark
            : Other;
    }
}
