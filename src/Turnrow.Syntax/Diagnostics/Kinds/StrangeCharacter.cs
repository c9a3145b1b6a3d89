using System.Globalization;
using System.Text;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A character that the notation does not use.</summary>
public static class StrangeCharacter
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "strange-character",
        "TR0114",
        Severity.Error,
        """
        Outside of quotes, comments and lines that begin with `>`, a pattern is made of letters, digits and the signs `, ; : ( ) = + - / x`. Text from a
        word processor may bring others that look alike, such as a long dash or a character that can't be seen.
        """,
        Coaster.With("row 2: dc 10 & dc 10"),
        Coaster.With("row 2: dc 10, dc 10"));

    private const string Dashes = "\u2010\u2011\u2012\u2013\u2014\u2212";
    private const string SingleQuotes = "'\u2018\u2019\u00AB\u00BB";

    // Characters that look like a sign, and below each the sign that was most likely meant.
    private const string LookAlikes = "[{]}\u00F7\u2044\u2215*\u2715\u00B7\u201A\u060C\uFF0C\uFF1A\uFF1B\uFF08\uFF09_";
    private const string Signs = "(())///xxx,,,:;()-";

    /// <param name="span">The character.</param>
    /// <param name="text">The same, as text.</param>
    /// <param name="before">What stands before it.</param>
    /// <param name="after">What stands behind it.</param>
    internal static Diagnostic At(TextSpan span, string text, char before, char after)
    {
        if (text == "." && char.IsAsciiDigit(after))
            return With(span, "a number can't begin with its point", "write a 0 before it, as in 0.5", new Mend("write `0.`", span, "0."));
        if (IsUnseen(text))
            return With(
                span, $"a character that can't be seen stands here ({Number(text)})", "delete it, or type the line anew",
                new Mend("leave it out", span, ""));
        var message = $"`{text}` is no sign of the notation";
        if (Dashes.Contains(text, StringComparison.Ordinal))
            return char.IsAsciiDigit(before) && char.IsAsciiDigit(after)
                ? With(span, message, "from one row to another is written `2 to 5`, a difference `5 - 2`", new Mend("write `to`", span, " to "))
                : With(span, message, "write the short one, `-`", new Mend("write `-`", span, "-"));
        if (SingleQuotes.Contains(text, StringComparison.Ordinal))
            return new Diagnostic(Kind, span, message) { Help = "quotation marks are written `\"`" };
        if (text == "*" && (after == '(' || char.IsLetter(after)))
            return new Diagnostic(Kind, span, message) { Help = "a repeat stands in brackets, and behind them how often: `(dc 4, inc) 6 times`, `(dc 4, inc) across`" };
        var likeness = LookAlikes.IndexOf(text, StringComparison.Ordinal);
        if (likeness < 0)
            return With(span, message, "leave it out; free text goes in quotes, behind `>` or behind `#`", new Mend("leave it out", span, ""));
        var meant = Signs[likeness].ToString();
        return With(span, message, $"did you mean `{meant}`?", new Mend($"write `{meant}`", span, meant));
    }

    private static Diagnostic With(TextSpan span, string message, string help, Mend mend) =>
        new(Kind, span, message) { Help = help, Mends = [mend] };

    private static bool IsUnseen(string text)
    {
        if (!Rune.TryGetRuneAt(text, 0, out var rune)) return true;
        return Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.PrivateUse
            or UnicodeCategory.OtherNotAssigned or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
    }

    private static string Number(string text)
    {
        var value = Rune.TryGetRuneAt(text, 0, out var rune) ? rune.Value : text[0];
        return string.Create(CultureInfo.InvariantCulture, $"U+{value:X4}");
    }
}
