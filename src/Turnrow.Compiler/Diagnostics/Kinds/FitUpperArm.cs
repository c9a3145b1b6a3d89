using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A sleeve that is narrower or much wider than the upper arm.</summary>
public static class FitUpperArm
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-upper-arm",
        "TR0414",
        Severity.Warning,
        """
        The sleeve at its widest is held against the upper arm. It can't be narrower, unless it stretches (`finished upper-arm is …, stretches by
        10 %`), and by custom it is not more than 15 cm (6 in) wider, but for an `oversized` fit. Nobody publishes a range; this is the custom.
        Change the stitches of the sleeve.

        Only what a `finished` line states is looked at, half a centimetre is let pass, and where the file states the ease of the measure, that
        goes before the custom. If it is meant, accept it: `accept fit-upper-arm: "…"` with the reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure upper-arm is 26 (28) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished upper-arm is 44 stitches
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure upper-arm is 26 (28) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished upper-arm is 56 stitches
            """));
}
