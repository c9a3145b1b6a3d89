using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length that could be counted by several gauges.</summary>
public static class GaugeUnclear
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "gauge-unclear",
        "TR0226",
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

    internal static Diagnostic At(TextSpan span, IReadOnlyList<string> stitches, bool rows) =>
        new(Kind, span, $"the pattern has several gauges: {Findings.Join(stitches)}")
        {
            Help = $"say which: {stitches[0]} {(rows ? "rows" : "stitches")} for …",
        };
}
