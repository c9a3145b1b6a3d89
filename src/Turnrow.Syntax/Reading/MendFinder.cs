using Antlr4.Runtime;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// Looks for small changes that make a broken line readable, by trying them: a word put in, put in place of the wrong one, or
/// the wrong one left out. So no mend is offered that does not mend.
/// </summary>
internal sealed class MendFinder(LineParser parser)
{
    // Each try parses the line again; a file full of junk must stay cheap, and a long line has better helps.
    private const int MostLines = 100;
    private const int LongestLine = 200;
    private const int MostTries = 12;
    private const int MostMends = 2;

    private int _lines;

    public IReadOnlyList<Mend> Find(IReadOnlyList<IToken> tokens, LineError error, LineBuilding line)
    {
        if (tokens.Count > LongestLine || ++_lines > MostLines) return [];
        var index = IndexOf(tokens, error.Token);
        var mends = new List<Mend>(MostMends);
        var candidates = ExpectedWords.ToPutIn(error.Expected).Take(MostTries).ToList();
        if (index < tokens.Count) Respell(tokens, index, candidates, line, mends);
        foreach (var type in candidates)
        {
            if (mends.Count < MostMends && Fits(tokens, index, 0, type)) mends.Add(PutIn(tokens, index, Words.Spelling(type)!));
        }

        if (index < tokens.Count && mends.Count < MostMends && Fits(tokens, index, 1, null))
            mends.Add(LeaveOut(tokens, index, line));
        return mends;
    }

    /// <summary>True if the words make a row when <c>row:</c> is put before them.</summary>
    public bool IsRow(IReadOnlyList<IToken> tokens)
    {
        if (tokens.Count > LongestLine || ++_lines > MostLines || tokens[0].Type == TurnrowLexer.NUMBER || !HasRowSign(tokens)) return false;
        var tried = new List<IToken> { Made(TurnrowLexer.ROW), Made(TurnrowLexer.COLON) };
        tried.AddRange(tokens);
        return parser.Statement(tried).Error is null;
    }

    // Nearly any words could be stitches; these say that they are.
    private static bool HasRowSign(IReadOnlyList<IToken> tokens)
    {
        foreach (var token in tokens)
        {
            if (token.Type is TurnrowLexer.ACROSS or TurnrowLexer.AROUND or TurnrowLexer.UNTIL or TurnrowLexer.NUMBER or TurnrowLexer.INC
                or TurnrowLexer.DEC or TurnrowLexer.IN) return true;
        }

        return false;
    }

    private void Respell(IReadOnlyList<IToken> tokens, int index, List<int> candidates, LineBuilding line, List<Mend> mends)
    {
        var word = line.Text(tokens[index]);
        var nearest = Spelling.Nearest(word, candidates.Select(type => Words.Spelling(type)!));
        foreach (var type in candidates)
        {
            var spelling = Words.Spelling(type)!;
            // A quite different word is offered only where nothing else can stand.
            if (spelling != nearest && candidates.Count > 1) continue;
            if (Fits(tokens, index, 1, type))
                mends.Add(new Mend($"write `{spelling}`", LineBuilding.Span(tokens[index]), spelling));
        }
    }

    private static Mend PutIn(IReadOnlyList<IToken> tokens, int index, string word)
    {
        // Signs stand close to the word before them.
        var isClose = word is "," or ";" or ":" or ")";
        var position = index > 0 ? tokens[index - 1].StopIndex + 1 : tokens[0].StartIndex;
        return new Mend($"put in `{word}`", new TextSpan(position, 0), isClose ? word : " " + word);
    }

    private static Mend LeaveOut(IReadOnlyList<IToken> tokens, int index, LineBuilding line)
    {
        var span = LineBuilding.Span(tokens[index]);
        var from = index > 0 ? tokens[index - 1].StopIndex + 1 : span.Start;
        return new Mend($"leave out `{line.Text(span)}`", TextSpan.FromBounds(from, span.End), "");
    }

    private bool Fits(IReadOnlyList<IToken> tokens, int index, int left, int? putIn)
    {
        var tried = new List<IToken>(tokens.Count + 1);
        for (var i = 0; i < index; i++) tried.Add(tokens[i]);
        if (putIn is { } type) tried.Add(Made(type));
        for (var i = index + left; i < tokens.Count; i++) tried.Add(tokens[i]);
        return tried.Count > 0 && parser.Statement(tried).Error is null;
    }

    private static CommonToken Made(int type) => new(type);

    private static int IndexOf(IReadOnlyList<IToken> tokens, IToken token)
    {
        for (var i = 0; i < tokens.Count; i++)
        {
            if (ReferenceEquals(tokens[i], token)) return i;
        }

        return tokens.Count;
    }
}
