using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Something is done at an edge by a row that does not reach it, or a row turns over the foundation.</summary>
public static class ShortRowEdge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "short-row-edge",
        "TR0451",
        Severity.Error,
        """
        A short row turns before the edge, and the row after it starts at the turn: neither of them reaches the edge. So they can't increase,
        decrease, leave stitches for good or add chains there. Do that in a row that reaches the edge, before the short rows or after them. The
        first row over a foundation goes over all of it: nothing is there yet that could wait.
        """,
        SmallPattern.With("Shawl collar",
            """
            piece collar
              begin with 30 stitches
              row 1 RS: dc across
              row 2: dc across
              row 3: dc until 6 remain, leave 6 for later
              leave 2 at left edge
              row 4: dc across
              row 5: dc across
            """),
        SmallPattern.With("Shawl collar",
            """
            piece collar
              begin with 30 stitches
              row 1 RS: dc across
              row 2: dc across
              row 3: dc until 6 remain, leave 6 for later
              row 4: dc across
              leave 2 at left edge
              row 5: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFaultKind kind, int row, Hand start, bool atStart) =>
        new(Kind, span, kind == RowFaultKind.TurnInFirstRow
            ? $"the first row over a foundation goes over all of it{context.Findings.InSizes(sizes)}"
            : Invariant($"row {row} {(atStart ? "starts at a turn, where stitches wait," : "turns before its end")} and does not reach the {Edge(atStart ? start : start.Opposite())} edge, at which something is to be done{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = kind == RowFaultKind.TurnInFirstRow
                ? "work a row over the whole foundation, and turn in a later one"
                : "increase, decrease, leave or add there in a row that reaches the edge",
        };

    private static string Edge(Hand hand) => hand == Hand.Right ? "right" : "left";
}
