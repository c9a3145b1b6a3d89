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
        The pattern gives a gauge for more than one stitch, and this line does not say by which of them to count. The difference can be a
        whole size. Name the stitch that these stitches or rows are worked in, right before the word: `count hem is sc stitches for 40
        cm`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            gauge sc: 20 stitches and 22 rows to 10 cm
            count width is stitches for 20 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            gauge sc: 20 stitches and 22 rows to 10 cm
            count width is dc stitches for 20 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, IReadOnlyList<string> stitches, bool rows) =>
        new(Kind, span, $"the pattern has a gauge for {Findings.Join(stitches)}, and this does not say which of them to count by")
        {
            Help = $"name the stitch that is worked there before the word: {OneOf([.. stitches.Select(s => $"`{s} {(rows ? "rows" : "stitches")}`")])}",
        };

    private static string OneOf(IReadOnlyList<string> words) => string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];
}
