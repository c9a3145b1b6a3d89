using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches left or chains added that no row follows.</summary>
public static class StepUnworked
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "step-unworked",
        "TR0334",
        Severity.Error,
        """
        `leave` and `add` make no row of their own: they say how the next row begins and ends. Here no row follows in the piece, so nothing
        would come of the line. Write the row behind it, or take the line out. (`add … one row apart` needs two rows behind it.)
        """,
        SmallPattern.With("Purse",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: dc across
              leave 4 at both edges
            """),
        SmallPattern.With("Purse",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: dc across
              leave 4 at both edges
              row: dc across
            """));

    internal static Diagnostic At(TextSpan span, bool adds, string piece) =>
        new(Kind, span, $"no row of {piece} follows in which {(adds ? "these chains are worked" : "these stitches are left")}")
        {
            Help = "write the row behind this line, or take the line out",
        };
}
