using Antlr4.Runtime;
using Antlr4.Runtime.Misc;

namespace Turnrow.Syntax.Reading;

/// <summary>The tokens of one logical line as the parser takes them; behind the last one the file seems to end.</summary>
internal sealed class LineTokens : ITokenStream
{
    private IReadOnlyList<IToken> _tokens = [];
    private IToken _end = new LineToken(TokenConstants.EOF, TokenConstants.DefaultChannel, 0, -1);

    public int Index { get; private set; }

    public int Size => _tokens.Count;

    public string SourceName => IntStreamConstants.UnknownSourceName;

    // The parser asks for it only where it would put tokens in.
    public ITokenSource TokenSource { get; } = new ListTokenSource([]);

    /// <summary>Gives the parser other tokens, at least one, from <paramref name="first"/> on.</summary>
    public void Load(IReadOnlyList<IToken> tokens, int first = 0)
    {
        _tokens = tokens;
        Index = first;
        var end = tokens[^1].StopIndex + 1;
        _end = new LineToken(TokenConstants.EOF, TokenConstants.DefaultChannel, end, end - 1);
    }

    public IToken Get(int i) => i < _tokens.Count ? _tokens[i] : _end;

    public IToken LT(int k) => Get(Index + (k < 0 ? k : k - 1));

    public int LA(int i) => LT(i).Type;

    public void Consume() => Index++;

    public int Mark() => -1;

    public void Release(int marker)
    {
    }

    public void Seek(int index) => Index = index;

    public string GetText(Interval interval) => "";

    public string GetText() => "";

    public string GetText(RuleContext ctx) => "";

    public string GetText(IToken start, IToken stop) => "";
}
