namespace Turnrow.Syntax.Text;

/// <summary>A file's text with its lines. Positions are UTF-16 units.</summary>
public sealed partial class SourceText
{
    private const char ByteOrderMark = '\uFEFF';

    private readonly int[] _lineStarts;

    /// <param name="fileName">The name to be shown in messages.</param>
    /// <param name="text">The whole text, byte order mark included if it has one.</param>
    public SourceText(string fileName, string text)
    {
        FileName = fileName;
        Text = text;
        _lineStarts = FindLineStarts(text);
    }

    /// <summary>The name to be shown in messages.</summary>
    public string FileName { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Number of lines; a text that ends with a line end has an empty last one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>Line and column of a position, both from 1. As in an editor, a byte order mark takes no column.</summary>
    public (int Line, int Column) PositionOf(int position)
    {
        var index = Array.BinarySearch(_lineStarts, position);
        var line = index >= 0 ? index : ~index - 1;
        var mark = line == 0 && position > 0 && Text[0] == ByteOrderMark ? 1 : 0;
        return (line + 1, position - _lineStarts[line] + 1 - mark);
    }

    /// <summary>The span of a line, from 1, without its line end.</summary>
    public TextSpan LineSpan(int line)
    {
        var start = _lineStarts[line - 1];
        var end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        while (end > start && Text[end - 1] is '\n' or '\r') end--;
        return TextSpan.FromBounds(start, Math.Max(start, end));
    }

    /// <summary>The text of a span.</summary>
    public string ToString(TextSpan span) => Text.Substring(span.Start, span.Length);

    private static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'))) starts.Add(i + 1);
        }

        return [.. starts];
    }
}
