using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A gauge of nothing.</summary>
public static class GaugeZero
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "gauge-zero",
        "TR0224",
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
        new(Kind, span, "a gauge needs numbers above 0")
        {
            Help = "count on the swatch: gauge dc: 19 stitches and 10 rows to 10 cm",
        };
}
