using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>The mirror image of a piece that is joined to another as it is worked.</summary>
public static class JoinMirrored
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "join-mirrored",
        "TR0429",
        Severity.Error,
        """
        The rows of this piece are joined to another one at their ends. The mirror image of such a row would be joined at its beginning, before there is
        anything to join. Write the second piece out: the rows that end at the other edge are then those of the other side, so that it begins, as a
        rule, one row later.
        """,
        SmallPattern.With("Cuff",
            """
            piece back
              begin with 12 stitches
              row 1 RS: sc across
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to back right edge
              row 2: sc across
            piece other is band mirrored
            seam other last row with back last row, easing
            """),
        SmallPattern.With("Cuff",
            """
            piece back
              begin with 12 stitches
              row 1 RS: sc across
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to back right edge
              row 2: sc across
            piece other
              begin with 5 stitches
              row 1 RS: sc across
              row 2: sc across, join to back left edge
            """));

    internal static Diagnostic At(TextSpan span, string original, string other) =>
        new(Kind, span, $"{original} is joined to {other} as it is worked, so it has no mirror image")
        {
            Help = "write the second piece out, and join the rows that end at its other edge",
        };
}
