using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A division by zero.</summary>
public static class DivisionByZero
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "division-by-zero",
        "TR0215",
        Severity.Error,
        """
        Something is divided by 0. Stitches can be shared out among 2 or 3 panels, but not among none, so there is no number that could
        stand here. Look at what stands behind the stroke: if it is a name, one of its sizes may be 0, or it comes from two numbers that
        cancel each other out.
        """,
        SmallPattern.With("Blanket",
            """
            count panels is 0
            count width is 120 / panels

            piece panel
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Blanket",
            """
            count panels is 4
            count width is 120 / panels

            piece panel
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes) =>
        new(Kind, span, $"this is 0{findings.InSizes(sizes)}, and nothing can be divided by 0")
        {
            Sizes = findings.Names(sizes),
            Help = "a piece can be shared out among 1, 2 or more, not among none: give another number",
        };
}
