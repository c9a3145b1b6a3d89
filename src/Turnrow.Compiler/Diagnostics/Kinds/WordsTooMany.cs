using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words behind a stitch that mean nothing there.</summary>
public static class WordsTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "words-too-many",
        "TR0236",
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

    internal static Diagnostic At(TextSpan span, string stitch) =>
        new(Kind, span, $"after `{stitch}` there can be one number or one name of a count")
        {
            Help = "put a comma between two things to do",
        };
}
