using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A back that is much narrower or wider between the armholes than the body's.</summary>
public static class FitCrossBack
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-cross-back",
        "TR0416",
        Severity.Warning,
        """
        The back between the armholes is held against the body's cross back, from shoulder to shoulder. By custom it is at most 2.5 cm (1 in)
        narrower and 5 cm (2 in) wider; wider, the armholes hang down the arms, as those of a dropped shoulder are meant to. An `oversized` fit
        may be wider. Nobody publishes a range; this is the custom.

        Only what a `finished` line states is looked at, half a centimetre is let pass, and where the file states the ease of the measure, that
        goes before the custom. If it is meant, accept it: `accept fit-cross-back: "…"` with the reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure cross-back is 38 (40.5) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished cross-back is 60 stitches
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure cross-back is 38 (40.5) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished cross-back is 72 stitches
            """));
}
