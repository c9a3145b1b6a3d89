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
        A length becomes stitches or rows by the gauge of the stitch that it is worked in, and this pattern gives none for it. A gauge of
        another stitch will not do: 10 rows of dc are about twice as high as 10 rows of sc. Make a swatch in that stitch, measure it, and
        write a `gauge` line at the top.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              straight to 150 cm
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            gauge sc: 18 stitches and 20 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              straight to 150 cm
            """));

    internal static Diagnostic At(TextSpan span, string? stitch) =>
        new(Kind, span, stitch is null ? "the pattern has no gauge, so a length can't become a count" : $"there is no gauge for {stitch}, so a length can't become a count of it")
        {
            Help = $"make a swatch and write at the top what it measures, such as `gauge {stitch ?? "dc"}: 19 stitches and 10 rows to 10 cm`",
        };

    internal static Diagnostic Finished(TextSpan span, string piece, string stitch) =>
        new(Kind, span, $"{piece} has rows of {stitch}, and there is no gauge for {stitch}, so what it measures is not known")
        {
            Help = $"make a swatch and write at the top what it measures, such as `gauge {stitch}: 19 stitches and 10 rows to 10 cm`",
        };

    internal static Diagnostic Sample(TextSpan span, string piece, string stitch) =>
        new(Kind, span, $"{piece} is worked in {stitch}, and there is no gauge for it to hold this against")
        {
            Help = $"make a swatch and write at the top what it measures, such as `gauge {stitch}: 19 stitches and 10 rows to 10 cm`",
        };
}
