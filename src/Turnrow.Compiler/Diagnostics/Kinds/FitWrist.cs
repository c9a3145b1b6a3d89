using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A cuff that does not go over the hand, or does not fit the wrist.</summary>
public static class FitWrist
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-wrist",
        "TR0415",
        Severity.Warning,
        """
        A cuff goes over the hand, unless it opens with a button or a slit; it is held against `hand` of the body table, the hand round the
        knuckles without the thumb. Say that it opens, `finished wrist is …, opens`, or how far it gives, `stretches by 20 %`. Where you state a
        `measure wrist`, the cuff is also held against that: by custom it is 0 to 10 cm (4 in) wider.

        Only what a `finished` line states is looked at; half a centimetre is let pass. If it is meant, accept it: `accept fit-wrist: "…"` with
        the reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure hand is 19 cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished wrist is 30 stitches
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure hand is 19 cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished wrist is 30 stitches, stretches by 15 %
            """));
}
