using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A division by zero.</summary>
public static class DivisionByZero
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "division-by-zero",
        "TR0215",
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

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes) =>
        new(Kind, span, $"divided by 0{findings.InSizes(sizes)}")
        {
            Sizes = findings.Names(sizes),
            Help = "nothing can be shared out among none; give another number here",
        };
}
