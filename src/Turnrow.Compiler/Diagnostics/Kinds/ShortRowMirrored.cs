using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Short rows given in words, in a piece that is mirrored.</summary>
public static class ShortRowMirrored
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "short-row-mirrored",
        "TR0453",
        Severity.Error,
        """
        A row turns where it ends. In the mirror image, right-side rows still run from the right edge to the left, so the stitches to be left would
        lie where the row begins, with the yarn at the edge: a maker works such a piece with the turns one row later. A `shape` line or a `leave … for
        later at` line says at which edge stitches wait and lets each piece find its own rows. In a fabric without sides, `mirrored, turned over` keeps
        the rows as they are. Rows in words behind the turns have to be `dc across`, which holds from either end.
        """,
        SmallPattern.With("Shoulders",
            """
            piece back
              begin with 24 stitches
              row 1 RS: dc across

            piece right-half from back: 12 stitches at right edge
              row 1: dc across
              row 2: dc until 4 remain, leave 4 for later
              row 3: dc across
              straight 2 rows

            piece left-half is right-half mirrored
            """),
        SmallPattern.With("Shoulders",
            """
            piece back
              begin with 24 stitches
              row 1 RS: dc across

            piece right-half from back: 12 stitches at right edge
              row 1: dc across
              leave 4 for later at left edge
              straight 4 rows

            piece left-half is right-half mirrored
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string original) =>
        new(Kind, span, $"the short rows of {original} can't be mirrored as they are written: they would turn where a row begins{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"in {original}, say at which edge stitches wait: `leave 4 for later at left edge` before the row, or in a `shape` line; or write `mirrored, turned over`",
        };
}
