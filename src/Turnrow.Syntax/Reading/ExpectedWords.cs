using Antlr4.Runtime;
using Antlr4.Runtime.Misc;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>Says in the trade's words what could stand at a place: a short list, never the parser's own names.</summary>
internal static class ExpectedWords
{
    private const int Most = 5;

    private static readonly Dictionary<int, string> Phrases = new()
    {
        [TurnrowLexer.COMMA] = "a comma",
        [TurnrowLexer.SEMICOLON] = "a semicolon",
        [TurnrowLexer.COLON] = "a colon",
        [TurnrowLexer.CLOSE] = "`)`",
        [TurnrowLexer.QUOTED] = "a text in quotes",
        [TurnrowLexer.ORDINAL] = "a number such as `5th`",
        [TurnrowLexer.DOES] = "`does not count`",
        [TurnrowLexer.PICKED] = "`picked up along`",
        [TurnrowLexer.PROSE] = "a line for the maker",
        [TurnrowLexer.PICTURE_ROW] = "a row of a picture",
    };

    // They may follow nearly every number, or are said by a phrase for many, and would drown the rest.
    private static readonly HashSet<int> Unsaid =
    [
        TurnrowLexer.PLUS, TurnrowLexer.MINUS, TurnrowLexer.X, TurnrowLexer.OVER_SIGN, TurnrowLexer.FRACTION, TurnrowLexer.OPEN,
        TurnrowLexer.NUMBER, TurnrowLexer.WORD, TurnrowLexer.DOTTED, TurnrowLexer.CM, TurnrowLexer.M, TurnrowLexer.YD,
        TokenConstants.EOF,
    ];

    /// <summary>A few phrases, the most telling first.</summary>
    public static IReadOnlyList<string> Of(IntervalSet expected)
    {
        var phrases = new List<string>();
        if (Many(expected) is { } many) phrases.Add(many);
        if (expected.Contains(TurnrowLexer.CM) && !expected.Contains(TokenConstants.EOF)) phrases.Add("a unit such as `cm` or `in`");
        var ends = expected.Contains(TokenConstants.EOF);
        foreach (var type in ToPutIn(expected))
        {
            if (phrases.Count == (ends ? Most - 1 : Most)) break;
            phrases.Add(Phrase(type));
        }

        if (ends) phrases.Add("the end of the line");
        return phrases.Count > 0 ? phrases : [Phrase(expected.ToList()[0])];
    }

    /// <summary>The words and signs that could be put in, without those that are names there.</summary>
    public static List<int> ToPutIn(IntervalSet expected)
    {
        var named = expected.Contains(TurnrowLexer.WORD);
        var isWalk = named && expected.Contains(TurnrowLexer.LAST) && expected.Contains(TurnrowLexer.STITCHES);
        var types = new List<int>();
        foreach (var type in expected.ToList())
        {
            if (Unsaid.Contains(type) || (named && Words.MayBeName(type)) || (isWalk && IsWalkWord(type))) continue;
            if (IsSecond(type, expected)) continue;
            types.Add(type);
        }

        return types;
    }

    // Names, numbers and stitches are many words each, and said by one.
    private static string? Many(IntervalSet expected)
    {
        var named = expected.Contains(TurnrowLexer.WORD);
        if (named && (expected.Contains(TurnrowLexer.INC) || expected.Contains(TurnrowLexer.FRACTION)) && !expected.Contains(TokenConstants.EOF))
            return expected.Contains(TurnrowLexer.NUMBER) && !expected.Contains(TurnrowLexer.INC) ? "a number" : "a stitch";
        // Of a walk, whose row may have a number, its name is said.
        if (expected.Contains(TurnrowLexer.NUMBER) && !(named && expected.Contains(TurnrowLexer.STITCHES) && expected.Contains(TurnrowLexer.LAST))) return "a number";
        return named && !expected.Contains(TokenConstants.EOF) ? "a name" : null;
    }

    private static bool IsWalkWord(int type) =>
        type is TurnrowLexer.FIRST or TurnrowLexer.LAST or TurnrowLexer.ROW or TurnrowLexer.ROWS or TurnrowLexer.STITCHES;

    // Of one and many, many is said; an inch beside other units is one of them; inc and dec are stitches.
    private static bool IsSecond(int type, IntervalSet expected) => type switch
    {
        TurnrowLexer.ROW => expected.Contains(TurnrowLexer.ROWS),
        TurnrowLexer.STITCH => expected.Contains(TurnrowLexer.STITCHES),
        TurnrowLexer.IN or TurnrowLexer.MM => expected.Contains(TurnrowLexer.CM),
        // `tile first side stitches` is seldom meant where `back rows` is.
        TurnrowLexer.FIRST => expected.Contains(TurnrowLexer.STITCHES) && !expected.Contains(TurnrowLexer.LAST),
        // `at each end` without a number is no part of a row.
        TurnrowLexer.AT => expected.Contains(TurnrowLexer.INC) && expected.Contains(TurnrowLexer.SKIP_WORD),
        TurnrowLexer.INC or TurnrowLexer.DEC => expected.Contains(TurnrowLexer.WORD),
        _ => false,
    };

    private static string Phrase(int type) =>
        Phrases.GetValueOrDefault(type) ?? (Words.Spelling(type) is { } word ? $"`{word}`" : "another word");
}
