using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A gauge in repeats of something that is no stitch pattern.</summary>
public static class GaugeRepeats
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "gauge-repeats",
        "TR0464",
        Severity.Error,
        """
        Repeats are counted where a fabric is worked in a stitch pattern: `gauge shells: 3 repeats and 8 rows to 10 cm`. A plain stitch has stitches. The
        stitch pattern has to be defined above its gauge.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 3 repeats and 8 rows to 10 cm

            piece scarf
              begin with 25 stitches
              row 1: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 8 rows to 10 cm

            piece scarf
              begin with 25 stitches
              row 1: dc across
            """));

    internal static Diagnostic Swatch(TextSpan span, string name) => new(Kind, span, $"{name} is no stitch pattern, so it has no repeats")
    {
        Help = $"count stitches, `swatch {name}: 24 stitches and 12 rows weigh 5.8 g`; or define the stitch pattern",
    };

    internal static Diagnostic At(TextSpan span, string name) => new(Kind, span, $"{name} is no stitch pattern, so it has no repeats")
    {
        Help = $"count stitches, `gauge {name}: 19 stitches and 10 rows to 10 cm`; or define the stitch pattern above this line",
    };
}
