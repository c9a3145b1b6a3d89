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
        A piece is picked up along an edge, but the part of the edge that is named has no rows: nothing would be picked up. Count the
        rows of that edge in this size (`turnrow rows` shows them) and take fewer away.
        """,
        """
        notation 1
        terms US
        sizes One
        turn sc: ch 1 does not count

        piece strap
          begin with 6 stitches
          row 1 RS: sc across
          straight 3 rows

        piece tab picked up along strap right edge, all but first 4 rows: 1 sc in each row
          straight 4 rows
        """,
        """
        notation 1
        terms US
        sizes One
        turn sc: ch 1 does not count

        piece strap
          begin with 6 stitches
          row 1 RS: sc across
          straight 3 rows

        piece tab picked up along strap right edge, all but first 1 rows: 1 sc in each row
          straight 4 rows
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"this part of the edge has no rows{context.Findings.InSizes(sizes)}, so nothing is picked up")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take another part of the edge, or leave fewer rows out",
        };
}
