using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>What the grammar knows about its words, asked by token type.</summary>
internal static class Words
{
    // Types whose word the generated vocabulary can't give, since they have two.
    private static readonly Dictionary<int, string> TwoFold = new()
    {
        [TurnrowLexer.X] = "x",
        [TurnrowLexer.CUP] = "cups",
        [TurnrowLexer.LIE] = "lies",
        [TurnrowLexer.REMAIN] = "remain",
        [TurnrowLexer.ROW] = "row",
        [TurnrowLexer.ROWS] = "rows",
        [TurnrowLexer.RUFFLE] = "ruffles",
        [TurnrowLexer.STITCHES] = "stitches",
        [TurnrowLexer.TIMES] = "times",
    };

    private static readonly string?[] Spellings = MakeSpellings();

    /// <summary>How many types there are, if 0 counts as one.</summary>
    public const int Types = TurnrowLexer.JUNK + 1;

    /// <summary>The second word of those that have two.</summary>
    public static IReadOnlyList<KeyValuePair<string, int>> OtherSpellings { get; } =
        [
            new("remains", TurnrowLexer.REMAIN), new("sts", TurnrowLexer.STITCHES), new("time", TurnrowLexer.TIMES), new("round", TurnrowLexer.ROW), new("rounds", TurnrowLexer.ROWS),
            new("cup", TurnrowLexer.CUP), new("lie", TurnrowLexer.LIE), new("ruffle", TurnrowLexer.RUFFLE),
        ];

    /// <summary>The words of the notation stand side by side in the grammar: from this one …</summary>
    public const int First = TurnrowLexer.ACCEPT;

    /// <summary>… to this one.</summary>
    public const int Last = TurnrowLexer.YD;

    /// <summary>True for a word of the notation, wherever in a line it has a meaning.</summary>
    public static bool IsKeyword(int type) => type is >= First and <= Last;

    /// <summary>True for a word that may be a name.</summary>
    public static bool MayBeName(int type) => type >= 0 && Names.IsName[type];

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
        var spellings = new string?[Types];
        for (var type = 0; type < spellings.Length; type++)
        {
            spellings[type] = TwoFold.TryGetValue(type, out var word)
                ? word
                : TurnrowParser.DefaultVocabulary.GetLiteralName(type) is ['\'', .. var inner, '\''] ? inner : null;
        }

        return spellings;
    }

    // Asked for only where a line is broken: the parser's tables, which it comes from, are not set up before.
    private static class Names
    {
        public static readonly bool[] IsName = MakeNames();

        private static bool[] MakeNames()
        {
            var atn = TurnrowParser._ATN;
            var names = new bool[Types];
            foreach (var type in atn.NextTokens(atn.ruleToStartState[TurnrowParser.RULE_name]).ToList())
            {
                if (type >= 0) names[type] = true;
            }

            return names;
        }
    }
}
