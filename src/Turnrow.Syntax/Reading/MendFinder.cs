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
    private const int MostCandidates = 12;

    // Where more than these fit, one is as good as the other, and none is offered.
    private const int MostMends = 2;

    private int _lines;

    /// <summary>Texts that make the line readable, the likeliest first; none if there is no likely one.</summary>
    public IReadOnlyList<Mend> Find(IReadOnlyList<IToken> tokens, LineError error, LineBuilding line)
    {
        if (!MayTry(tokens)) return [];
        var index = IndexOf(tokens, error.Token);
        var candidates = ExpectedWords.ToPutIn(error.Expected);
        if (candidates.Count > MostCandidates) candidates.RemoveRange(MostCandidates, candidates.Count - MostCandidates);
        if (Respelled(tokens, index, candidates, line) is { } respelled) return [respelled];
        if (Quoted(tokens, index, error, line) is { } quoted) return [quoted];
        if (Bracket(tokens, index, line) is { } bracket) return [bracket];
        var put = PutIn(tokens, index, candidates);
        if (put.Count > 0) return put.Count <= MostMends ? put : [];
        var other = Replaced(tokens, index, candidates) ?? LeftOut(tokens, index, line);
        return other is null ? [] : [other];
    }

    /// <summary>True if the words make a row when <c>row:</c> is put before them.</summary>
    public bool IsRow(IReadOnlyList<IToken> tokens)
    {
        if (tokens[0].Type == TurnrowLexer.NUMBER || !HasRowSign(tokens) || !MayTry(tokens)) return false;
        return Reads([Made(TurnrowLexer.ROW), Made(TurnrowLexer.COLON), .. tokens]);
    }

    private bool MayTry(IReadOnlyList<IToken> tokens) => tokens.Count <= LongestLine && ++_lines <= MostLines;

    // Nearly any words could be stitches; these say that they are.
    private static bool HasRowSign(IReadOnlyList<IToken> tokens)
    {
        foreach (var token in tokens)
        {
            if (token.Type is TurnrowLexer.ACROSS or TurnrowLexer.AROUND or TurnrowLexer.UNTIL or TurnrowLexer.NUMBER
                or TurnrowLexer.INC or TurnrowLexer.DEC or TurnrowLexer.IN) return true;
        }

        return false;
    }

    private Mend? Respelled(IReadOnlyList<IToken> tokens, int index, List<int> candidates, LineBuilding line)
    {
        if (index == tokens.Count) return null;
        var nearest = Spelling.Nearest(line.Text(tokens[index]), candidates.Select(type => Words.Spelling(type) ?? ""));
        foreach (var type in candidates)
        {
            if (nearest is not null && Words.Spelling(type) == nearest && Fits(tokens, index, 1, type))
                return new Mend($"write `{nearest}`", LineBuilding.Span(tokens[index]), nearest);
        }

        return null;
    }

    // A text without its quotes, up to the next comma.
    private Mend? Quoted(IReadOnlyList<IToken> tokens, int index, LineError error, LineBuilding line)
    {
        if (index == tokens.Count || !error.Expected.Contains(TurnrowLexer.QUOTED) || tokens[index].Type == TurnrowLexer.COMMA) return null;
        var last = index;
        while (last + 1 < tokens.Count && tokens[last + 1].Type is not (TurnrowLexer.COMMA or TurnrowLexer.QUOTED)) last++;
        if (!Fits(tokens, index, last + 1 - index, TurnrowLexer.QUOTED)) return null;
        var span = LineBuilding.Span(tokens[index]).To(LineBuilding.Span(tokens[last]));
        return new Mend("put it in quotes", span, $"\"{line.Text(span)}\"");
    }

    // A bracket that begins a repeat right behind a number looks like a list in sizes; and print puts sides in brackets.
    private Mend? Bracket(IReadOnlyList<IToken> tokens, int index, LineBuilding line)
    {
        var open = index - 1;
        if (open < 1 || tokens[open].Type != TurnrowLexer.OPEN) return null;
        if (Fits(tokens, open, 0, TurnrowLexer.COMMA))
            return new Mend("put in a comma before the bracket", new TextSpan(tokens[open - 1].StopIndex + 1, 0), ",");
        if (index + 1 >= tokens.Count || tokens[index + 1].Type != TurnrowLexer.CLOSE) return null;
        var word = LineBuilding.Span(tokens[index]);
        return Reads([.. tokens.Take(open), tokens[index], .. tokens.Skip(index + 2)])
            ? new Mend($"write `{line.Text(word)}` without brackets", LineBuilding.Span(tokens[open]).To(LineBuilding.Span(tokens[index + 1])), line.Text(word))
            : null;
    }

    private List<Mend> PutIn(IReadOnlyList<IToken> tokens, int index, List<int> candidates)
    {
        var mends = new List<Mend>();
        foreach (var type in candidates)
        {
            // A row that ends before its first stitch wants a stitch: what may be skipped or left is never the whole of it.
            if (type == TurnrowLexer.EQUALS || (type == TurnrowLexer.SKIP_WORD && index == tokens.Count) || Words.Spelling(type) is not { } word || !Fits(tokens, index, 0, type)) continue;
            // Behind a piece's name nearly any words could be the pieces that it goes over; they were something else.
            if (type == TurnrowLexer.ACROSS && tokens[0].Type == TurnrowLexer.PIECE) continue;
            var position = tokens[Math.Max(0, index - 1)].StopIndex + 1;
            mends.Add(new Mend($"put in `{word}`", new TextSpan(position, 0), IsClose(type) ? word : " " + word));
        }

        return mends;
    }

    private Mend? Replaced(IReadOnlyList<IToken> tokens, int index, List<int> candidates)
    {
        var words = candidates.FindAll(type => Words.IsKeyword(type) && Words.Spelling(type) is not null);
        if (index == tokens.Count || words.Count > MostMends) return null;

        // A length is no count of rows, whatever stands behind it.
        words = words.FindAll(type => IsUnit(tokens[index].Type) == IsUnit(type) && Fits(tokens, index, 1, type));
        if (words is not [var only]) return null;
        return new Mend($"write `{Words.Spelling(only)}`", LineBuilding.Span(tokens[index]), Words.Spelling(only)!);
    }

    // Leaving a word out nearly always leaves something that can be read, but rarely what was meant; a sign, a doubled word, an article may go.
    private Mend? LeftOut(IReadOnlyList<IToken> tokens, int index, LineBuilding line)
    {
        if (index == tokens.Count) return TrailingComma(tokens);
        if (index == 0) return null;
        var text = line.Text(tokens[index]);
        var isIdle = tokens[index].Type == TurnrowLexer.THE || tokens[index].Type is >= TurnrowLexer.COMMA and <= TurnrowLexer.X
            || text == line.Text(tokens[index - 1]);
        if (!isIdle || !Fits(tokens, index, 1, null)) return null;
        var span = LineBuilding.Span(tokens[index]);
        return new Mend($"leave out `{text}`", TextSpan.FromBounds(tokens[index - 1].StopIndex + 1, span.End), "");
    }

    private Mend? TrailingComma(IReadOnlyList<IToken> tokens)
    {
        var last = tokens.Count - 1;
        return tokens[last].Type is TurnrowLexer.COMMA or TurnrowLexer.SEMICOLON && Fits(tokens, last, 1, null)
            ? new Mend("leave out the sign at the line's end", LineBuilding.Span(tokens[last]), "")
            : null;
    }

    private static bool IsUnit(int type) => type is >= TurnrowLexer.CM and <= TurnrowLexer.YD;

    private bool Fits(IReadOnlyList<IToken> tokens, int index, int left, int? putIn)
    {
        var tried = new List<IToken>(tokens.Count + 1);
        for (var i = 0; i < index; i++) tried.Add(tokens[i]);
        if (putIn is { } type) tried.Add(Made(type));
        for (var i = index + left; i < tokens.Count; i++) tried.Add(tokens[i]);
        return Reads(tried);
    }

    private bool Reads(List<IToken> tokens) => tokens.Count > 0 && parser.Statement(tokens).Error is null;

    // Signs that stand close to the word before them.
    private static bool IsClose(int type) =>
        type is TurnrowLexer.COMMA or TurnrowLexer.SEMICOLON or TurnrowLexer.COLON or TurnrowLexer.CLOSE;

    private static LineToken Made(int type) => new(type, TokenConstants.DefaultChannel, 0, -1);

    private static int IndexOf(IReadOnlyList<IToken> tokens, IToken token)
    {
        for (var i = 0; i < tokens.Count; i++)
        {
            if (ReferenceEquals(tokens[i], token)) return i;
        }

        return tokens.Count;
    }
}
