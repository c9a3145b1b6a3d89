using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Terms that are neither US nor UK.</summary>
public static class TermsUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "terms-unknown",
        "TR0222",
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
        new(Kind, span, $"there are US terms and UK terms, not `{word}`")
        {
            Help = "write `terms US` if dc is yarn over once and a tall stitch, `terms UK` if dc is the short one",
            Mends = [new Mend("write US", span, "US"), new Mend("write UK", span, "UK")],
        };
}
