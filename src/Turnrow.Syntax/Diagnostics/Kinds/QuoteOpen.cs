using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A text in quotes that is not closed.</summary>
public static class QuoteOpen
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "quote",
        "TR0106",
        Severity.Error,
        """
        A text in quotes begins and ends with a quotation mark in the same line. Straight and curly ones serve alike.
        A quotation mark can't stand inside such a text; write inches as `in`.
        """,
        Coaster.With("row 2: dc across", "skill \"easy\n"),
        Coaster.With("row 2: dc across", "skill \"easy\"\n"));

    internal static Diagnostic At(TextSpan span, string text, char before)
    {
        if (char.IsAsciiDigit(before))
        {
            return new Diagnostic(Kind, new TextSpan(span.Start, 1), "a quotation mark is no unit, and this text has none at its end")
            {
                Help = "write `in` for inches: `4 in`",
                Mends = [new Mend("write `in`", new TextSpan(span.Start, 1), " in")],
            };
        }

        var end = span.Start + text.TrimEnd().Length;
        return new Diagnostic(Kind, TextSpan.FromBounds(span.Start, end), "this text has no quotation mark at its end")
        {
            Help = "close it with `\"`",
            Mends = [new Mend("close it at the line's end", new TextSpan(end, 0), "\"")],
        };
    }
}
