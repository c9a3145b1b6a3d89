using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A swatch of nothing.</summary>
public static class SwatchZero
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "swatch-zero",
        "TR0412",
        Severity.Error,
        """
        A swatch has stitches, rows and a weight, and none of them can be 0: what a stitch weighs is the weight divided by stitches and rows.
        Work at least 20 stitches and 10 rows, and weigh them on a scale that shows tenths of a gram.
        """,
        SmallPattern.With("Scarf",
            """
            swatch dc: 20 stitches and 10 rows weigh 0 g

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            swatch dc: 20 stitches and 10 rows weigh 4.2 g

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a swatch needs stitches, rows and a weight, none of them 0 and none beyond measure")
        {
            Help = "count its stitches and rows, weigh it, and write what you found",
        };
}
