using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length to reach, where the edges have different heights.</summary>
public static class EdgeHeights
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-heights",
        "TR0454",
        Severity.Error,
        """
        A length is measured along an edge. Short rows do not reach the edge before which they turn, so here one edge is higher than the other, and
        the line has to say which is meant: `straight to 20 cm at left edge`. After short rows at both edges alike there is nothing to say.
        """,
        SmallPattern.With("Wedge",
            """
            gauge dc: 20 stitches and 10 rows to 10 cm

            piece wedge
              begin with 24 stitches
              row 1 RS: dc across
              shape 4 rows: leave 6 for later at left edge every 2 rows
              straight to 12 cm
            """),
        SmallPattern.With("Wedge",
            """
            gauge dc: 20 stitches and 10 rows to 10 cm

            piece wedge
              begin with 24 stitches
              row 1 RS: dc across
              shape 4 rows: leave 6 for later at left edge every 2 rows
              straight to 12 cm at left edge
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, Rational> right, Func<int, Rational> left) =>
        new(Kind, span, $"the edges have different heights{context.Findings.InSize(sizes[0])}: the right edge {context.Length(right(sizes[0]))}, the left edge {context.Length(left(sizes[0]))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say at which edge it is measured: put `at left edge` or `at right edge` behind the length",
        };
}
