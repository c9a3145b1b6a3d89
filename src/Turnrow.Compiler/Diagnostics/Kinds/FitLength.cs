using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A garment or a sleeve that is longer or shorter than its name says.</summary>
public static class FitLength
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fit-length",
        "TR0418",
        Severity.Warning,
        """
        A length is held against the body's measure of the same name: `hip-length` and `tunic-length` are by the published length chart (the waist
        and 15 or 28 cm, 6 or 11 in, below it; for children 5 or 15 cm, 2 or 6 in), `back-waist-length` and `arm-length` by the body table,
        `length` by a measure of your own. More than 5 cm (2 in) off, it is another length. Change the rows, or give it the name that it has.

        Only what a `finished` line states is looked at; half a centimetre is let pass. If it is meant, accept it: `accept fit-length: "…"` with
        the reason, which stands in your own report.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure hip-length is 58 (58.5) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished hip-length is 50 cm
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure hip-length is 58 (58.5) cm

            piece back
              begin with 84 (94) stitches
              row 1 RS: dc across
              straight 19 rows
            finished hip-length is 58.9 cm
            """));
}
