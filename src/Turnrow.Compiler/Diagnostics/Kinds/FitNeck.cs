using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A neck that does not go over the head.</summary>
public static class FitNeck
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-neck",
        "TR0417",
        Severity.Warning,
        """
        A garment that is put on over the head has to let it through: the whole way round the neck is held against `head` of the body table. Say
        that it opens, with buttons, laces or a slit, `finished neck-opening is …, opens`; or how far the edge gives, `stretches by 15 %`, as you
        measured it on the swatch. Otherwise make the neck wider or deeper.

        Only what a `finished` line states is looked at; half a centimetre is let pass. If it is meant, accept it: `accept fit-neck: "…"` with the
        reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure head is 57 cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished neck-opening is 48 cm, stretches by 10 %
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure head is 57 cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished neck-opening is 48 cm, opens
            """));
}
