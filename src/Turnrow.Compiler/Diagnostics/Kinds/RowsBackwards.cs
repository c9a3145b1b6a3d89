using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows from a later to an earlier one.</summary>
public static class RowsBackwards
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rows-backwards",
        "TR0312",
        Severity.Error,
        """
        Rows are named from the lower number to the higher, `rows 2 to 9`. Here the second number lies before the first. If the numbers
        are names or come from arithmetic, the second may be too small in some sizes only. Exchange them or correct the wrong one.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              rows 1 to 4: dc across
              rows 5 to 2: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              rows 1 to 4: dc across
              rows 5 to 7: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] first, int?[] last) =>
        new(Kind, span, Invariant($"rows {first[sizes[0]]} to {last[sizes[0]]} run backwards{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Invariant($"the second number has to be {first[sizes[0]]} or more{context.Findings.InSize(sizes[0])}"),
        };
}
