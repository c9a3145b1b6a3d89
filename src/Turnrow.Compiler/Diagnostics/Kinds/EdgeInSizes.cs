using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An edge name that not all sizes of a line have at the same edge.</summary>
public static class EdgeInSizes
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-in-sizes",
        "TR0365",
        Severity.Error,
        """
        A line for some sizes may give an edge a name, `for L: from here both edges are armhole`; the other sizes then go on with the name they
        have. A line for all sizes can't say `at armhole` where some sizes have no edge of that name, or have it at the other side. Say the
        line for the sizes that have it, name the edge in the others too, or say `right edge` or `left edge`.
        """,
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for L: right edge is neck
              for S to M: left edge is neck
              shape 4 rows: dec 1 at neck every 2 rows
              straight 4 rows
            """),
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for L: right edge is neck
              for S to M: left edge is neck
              for L: shape 4 rows: dec 1 at neck every 2 rows
              for S to M: shape 4 rows: dec 1 at neck every 2 rows
              straight 4 rows
            """));

    internal static Diagnostic At(Context context, NameSyntax name, int[] sizes, Hand hand) =>
        new(Kind, name.Span, $"`{name.Text}` is not the {(hand == Hand.Right ? "right" : "left")} edge{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say the line for the sizes that have the name there, or say `right edge` or `left edge`",
        };
}
