using System.Globalization;
using System.Text;

namespace Turnrow.Syntax.Diagnostics.Showing;

/// <summary>How text looks on a terminal: what is printed for a character, and how many columns it takes.</summary>
internal static class Shown
{
    private const int TabStop = 4;

    // Blocks that every terminal draws two columns wide: East Asian letters and signs, pictures.
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F), (0x2E80, 0x303E), (0x3041, 0x33FF), (0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xA000, 0xA4CF),
        (0xA960, 0xA97F), (0xAC00, 0xD7A3), (0xF900, 0xFAFF), (0xFE30, 0xFE6F), (0xFF00, 0xFF60), (0xFFE0, 0xFFE6),
        (0x1F300, 0x1F64F), (0x1F680, 0x1F6FF), (0x1F900, 0x1FAFF), (0x20000, 0x3FFFD),
    ];

    /// <summary>A text with everything replaced that would move the cursor, hide or turn round what is printed.</summary>
    public static string Plain(string text)
    {
        var isPlain = true;
        foreach (var c in text) isPlain &= c is >= ' ' and < '\u007F';
        if (isPlain) return text;
        var plain = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length;)
        {
            var cell = CellAt(text, i, plain.Length);
            plain.Append(cell.Text);
            i += cell.Units;
        }

        return plain.ToString();
    }

    /// <summary>What is printed for the character at a position.</summary>
    /// <param name="text">The text.</param>
    /// <param name="position">Where in it.</param>
    /// <param name="column">The column reached, for a tab.</param>
    /// <returns>How many units it has in the text, what is printed, and how many columns that takes.</returns>
    public static (int Units, string Text, int Columns) CellAt(string text, int position, int column)
    {
        var c = text[position];
        if (c == '\t')
        {
            var columns = TabStop - column % TabStop;
            return (1, new string(' ', columns), columns);
        }

        if (c is >= ' ' and < '\u007F') return (1, c.ToString(), 1);
        if (c < ' ') return (1, ((char)('\u2400' + c)).ToString(), 1);
        if (!Rune.TryGetRuneAt(text, position, out var rune)) return (1, "\uFFFD", 1);
        return (rune.Utf16SequenceLength, Printed(rune), Columns(rune));
    }

    private static string Printed(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        _ when rune.Value == '\uFEFF' => "",
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => "\uFFFD",
        _ => rune.ToString(),
    };

    private static int Columns(Rune rune)
    {
        if (rune.Value == '\uFEFF' || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark) return 0;
        foreach (var (first, last) in Wide)
        {
            if (rune.Value >= first && rune.Value <= last) return 2;
        }

        return 1;
    }
}
