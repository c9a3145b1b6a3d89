using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that makes nothing.</summary>
public static class RowEmpty
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-empty",
        "TR0319",
        Severity.Error,
        """
        After this row no stitch is left on which the piece could go on. Either all stitches of the row below are skipped or left, or there was
        nothing to work into: a foundation of 2 chains gives no dc at all, since the turning chain takes 3. Begin with more, or work some of the stitches. A piece that is
        finished here ends with the row before.

        Tip: `begin with 20 stitches` finds the chains for you, under every turning chain.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              chain 2
              row 1 RS: dc across
              row 2: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              chain 22
              row 1 RS: dc across
              row 2: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, int row) =>
        new(Kind, span, Invariant($"{RowName.Of(piece, sizes[0], row)} of {piece.Name} makes no stitch{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = row == 1
                ? "begin with more stitches or chains: what the turning chain takes gives no stitch"
                : "work some of the stitches of the row below instead of skipping or leaving them all",
        };
}
