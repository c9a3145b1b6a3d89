using Antlr4.Runtime;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>The tokens that a line can begin with.</summary>
internal static class StatementStarts
{
    private static readonly int[] TypeOf = MakeTypes();
    private static readonly bool[] Starts = MakeStarts();

    /// <summary>True for a token type that begins a statement.</summary>
    public static bool Begins(int type) => type >= 0 && Starts[type];

    /// <summary>A tablet's keyboard gives a line's first word a capital: it is the same word.</summary>
    public static void LowerFirstWord(IReadOnlyList<IToken> tokens, string text)
    {
        if (tokens.Count == 0 || tokens[0] is not { Type: TurnrowLexer.WORD } first) return;
        var length = first.StopIndex + 1 - first.StartIndex;
        if (!char.IsAsciiLetterUpper(text[first.StartIndex])) return;
        var word = char.ToLowerInvariant(text[first.StartIndex]) + text.Substring(first.StartIndex + 1, length - 1);
        for (var i = 0; i < NotationWords.Statements.Count; i++)
        {
            if (NotationWords.Statements[i].Text == word) ((LineToken)first).Type = TypeOf[i];
        }
    }

    private static int[] MakeTypes()
    {
        var types = new int[NotationWords.Statements.Count];
        for (var type = Words.First; type <= Words.Last; type++)
        {
            for (var i = 0; i < types.Length; i++)
            {
                if (NotationWords.Statements[i].Text == Words.Spelling(type)) types[i] = type;
            }
        }

        return types;
    }

    private static bool[] MakeStarts()
    {
        var starts = new bool[Words.Types];
        starts[TurnrowLexer.PROSE] = starts[TurnrowLexer.PICTURE_ROW] = true;
        foreach (var type in TypeOf) starts[type] = true;
        return starts;
    }
}
