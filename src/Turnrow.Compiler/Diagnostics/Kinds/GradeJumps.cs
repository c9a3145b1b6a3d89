using Turnrow.Compiler.Grading;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A step between two sizes that is far out of line.</summary>
public static class GradeJumps
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "grade-jumps",
        "TR0407",
        Severity.Warning,
        """
        The numbers of a pattern mostly grow with its sizes. This one takes a step between two sizes that is more than three times as large as the steps beside it and twice as large as all others. Often a digit was hit twice or two numbers changed places, and the garment would fit all sizes but one. If it is right, say so once: `accept grade-jumps of hem: "…"`
        with the reason, which stands in your own report and not in the pattern.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M, L, 1X
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45, 50, 95)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M, L, 1X
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45, 50, 55)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(Context context, NumbersOverSizes numbers, int at) =>
        new(Kind, numbers.SpanOf(at), $"{GradeNumbers.Subject(numbers)} goes from {GradeNumbers.Of(context, numbers, at - 1)} in {context.Findings.SizeNames[at - 1]} to {GradeNumbers.Of(context, numbers, at)} in {context.Findings.SizeNames[at]}, a step far larger than the others")
        {
            Sizes = [context.Findings.SizeNames[at]],
            Ledger = [GradeNumbers.Row(context, numbers)],
            Help = $"look whether a digit slipped; if it is right, accept it with the reason, {GradeNumbers.Acceptance(Kind, numbers)}",
        };
}
