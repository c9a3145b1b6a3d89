using Antlr4.Runtime;
using Antlr4.Runtime.Misc;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>Where a line stops to be one of the notation, and what could have stood there.</summary>
internal sealed record LineError(IToken Token, IntervalSet Expected);

/// <summary>The generated parser, run on one line at a time.</summary>
internal sealed class LineParser
{
    private readonly LineTokens _stream = new();
    private readonly FirstError _firstError = new();
    private readonly TurnrowParser _parser;

    public LineParser()
    {
        _parser = new TurnrowParser(_stream, TextWriter.Null, TextWriter.Null) { ErrorHandler = _firstError, BuildParseTree = false };
        _parser.RemoveErrorListeners();
    }

    /// <summary>The line's statement, or what is wrong.</summary>
    public (TurnrowParser.StatementContext? Statement, LineError? Error) Statement(IReadOnlyList<IToken> tokens)
    {
        var (line, error) = Run(tokens, 0, static parser => parser.line());
        return (line?.said, error);
    }

    /// <summary>The claim that begins at a token and ends the line; null if there is something wrong with it.</summary>
    public TurnrowParser.ClaimContext? Claim(IReadOnlyList<IToken> tokens, int first) =>
        Run(tokens, first, static parser => parser.claimLine()).Context?.claimed;

    private (T? Context, LineError? Error) Run<T>(IReadOnlyList<IToken> tokens, int first, Func<TurnrowParser, T> rule)
        where T : ParserRuleContext
    {
        _parser.TokenStream = _stream;
        _stream.Load(tokens, first);
        try
        {
            return (rule(_parser), null);
        }
        catch (ParseCanceledException)
        {
            return (null, new LineError(_stream.LT(1), _firstError.Expected));
        }
    }
}
