using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows after the yarn is cut.</summary>
public static class AfterFastenOff
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "after-fasten-off",
        "TR0328",
        Severity.Error,
        """
        `fasten off` cuts the yarn, so nothing can follow it in the same piece. Move the line behind the last row. If the piece really goes
        on with new yarn, let another piece begin from it: `piece tip from strap: 6 stitches at right edge`.
        """,
        SmallPattern.With("Strap",
            """
            piece strap
              begin with 6 stitches
              row 1 RS: dc across
              fasten off
              straight 4 rows
            """),
        SmallPattern.With("Strap",
            """
            piece strap
              begin with 6 stitches
              row 1 RS: dc across
              straight 4 rows
              fasten off
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"the yarn of {piece} is cut before this line")
        {
            Help = "put `fasten off` behind the last row, or go on with new yarn in a piece of its own that begins from this one",
        };
}
