using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>What the grammar knows about its words, asked by token type.</summary>
internal static class Words
{
    // Types whose word the generated vocabulary can't give, since they have two.
    private static readonly Dictionary<int, string> TwoFold = new()
    {
        [TurnrowLexer.X] = "x",
        [TurnrowLexer.REMAIN] = "remain",
        [TurnrowLexer.STITCHES] = "stitches",
        [TurnrowLexer.TIMES] = "times",
    };

    private static readonly string?[] Spellings = MakeSpellings();

    private static readonly bool[] Names = MakeNames();

    /// <summary>The words of the notation stand side by side in the grammar: from this one …</summary>
    public const int First = TurnrowLexer.ACCEPT;

    /// <summary>… to this one.</summary>
    public const int Last = TurnrowLexer.YD;

    /// <summary>True for a word of the notation, wherever in a line it has a meaning.</summary>
    public static bool IsKeyword(int type) => type is >= First and <= Last;

    /// <summary>True for a word that may be a name.</summary>
    public static bool MayBeName(int type) => type >= 0 && Names[type];

    /// <summary>The word or sign of a type, as one types it; null for those with many (a name, a number).</summary>
    public static string? Spelling(int type) => type >= 0 ? Spellings[type] : null;

    /// <summary>All words that can't be names, in the order of the alphabet.</summary>
    public static IReadOnlyList<string> Reserved()
    {
        var reserved = new List<string>();
        for (var type = First; type <= Last; type++)
        {
            if (!MayBeName(type)) reserved.Add(Spellings[type]!);
        }

        reserved.Add(Spellings[TurnrowLexer.X]!);
        reserved.Sort(StringComparer.Ordinal);
        return reserved;
    }

    private static string?[] MakeSpellings()
    {
        var spellings = new string?[TurnrowParser._ATN.maxTokenType + 1];
        for (var type = 0; type < spellings.Length; type++)
        {
            spellings[type] = TwoFold.TryGetValue(type, out var word)
                ? word
                : TurnrowParser.DefaultVocabulary.GetLiteralName(type) is ['\'', .. var inner, '\''] ? inner : null;
        }

        return spellings;
    }

    private static bool[] MakeNames()
    {
        var atn = TurnrowParser._ATN;
        var names = new bool[TurnrowParser._ATN.maxTokenType + 1];
        foreach (var type in atn.NextTokens(atn.ruleToStartState[TurnrowParser.RULE_name]).ToList())
        {
            if (type >= 0) names[type] = true;
        }

        return names;
    }
}
