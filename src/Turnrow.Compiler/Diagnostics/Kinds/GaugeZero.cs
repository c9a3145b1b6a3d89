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
        A gauge of no stitches, no rows or no length can't be: whatever is measured by it would have no end. Lay the swatch flat, count
        the stitches and rows over 10 cm (or 4 in) in its middle, and write what you counted.

        Tip: the two counts may go over different lengths, `gauge dc: 18 stitches to 4 in, 11 rows to 3 in`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 0 stitches and 9 rows to 10 cm
            count width is stitches for 20 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            count width is stitches for 20 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a gauge is counted over a swatch, so its numbers are above 0")
        {
            Help = "write what you counted: `gauge dc: 19 stitches and 10 rows to 10 cm`",
        };
}
