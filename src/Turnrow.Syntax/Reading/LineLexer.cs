using Antlr4.Runtime;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Reading;

/// <summary>Makes the tokens of one line at a time, as the grammar says. Together they are the whole text.</summary>
internal sealed class LineLexer
{
    /// <summary>Longer lines are not read: nobody typed them.</summary>
    public const int LongestLine = 20_000;

    private const char ByteOrderMark = '\uFEFF';

    private readonly string _text;
    private readonly EasyTokens _easy;
    private readonly List<Token> _tokens;
    private readonly List<IToken> _meaningful = [];
    private GeneratedLexer? _generated;
    private int _position;

    public LineLexer(string text)
    {
        _text = text;
        // A token is about three letters long.
        _tokens = new List<Token>(Math.Min(text.Length * 2 / 5, LongestLine));
        _easy = new EasyTokens(text);
        if (text.StartsWith(ByteOrderMark)) Take(TokenKind.ByteOrderMark, 1);
    }

    /// <summary>All tokens so far, white space, comments and line ends included.</summary>
    public IReadOnlyList<Token> Tokens => _tokens;

    /// <summary>Reads the next line; false at the end of the text. The tokens of the line before are gone then.</summary>
    public bool Next(out PhysicalLine line)
    {
        line = default;
        if (_position == _text.Length) return false;
        var length = _text.AsSpan(_position).IndexOfAny('\r', '\n');
        var content = new TextSpan(_position, length < 0 ? _text.Length - _position : length);
        line = content.Length > LongestLine ? Unread(content) : Read(content);
        TakeLineEnd();
        return true;
    }

    private PhysicalLine Read(TextSpan content)
    {
        _meaningful.Clear();
        var hasComment = false;
        while (_position < content.End)
        {
            var (type, end) = _easy.At(_position, content.End) ?? (_generated ??= new GeneratedLexer(_text)).At(_position, content.End);
            if (type is not (TurnrowLexer.WHITE_SPACE or TurnrowLexer.COMMENT)) _meaningful.Add(new LineToken(type, TokenConstants.DefaultChannel, _position, end - 1));
            hasComment |= type == TurnrowLexer.COMMENT;
            Take(KindOf(type), end - _position);
        }

        return new PhysicalLine(content, _meaningful, hasComment, TooLong: false);
    }

    private PhysicalLine Unread(TextSpan content)
    {
        Take(TokenKind.Junk, content.Length);
        return new PhysicalLine(content, [], HasComment: false, TooLong: true);
    }

    private void TakeLineEnd()
    {
        if (_position == _text.Length) return;
        var both = _text[_position] == '\r' && _position + 1 < _text.Length && _text[_position + 1] == '\n';
        Take(TokenKind.LineEnd, both ? 2 : 1);
    }

    private void Take(TokenKind kind, int length)
    {
        _tokens.Add(new Token(kind, new TextSpan(_position, length)));
        _position += length;
    }

    private static TokenKind KindOf(int type) => type switch
    {
        TurnrowLexer.WHITE_SPACE => TokenKind.WhiteSpace,
        TurnrowLexer.COMMENT => TokenKind.Comment,
        TurnrowLexer.PROSE => TokenKind.Prose,
        TurnrowLexer.PICTURE_ROW => TokenKind.Picture,
        TurnrowLexer.WORD => TokenKind.Word,
        TurnrowLexer.QUOTED or TurnrowLexer.WRONG_QUOTE => TokenKind.Quoted,
        TurnrowLexer.JUNK => TokenKind.Junk,
        >= TurnrowLexer.COMMA and <= TurnrowLexer.X => TokenKind.Sign,
        >= TurnrowLexer.NUMBER and <= TurnrowLexer.DOTTED or TurnrowLexer.WRONG_COMMA => TokenKind.Number,
        _ => TokenKind.Keyword,
    };
}
