using Antlr4.Runtime;
using Antlr4.Runtime.Misc;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Reading;

/// <summary>Says what is wrong with a line: one diagnostic, the one nearest to the cause.</summary>
internal sealed class LineFaults(LineParser parser)
{
    private readonly MendFinder _mends = new(parser);

    /// <summary>What is seen without the parser: its first word, single tokens, brackets.</summary>
    public Diagnostic? BeforeParsing(IReadOnlyList<IToken> tokens, LineBuilding line)
    {
        var first = tokens[0];
        if (!StatementStarts.Begins(first.Type) && first.Type is not (TurnrowLexer.JUNK or TurnrowLexer.WRONG_QUOTE))
            return Unknown(tokens, line);
        return TokenChecks.Fault(tokens, 0, line) ?? Brackets.Fault(tokens) ?? (StatementStarts.Begins(first.Type) ? null : Unknown(tokens, line));
    }

    /// <summary>What the parser met.</summary>
    public Diagnostic WhileParsing(IReadOnlyList<IToken> tokens, LineError error, LineBuilding line)
    {
        var expected = ExpectedWords.Of(error.Expected);
        var example = Examples.For(tokens);
        if (error.Token.Type == TokenConstants.EOF)
        {
            var last = tokens[^1];
            if (tokens is [.., { Type: TurnrowLexer.CLOSE }, { Type: TurnrowLexer.WORD }]
                && Spelling.Nearest(line.Text(last), ["across", "around"]) is { } meant)
                return UnexpectedWord.Misspelt(LineBuilding.Span(last), line.Text(last), meant);
            if (tokens.Count > 2 && tokens[^1].Type == TurnrowLexer.JOIN) return LineUnfinished.AtJoin(LineBuilding.Span(last), TextSpan.FromBounds(LineBuilding.Span(tokens[^2]).Start, LineBuilding.Span(last).End), tokens[^2].Type == TurnrowLexer.COMMA);
            return LineUnfinished.At(
                LineBuilding.Span(last).End, line.Text(last), expected, example, _mends.Find(tokens, error, line));
        }

        var span = LineBuilding.Span(error.Token);
        var word = line.Text(error.Token);
        if (error.Token.Type == TurnrowLexer.PROSE) return UnexpectedWord.Prose(new TextSpan(span.Start, 1));
        if (Words.IsKeyword(error.Token.Type) && tokens[0].Type == TurnrowLexer.SIZES) return SizeWord.At(span, word);
        if (error.Token.Type == TurnrowLexer.UNTIL && tokens[0].Type == TurnrowLexer.STRIPES) return UnexpectedWord.StripesUntil(span, word);
        if (Words.IsKeyword(error.Token.Type) && WantsName(error.Expected)) return WordAsName.At(span, word);
        if (IsOperator(error.Token.Type) && error.Expected.Contains(TurnrowLexer.INC)) return UnexpectedWord.SumBeforeStitch(span, word);
        return Habit(tokens, error.Token, line) ?? UnexpectedWord.At(span, word, expected, example, _mends.Find(tokens, error, line));
    }

    // What print says in other words: `in next 5`, `skip next st`, `8 inches`.
    private static Diagnostic? Habit(IReadOnlyList<IToken> tokens, IToken wrong, LineBuilding line)
    {
        var (first, second) = (TokenConstants.InvalidType, TokenConstants.InvalidType);
        foreach (var token in tokens)
        {
            if (ReferenceEquals(token, wrong)) break;
            (first, second) = (second, token.Type);
        }

        var (span, word) = (LineBuilding.Span(wrong), line.Text(wrong));
        if (SecondWord(tokens, wrong, line) is { } name) return name;
        if (second == TurnrowLexer.WITH && wrong.Type == TurnrowLexer.WORD && WithBehind(tokens, wrong, line) is { } with) return with;
        if (second == TurnrowLexer.IN && IsOrdinal(word)) return UnexpectedWord.ChainFromHook(span, word);
        if (second == TurnrowLexer.NUMBER && word.Equals("tog", StringComparison.OrdinalIgnoreCase)) return UnexpectedWord.Together(span, word);
        if (second == TurnrowLexer.NUMBER && PrintHabits.Unit(word) is { } unit) return UnexpectedWord.Unit(span, word, unit);
        if (second == TurnrowLexer.COMMA && wrong.Type == TurnrowLexer.WITH && tokens[0].Type == TurnrowLexer.PIECE) return UnexpectedWord.YarnOfPiece(span, word);
        if (second != TurnrowLexer.NEXT) return null;
        if (first == TurnrowLexer.SKIP_WORD) return UnexpectedWord.SkipNext(span, word);
        return first == TurnrowLexer.IN && wrong.Type == TurnrowLexer.NUMBER ? UnexpectedWord.SeveralNext(span, word) : null;
    }

