using System.Text;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Showing;

/// <summary>A line of the source as it stands, and the marks that go under it.</summary>
/// <param name="Source">What is printed of the line.</param>
/// <param name="Marks">Spaces and <c>^</c>, so that they stand under the marked words.</param>
internal readonly record struct Excerpt(string Source, string Marks)
{
    private const char Cut = '…';
    private const int WidestLine = 110;

    // How much is looked at of a line of any length, before and in all; enough to fill the window.
    private const int UnitsBefore = 500;
    private const int UnitsInAll = 1500;

    /// <summary>One line with the marked part of it.</summary>
    /// <param name="source">The text.</param>
    /// <param name="line">The line, from 1.</param>
    /// <param name="marked">What to mark; it may reach beyond the line, or be a place without length.</param>
    public static Excerpt Of(SourceText source, int line, TextSpan marked)
    {
        var whole = source.LineSpan(line);
        var from = marked.Start < whole.Start ? FirstWord(source.Text, whole) : Math.Min(marked.Start, whole.End);
        var to = Math.Clamp(marked.End, from, whole.End);
        var start = Math.Max(whole.Start, from - UnitsBefore);
        var part = TextSpan.FromBounds(start, Math.Min(whole.End, start + UnitsInAll));
        var (columns, printed) = Layout(source.Text, part);
        var first = columns[from - start];
        var width = Math.Max(1, columns[Math.Min(to, part.End) - start] - first);
        return Window(printed, first, width, start > whole.Start, part.End < whole.End);
    }

    // The column at which each unit of the line begins, and what is printed in each column.
    private static (int[] Columns, List<string> Printed) Layout(string text, TextSpan span)
    {
        var columns = new int[span.Length + 1];
        var printed = new List<string>(span.Length);
        for (var i = 0; i < span.Length;)
        {
            var cell = Shown.CellAt(text, span.Start + i, printed.Count);
            for (var unit = 0; unit < cell.Units && i + unit < span.Length; unit++) columns[i + unit] = printed.Count;
            if (cell.Columns == 0 && printed.Count > 0) printed[^1] += cell.Text;
            for (var column = 0; column < cell.Columns; column++)
                printed.Add(cell.Text[0] == ' ' ? " " : column == 0 ? cell.Text : "");
            i += cell.Units;
        }

        columns[span.Length] = printed.Count;
        return (columns, printed);
    }

    private static int FirstWord(string text, TextSpan line)
    {
        var i = line.Start;
        while (i < line.End && char.IsWhiteSpace(text[i])) i++;
        return i;
    }

    // The marked words in the middle, or their beginning where they are wider than the window.
    private static Excerpt Window(List<string> printed, int first, int width, bool cutBefore, bool cutBehind)
    {
        var start = 0;
        if (printed.Count > WidestLine)
        {
            var before = Math.Max(0, (WidestLine - width) / 2);
            start = Math.Clamp(first - before, 0, Math.Min(first, printed.Count - 1));
            start = Math.Min(start, Math.Max(0, printed.Count - WidestLine));
        }

        var end = Math.Min(printed.Count, start + WidestLine);
        var text = new StringBuilder();
        cutBefore |= start > 0;
        if (cutBefore) text.Append(Cut);
        for (var column = start; column < end; column++) text.Append(printed[column]);
        if (cutBehind || end < printed.Count) text.Append(Cut);
        var marks = new string('^', Math.Min(width, Math.Max(1, end - first)));
        return new Excerpt(text.ToString().TrimEnd(), new string(' ', first - start + (cutBefore ? 1 : 0)) + marks);
    }
}
