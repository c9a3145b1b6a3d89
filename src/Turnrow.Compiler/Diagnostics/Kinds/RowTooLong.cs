using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row with more than can be laid out.</summary>
public static class RowTooLong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-too-long",
        "TR0308",
        Severity.Error,
        """
        This row would have more than ten million stitches. No one will work it, so there must be a slip in a number: in this row, in the
        row below, or in the number of stitches that the piece begins with. Look for a digit too many.
        """,
        SmallPattern.With("Blanket",
            """
            piece blanket
              begin with 1000000 stitches
              row 1 RS: dc across
              row 2: (20 dc in next) across
            """),
        SmallPattern.With("Blanket",
            """
            piece blanket
              begin with 100 stitches
              row 1 RS: dc across
              row 2: (20 dc in next) across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "no row can be as long as this one would be")
        {
            Help = "look for a digit too many, here or in the rows below",
        };
}
