using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// Finds the tokens that nearly all of a text is made of (words, signs, plain numbers, quoted texts, comments) without the generated lexer,
/// which takes longer to set up than a whole pattern to be checked. What is not so plain is left to it. Tests hold every token of this
/// to be the one that the grammar gives.
/// </summary>
internal sealed class EasyTokens(string text)
{
    private static readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Keywords = MakeKeywords().GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The token at a position.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">The line's end; the token lies before it.</param>
    /// <returns>Its type and its end; or null if the generated lexer has to say.</returns>
    public (int Type, int End)? At(int start, int end)
    {
        var first = FoldedCharacters.Fold(text[start]);
        return first switch
        {
            ' ' or '\t' => (TurnrowLexer.WHITE_SPACE, EndOfSpace(start, end)),
            '#' => (TurnrowLexer.COMMENT, end),
            '>' => (TurnrowLexer.PROSE, end),
            '|' => (TurnrowLexer.PICTURE_ROW, end),
            '"' => Quoted(start, end),
            _ when char.IsAsciiLetter(first) => Word(start, end),
            _ when char.IsAsciiDigit(first) => Number(start, end),
            _ when SignOf(first) is var sign and not 0 => (sign, start + 1),
            _ => null,
        };
    }

    private static int SignOf(char c) => c switch
    {
        ',' => TurnrowLexer.COMMA,
        ';' => TurnrowLexer.SEMICOLON,
        ':' => TurnrowLexer.COLON,
        '(' => TurnrowLexer.OPEN,
        ')' => TurnrowLexer.CLOSE,
        '=' => TurnrowLexer.EQUALS,
        '+' => TurnrowLexer.PLUS,
        '-' => TurnrowLexer.MINUS,
        '/' => TurnrowLexer.OVER_SIGN,
        '%' => TurnrowLexer.PERCENT,
        _ => 0,
    };

    private (int Type, int End)? Quoted(int start, int end)
    {
        for (var i = start + 1; i < end; i++)
        {
            if (FoldedCharacters.Fold(text[i]) == '"') return (TurnrowLexer.QUOTED, i + 1);
        }

        return null;
    }

    private (int Type, int End) Word(int start, int end)
    {
        var i = start + 1;
        while (i < end && (IsInWord(text[i]) || (text[i] == '-' && i + 1 < end && IsAfterHyphen(text[i + 1])))) i++;
        return (Keywords.TryGetValue(text.AsSpan(start, i - start), out var keyword) ? keyword : TurnrowLexer.WORD, i);
    }

    private static bool IsInWord(char c) => FoldedCharacters.Fold(c) is var folded && (char.IsAsciiLetterOrDigit(folded) || folded == FoldedCharacters.Mark);

    private static bool IsAfterHyphen(char c) => char.IsAsciiLetterOrDigit(FoldedCharacters.Fold(c));

    private (int Type, int End)? Number(int start, int end)
    {
        var i = EndOfDigits(start, end);
        if (i == end) return (TurnrowLexer.NUMBER, i);
        var more = i + 1 < end && char.IsAsciiDigit(text[i + 1]);
        switch (text[i])
        {
            case '/' when more:
                return (TurnrowLexer.FRACTION, EndOfDigits(i + 1, end));
            case '.' when more:
                i = EndOfDigits(i + 1, end);
                return i + 1 < end && text[i] == '.' && char.IsAsciiDigit(text[i + 1]) ? null : (TurnrowLexer.NUMBER, i);
            case ',' when more:
            case 's' or 'n' or 'r' or 't':
                return text.AsSpan(i, Math.Min(2, end - i)) is "st" or "nd" or "rd" or "th" ? (TurnrowLexer.ORDINAL, i + 2) : null;
            default:
                return (TurnrowLexer.NUMBER, i);
        }
    }

    private int EndOfDigits(int start, int end)
    {
        var i = start;
        while (i < end && char.IsAsciiDigit(text[i])) i++;
        return i;
    }

    private int EndOfSpace(int start, int end)
    {
        var i = start;
        while (i < end && FoldedCharacters.Fold(text[i]) is ' ' or '\t') i++;
        return i;
    }

    private static Dictionary<string, int> MakeKeywords()
    {
        var keywords = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var type = TurnrowLexer.X; type <= TurnrowLexer.YD; type++) keywords[Words.Spelling(type)!] = type;
        foreach (var (word, type) in Words.OtherSpellings) keywords[word] = type;
        return keywords;
    }
}
