using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Short rows that would turn before one edge in every row.</summary>
public static class ShortRowEvery
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "short-row-every",
        "TR0450",
        Severity.Error,
        """
        Rows go to and fro: one ends at the left edge, the next at the right. So before one edge only every second row can turn, and stitches
        are left for later there `every 2 rows` or less often. Turnrow finds which of the two rows it is.
        """,
        SmallPattern.With("Collar",
            """
            piece collar
              begin with 30 stitches
              row 1 RS: sc across
              shape 6 rows: leave 5 for later at left edge every row
              straight 2 rows
            """),
        SmallPattern.With("Collar",
            """
            piece collar
              begin with 30 stitches
              row 1 RS: sc across
              shape 6 rows: leave 5 for later at left edge every 2 rows
              straight 2 rows
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"only every second row goes to an edge and can turn before it{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write `every 2 rows`",
        };
}
