using System.Buffers;
using System.Text;

namespace Turnrow.Syntax.Text;

/// <content>Reading text from a file's bytes.</content>
public sealed partial class SourceText
{
    private const char Replacement = '\uFFFD';

    // In the order of the text.
    private int[] _wrongLines = [];

    /// <summary>The first place of each line that held bytes which are no UTF-8; <see cref="SyntaxReader"/> reports them.</summary>
    public IReadOnlyList<TextSpan> WrongBytes { get; private init; } = [];

    /// <summary>
    /// The text of a file. It has to be UTF-8; bytes that are not become a replacement character and are noted in
    /// <see cref="WrongBytes"/>. A byte order mark stays in the text.
    /// </summary>
    public static SourceText FromBytes(string fileName, ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder(bytes.Length);
        var wrong = new List<int>();
        Span<char> unit = stackalloc char[2];
        while (bytes.Length > 0)
        {
            var plain = bytes.IndexOfAnyExceptInRange((byte)0, (byte)0x7F);
            if (plain != 0)
            {
                var ascii = plain < 0 ? bytes : bytes[..plain];
                text.Append(Encoding.ASCII.GetString(ascii));
                bytes = bytes[ascii.Length..];
                continue;
            }

            if (Rune.DecodeFromUtf8(bytes, out var rune, out var taken) == OperationStatus.Done)
            {
                text.Append(unit[..rune.EncodeToUtf16(unit)]);
            }
            else
            {
                wrong.Add(text.Length);
                text.Append(Replacement);
            }

            bytes = bytes[taken..];
        }

        var source = new SourceText(fileName, text.ToString());
        if (wrong.Count == 0) return source;
        var first = source.FirstOfEachLine(wrong);
        return new SourceText(fileName, source.Text) { WrongBytes = first, _wrongLines = [.. first.Select(span => source.PositionOf(span.Start).Line)] };
    }

    /// <summary>True if the character there stands for bytes that are no text.</summary>
    internal bool HasWrongByteAt(int position) =>
        _wrongLines.Length > 0 && Text[position] == Replacement && Array.BinarySearch(_wrongLines, PositionOf(position).Line) >= 0;

    private List<TextSpan> FirstOfEachLine(List<int> positions)
    {
        var first = new List<TextSpan>();
        var lastLine = 0;
        foreach (var position in positions)
        {
            var line = PositionOf(position).Line;
            if (line != lastLine) first.Add(new TextSpan(position, 1));
            lastLine = line;
        }

        return first;
    }
}
