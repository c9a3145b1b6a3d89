using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches for each corner of a walk, and there is none, or they have no middle.</summary>
public static class PickUpCorner
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-corner",
        "TR0442",
        Severity.Error,
        """
        `3 sc in each corner` speaks of the corners of a walk: the end of a last row or of a foundation, where the walk turns to the row-ends of
        the same piece or comes from them, and the places of a last row that are marked as corners. The middle stitch there is the corner of
        the next row, so their number is odd. `picked up around` has one where its end meets its beginning, too; `picked up along` has an edge there.
        """,
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 20 stitches
              row 1 RS: sc across
              straight 19 rows

            piece border picked up along blanket right edge: 1 sc in each row, 3 sc in each corner
              row 2: sc across
            """),
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 20 stitches
              row 1 RS: sc across
              straight 19 rows

            piece border picked up along blanket right edge and blanket last row: 1 sc in each row, 1 sc in each st, 3 sc in each corner
              row 2: sc to corner, 3 sc in corner, sc across
            """));

    internal static Diagnostic None(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"the walk turns at no corner{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "a corner is where a last row or a foundation meets the row-ends of the same piece; leave this out, or go on round the corner",
        };

    internal static Diagnostic Even(Context context, TextSpan span, int[] sizes, Func<int, int> count, string stitch) =>
        new(Kind, span, Invariant($"{count(sizes[0])} stitches in a corner have no middle one for the next row's corner{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"write an odd number, `3 {stitch} in each corner`",
        };

    internal static Diagnostic Full(Context context, TextSpan span, int[] sizes, int corners, int each, int all, string stitch) =>
        new(Kind, span, Invariant($"{corners} {(corners == 1 ? "corner takes" : "corners take")} {corners} × {each} = {corners * (long)each} {stitch}, and of {all} in all none is left for the edges{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "the number in all has the corners' stitches in it: write a larger one, or fewer in each corner",
        };
}
