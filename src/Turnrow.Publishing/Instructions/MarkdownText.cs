using System.Text;

namespace Turnrow.Publishing.Instructions;

/// <summary>A designer's words as plain text in Markdown: nothing in them is taken for a mark.</summary>
internal static class MarkdownText
{
    private const string Marks = "\\`*_[]<>#|~&";

    /// <summary>The text with its marks escaped, on one line.</summary>
    public static string Of(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var character in text)
        {
            if (char.IsControl(character))
            {
                escaped.Append(' ');
                continue;
            }

            if (Marks.Contains(character, StringComparison.Ordinal)) escaped.Append('\\');
            escaped.Append(character);
        }

        return escaped.ToString();
    }
}
