using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>The name of a size that needs quotes.</summary>
public static class SizeWord
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "size-name",
        "TR0118",
        Severity.Error,
        """
        A size's name is letters, digits, or digits and letters: `Small`, `4`, `1X`. Every other stands in quotes: `"6-9 months"`, `"32-34"`.
        """,
        Coaster.With("row 2: dc across", "sizes 0-3 months, 6 months\n"),
        Coaster.With("row 2: dc across", "sizes \"0-3 months\", \"6 months\"\n"));

    internal static Diagnostic At(TextSpan span, string text) =>
        new(Kind, span, $"the size `{Quote.Short(text)}` needs quotes")
        {
            Help = $"write `\"{Quote.Short(text)}\"`",
            Mends = [new Mend($"write `\"{Quote.Short(text)}\"`", span, $"\"{text}\"")],
        };
}
