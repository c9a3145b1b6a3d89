using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An armhole that is shallower or much deeper than the body's.</summary>
public static class FitArmhole
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-armhole",
        "TR0413",
        Severity.Warning,
        """
        The armhole is held against the body's armhole depth. Shallower than that it cuts in under the arm; by custom it is not more than 7.5 cm
        (3 in) deeper either, since the whole garment then lifts with the arm. An `oversized` fit may be deeper. Nobody publishes a range; this is
        the custom. Change the rows of the armhole.

        Only what a `finished` line states is looked at, half a centimetre is let pass, and where the file states the ease of the measure, that
        goes before the custom. If it is meant, accept it: `accept fit-armhole: "…"` with the reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure armhole-depth is 17.5 (19) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished armhole-depth is 14 dc rows
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure armhole-depth is 17.5 (19) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished armhole-depth is 18 dc rows
            """));
}
