using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>The lexer that is made of the grammar, asked for one token at a time.</summary>
internal sealed class GeneratedLexer
{
    private readonly LineCharStream _stream;
    private readonly TurnrowLexer _lexer;

    public GeneratedLexer(string text)
    {
        _stream = new LineCharStream(text);
        _lexer = new TurnrowLexer(_stream, TextWriter.Null, TextWriter.Null) { TokenFactory = new LineToken.Factory() };
        _lexer.RemoveErrorListeners();
    }

    /// <summary>The token at a position of a line that ends at <paramref name="end"/>; there is one at every position.</summary>
    public (int Type, int End) At(int start, int end)
    {
        _stream.MoveTo(start, end);
        _lexer.SetInputStream(_stream);
        // Setting a stream takes it back to its beginning, which is that of the text.
        _stream.Seek(start);
        var token = _lexer.NextToken();
        return (token.Type, token.StopIndex + 1);
    }
}
