using Turnrow.Compiler.Grading;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number that gets smaller from one size to the next.</summary>
public static class GradeFalls
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "grade-falls",
        "TR0406",
        Severity.Warning,
        """
        The numbers of a pattern mostly grow with its sizes. This one is smaller in a size than in the size before. Often a digit was hit twice or two numbers changed places, and the garment would fit all sizes but one. If it is right, say so once: `accept grade-falls of hem: "…"`
        with the reason, which stands in your own report and not in the pattern.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M, L
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (54, 45)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M, L
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45, 54)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(Context context, NumbersOverSizes numbers, int at) =>
        new(Kind, numbers.SpanOf(at), $"{GradeNumbers.Subject(numbers)} falls from {GradeNumbers.Of(context, numbers, at - 1)} in {context.Findings.SizeNames[at - 1]} to {GradeNumbers.Of(context, numbers, at)} in {context.Findings.SizeNames[at]}")
        {
            Sizes = [context.Findings.SizeNames[at]],
            Ledger = [GradeNumbers.Row(context, numbers)],
            Help = $"look whether a digit slipped or two numbers changed places; if it is right, accept it with the reason, {GradeNumbers.Acceptance(Kind, numbers)}",
        };
}
