using Antlr4.Runtime;

namespace Turnrow.Syntax.Reading;

/// <summary>A token with nothing but its type and place: half the size of the runtime's own, which keeps what lines never need.</summary>
internal sealed class LineToken(int type, int channel, int start, int stop) : IToken
{
    public int Type { get; set; } = type;

    public int Channel { get; } = channel;

    public int StartIndex { get; } = start;

    public int StopIndex { get; } = stop;

    public int TokenIndex => -1;

    public int Line => 0;

    public int Column => 0;

    public string Text => "";

    public ITokenSource? TokenSource => null;

    public ICharStream? InputStream => null;

    /// <summary>Gives the lexer such tokens.</summary>
    internal sealed class Factory : ITokenFactory
    {
        public IToken Create(
            Tuple<ITokenSource, ICharStream> source, int type, string text, int channel, int start, int stop, int line, int column) =>
            new LineToken(type, channel, start, stop);

        public IToken Create(int type, string text) => new LineToken(type, TokenConstants.DefaultChannel, 0, -1);
    }
}
