using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A pick-up along no rows at all.</summary>
public static class PickUpNothing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-nothing",
        "TR0352",
        Severity.Error,
        """
        A piece is to be picked up along an edge, and the part of the edge that is named has no rows, so there is nothing to put the hook
        into. Count the rows of that edge, in the sizes named (`turnrow rows` lists them), and leave fewer of them out.

        Tip: where the rows of the sizes differ, say `last 3 rows` rather than `all but first 20 rows`.
        """,
        SmallPattern.With("Bag",
            """
            piece strap
              begin with 6 stitches
              row 1 RS: sc across
              straight 3 rows

            piece tab picked up along strap right edge, all but first 4 rows: 1 sc in each row
              row 2: sc across
            """),
        SmallPattern.With("Bag",
            """
            piece strap
              begin with 6 stitches
              row 1 RS: sc across
              straight 3 rows

            piece tab picked up along strap right edge, all but first 2 rows: 1 sc in each row
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"this part of the edge has no rows{context.Findings.InSizes(sizes)}, so nothing is picked up")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take another part of the edge, or leave fewer rows out",
        };
}