    // `sc 3 with navy`: the comma before it is forgotten, and what follows reads as what is spread over the row.
    private static Diagnostic? WithBehind(IReadOnlyList<IToken> tokens, IToken yarn, LineBuilding line)
    {
        for (var at = 2; at < tokens.Count; at++)
        {
            if (ReferenceEquals(tokens[at], yarn)) return UnexpectedWord.WithBehind(LineBuilding.Span(tokens[at - 1]), line.Text(yarn), new TextSpan(tokens[at - 2].StopIndex + 1, 0));
        }

        return null;
    }

    // `measure strap length is …`, `piece back panel`, `with dark blue`.
    private static Diagnostic? SecondWord(IReadOnlyList<IToken> tokens, IToken wrong, LineBuilding line)
    {
        if (wrong.Type != TurnrowLexer.WORD || tokens is not [{ Type: TurnrowLexer.MEASURE or TurnrowLexer.COUNT or TurnrowLexer.PIECE or TurnrowLexer.YARN or TurnrowLexer.WITH }, { Type: TurnrowLexer.WORD } first, var second, ..])
            return null;
        if (!ReferenceEquals(second, wrong) || Spelling.Nearest(line.Text(wrong), ["is", "from", "picked"]) is not null) return null;
        // A yarn's quality may be what stands there, without its quotes.
        if (tokens[0].Type == TurnrowLexer.YARN && tokens is not [_, _, _, { Type: TurnrowLexer.QUOTED }, ..]) return null;
        var between = TextSpan.FromBounds(LineBuilding.Span(first).End, LineBuilding.Span(wrong).Start);
        return UnexpectedWord.SecondWord(LineBuilding.Span(wrong), line.Text(wrong), line.Text(first), between);
    }

    // `4th`, as in print's "in 4th ch from hook".
    private static bool IsOrdinal(string word) =>
        word.Length > 2 && word[..^2].All(char.IsAsciiDigit) && word[^2..] is "st" or "nd" or "rd" or "th";

    private static bool IsOperator(int type) =>
        type is TurnrowLexer.PLUS or TurnrowLexer.MINUS or TurnrowLexer.X or TurnrowLexer.OVER_SIGN;

    // Where a name is given or used alone; behind a number or where a number could stand as well, something else is wrong.
    private static bool WantsName(IntervalSet expected) =>
        expected.Contains(TurnrowLexer.WORD) && !expected.Contains(TurnrowLexer.NUMBER) && !expected.Contains(TurnrowLexer.FRACTION)
        && !expected.Contains(TokenConstants.EOF) && !expected.Contains(TurnrowLexer.COMMA) && !expected.Contains(TurnrowLexer.COLON);

    private Diagnostic Unknown(IReadOnlyList<IToken> tokens, LineBuilding line)
    {
        var span = LineBuilding.Span(tokens[0]);
        var word = line.Text(tokens[0]);
        if (tokens[0].Type != TurnrowLexer.WORD && !Words.IsKeyword(tokens[0].Type)) return UnknownStatement.Rest(span, word);
        var nearest = Spelling.Nearest(word, NotationWords.Statements.Select(statement => statement.Text));
        if (nearest is not null) return UnknownStatement.At(span, word, nearest);
        if (tokens[0].Type == TurnrowLexer.CH && tokens.Count == 2) return UnknownStatement.Foundation(span, word);
        return _mends.IsRow(tokens) ? UnknownStatement.RowWords(span, word) : UnknownStatement.At(span, word, null);
    }
}
