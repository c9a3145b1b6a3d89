using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A schedule that needs more rows than there are.</summary>
public static class ScheduleTooLong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "schedule-too-long",
        "TR0330",
        Severity.Error,
        """
        The shaping says how often it is done and every how many rows, and together that needs more rows than the line has. The last
        decreases or increases would never be worked, and the edge would end too wide or too narrow. Each is worked in the last row of its
        interval: every 4 rows 3 times needs 12 rows. Give more rows, shape oftener, or fewer times.

        Tip: `shape 10 rows evenly to 14, at both edges` finds the intervals for you.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              shape 10 rows: dec 1 at both edges every 4 rows 3 times
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              shape 12 rows: dec 1 at both edges every 4 rows 3 times
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, long> needed, Func<int, int> there) =>
        new(Kind, span, Invariant($"this needs {Counted.Rows(needed(sizes[0]))}, and there are {there(sizes[0])}{context.Findings.InSizes(sizes, i => (needed(i), there(i)))}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = context.Findings.Unlike(sizes, i => Invariant($"needs {needed(i)}, has {there(i)}")),
            Help = "give it more rows, shape oftener, or fewer times",
        };
}
