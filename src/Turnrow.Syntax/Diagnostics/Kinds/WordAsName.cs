using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A word of the notation where a name should stand.</summary>
public static class WordAsName
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "word-as-name",
        "TR0110",
        Severity.Error,
        """
        Nearly every word can be the name of a piece, an edge, a count or a measure, `back` and `neck` included. A few can't, since the notation uses
        them within lines: among them `row`, `rows`, `stitches`, `first`, `last`, `in`, `to`, `for`, `with`, `across` and `until`. With a hyphen
        and something more they are names as good as any: `row-1`, `last-row`.
        """,
        Coaster.With("row 2: dc across", "count row is 20\n"),
        Coaster.With("row 2: dc across", "count row-1 is 20\n"));

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` is a word of the notation and can't be a name")
        {
            Help = $"call it `{word}-1`, or anything else",
            Mends = [new Mend($"call it `{word}-1`", span, word + "-1")],
        };
}
