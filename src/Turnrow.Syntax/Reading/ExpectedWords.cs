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
        [TokenConstants.EOF] = "the end of the line",
    };

    // They may follow nearly every number and would drown the rest.
    private static readonly int[] Unsaid =
    [
        TurnrowLexer.PLUS, TurnrowLexer.MINUS, TurnrowLexer.X, TurnrowLexer.OVER_SIGN, TurnrowLexer.FRACTION, TurnrowLexer.OPEN,
        TurnrowLexer.NUMBER, TurnrowLexer.WORD, TurnrowLexer.DOTTED, TurnrowLexer.MM, TurnrowLexer.CM, TurnrowLexer.M, TurnrowLexer.YD,
    ];

    public static IReadOnlyList<string> Of(IntervalSet expected)
    {
        var phrases = new List<string>();
        var named = expected.Contains(TurnrowLexer.WORD);
        if (expected.Contains(TurnrowLexer.SKIP_WORD) && named) phrases.Add("a stitch");
        else if (expected.Contains(TurnrowLexer.NUMBER)) phrases.Add("a number");
        else if (named) phrases.Add("a name");
        if (expected.Contains(TurnrowLexer.CM) && !expected.Contains(TokenConstants.EOF)) phrases.Add("a unit such as `cm` or `in`");
        else if (expected.Contains(TurnrowLexer.MM) && !expected.Contains(TurnrowLexer.CM)) phrases.Add("`mm`");
        foreach (var type in expected.ToList())
        {
            if (phrases.Count == Most) break;
            if (!Array.Exists(Unsaid, unsaid => unsaid == type) && !(named && Words.MayBeName(type))) phrases.Add(Phrase(type));
        }

        return phrases.Count > 0 ? phrases : [Phrase(expected.ToList()[0])];
    }

    /// <summary>Words and signs that could be put in to make the line readable, most likely first.</summary>
    public static IEnumerable<int> ToPutIn(IntervalSet expected)
    {
        foreach (var type in expected.ToList())
        {
            if (Words.Spelling(type) is not null && !Array.Exists(Unsaid, unsaid => unsaid == type)) yield return type;
        }
    }

    private static string Phrase(int type) =>
        Phrases.GetValueOrDefault(type) ?? (Words.Spelling(type) is { } word ? $"`{word}`" : "another word");
}
