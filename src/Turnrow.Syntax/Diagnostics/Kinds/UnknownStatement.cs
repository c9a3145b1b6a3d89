using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A line that begins with no word of the notation.</summary>
public static class UnknownStatement
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-line",
        "TR0101",
        Severity.Error,
        """
        Every line begins with a word that says what it is: `row`, `piece`, `straight`, `seam` … This one begins with
        another. Mostly it is a slip of spelling, or the rest of a line that was broken in two: a line goes on in the next after a comma or a
        semicolon, or while a bracket is open. What you want to tell the maker begins with `>`, what is only for yourself with `#`.
        """,
        Coaster.With("strait 7 rows"),
        Coaster.With("straight 7 rows"));

    internal static Diagnostic At(TextSpan span, string word, string? nearest) =>
        new(Kind, span, $"no line begins with `{Quote.Short(word)}`")
        {
            Help = nearest is not null
                ? $"did you mean `{nearest}`?"
                : PrintHabits.AtLineStart(word)
                    ?? "lines begin with words such as `row`, `straight` or `seam`; a line for the maker begins with `>`, a comment with `#`",
            Mends = nearest is null ? [] : [new Mend($"write `{nearest}`", span, nearest)],
        };

    internal static Diagnostic Rest(TextSpan span, string text) =>
        new(Kind, span, $"no line begins with `{Quote.Short(text)}`")
        {
            Help = "a line goes on in the next only after a comma, a semicolon or in an open bracket",
        };

    internal static Diagnostic Foundation(TextSpan span, string word) =>
        new(Kind, span, $"no line begins with `{Quote.Short(word)}`")
        {
            Help = "a foundation reads `chain 32`; or say how many stitches you want, `begin with 30 stitches`, and the chains are worked out",
            Mends = [new Mend("write `chain`", span, "chain")],
        };

    internal static Diagnostic RowWords(TextSpan span, string word) =>
        new(Kind, span, $"no line begins with `{Quote.Short(word)}`")
        {
            Help = "the words of a row stand behind `row:` or `row` and its number",
            Mends = [new Mend("make it the next row", new TextSpan(span.Start, 0), "row: ")],
        };
}
