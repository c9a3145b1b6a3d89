using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A bracket without times and without a place.</summary>
public static class GroupNeither
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "bracket-alone",
        "TR0231",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this bracket says neither how often nor where")
        {
            Help = "write how often behind it (`3 times`, `across`, `until 2 remain`), or where it goes (`in next st`)",
        };
}
