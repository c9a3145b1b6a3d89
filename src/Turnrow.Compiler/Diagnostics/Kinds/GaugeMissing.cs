using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length over a stitch without a gauge.</summary>
public static class GaugeMissing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "gauge-missing",
        "TR0225",
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

    internal static Diagnostic At(TextSpan span, string? stitch) =>
        new(Kind, span, stitch is null ? "the pattern has no gauge, so a length can't become a count" : $"there is no gauge for {stitch}, so a length can't become a count of it")
        {
            Help = $"swatch it and say so at the top: gauge {stitch ?? "dc"}: 19 stitches and 10 rows to 10 cm",
        };
}
