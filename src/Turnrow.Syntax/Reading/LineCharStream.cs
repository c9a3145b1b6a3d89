using Antlr4.Runtime;
using Antlr4.Runtime.Misc;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// The lexer's window on one line of a text. Positions are those of the whole text in UTF-16 units, so that tokens need
/// no translating; beyond the window there is nothing. Characters come folded into the classes that the grammar knows.
/// </summary>
internal sealed class LineCharStream(string text) : ICharStream
{
    private int _start;
    private int _end;

    public int Index { get; private set; }

    public int Size => _end;

    public string SourceName => IntStreamConstants.UnknownSourceName;

    public void MoveTo(int start, int end)
    {
        _start = start;
        _end = end;
        Index = start;
    }

    public void Consume() => Index++;

    public int LA(int i)
    {
        var position = Index + (i < 0 ? i : i - 1);
        return position >= _start && position < _end ? FoldedCharacters.Fold(text[position]) : IntStreamConstants.EOF;
    }

    public int Mark() => -1;

    public void Release(int marker)
    {
    }

    public void Seek(int index) => Index = index;

    public string GetText(Interval interval) =>
        interval.a < 0 || interval.b < interval.a ? "" : text.Substring(interval.a, Math.Min(interval.b + 1, text.Length) - interval.a);
}
