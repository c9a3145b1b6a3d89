using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A gauge over a length that nobody measures.</summary>
public static class GaugeSpan
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "gauge-span",
        "TR0378",
        Severity.Warning,
        """
        A swatch is counted over 10 cm or over 4 in, which are nearly the same. This line counts over 10 in, over 4 cm, or over less than 1 in,
        and all lengths of the pattern would come out two and a half times too large or too small, or worse. Look at the unit. If the swatch was
        really counted so, leave it.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 in
            count hem is stitches for 20 in

            piece scarf
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 4 in
            count hem is stitches for 8 in

            piece scarf
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string length) =>
        new(Kind, span, $"a gauge is counted over 10 cm or 4 in, and this one over {length}")
        {
            Help = "look whether the unit is right; if the swatch was counted so, leave it",
        };
}
