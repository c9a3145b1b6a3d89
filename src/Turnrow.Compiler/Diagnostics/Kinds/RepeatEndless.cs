using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat that uses up nothing.</summary>
public static class RepeatEndless
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-endless",
        "TR0309",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` uses up no stitches, so it would never come to the end of the row")
        {
            Help = "say how many times, or work or skip a stitch in it: (dc, ch 1, skip 1) across",
        };
}
