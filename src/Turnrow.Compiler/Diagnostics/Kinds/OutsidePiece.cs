using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line that belongs in a piece stands outside one.</summary>
public static class OutsidePiece
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "outside-piece",
        "TR0228",
        Severity.Error,
        """
        Rows, edges and shaping belong to a piece, and no piece is open here. That is so above the first `piece` line, and behind a `seam`
        line, which closes the piece before it. Write a line that begins with `piece` above, or move this line up into the piece that it
        belongs to. Lines below it that are outside as well are not told one by one.
        """,
        SmallPattern.With("Coaster",
            """
            begin with 20 stitches
            row 1 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this line belongs in a piece, and no piece begins above it")
        {
            Help = "begin one with a line above it, such as `piece back`",
        };
}
