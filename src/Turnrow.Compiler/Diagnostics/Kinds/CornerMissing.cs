using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>No corner comes any more.</summary>
public static class CornerMissing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "corner-missing",
        "TR0430",
        Severity.Error,
        """
        The row goes to a corner, or into one, and there is none ahead in the row below. A corner begins with `mark corner` behind the stitch
        or the space that the marker goes into; from then on each row carries it up by itself. Either no row has marked one, or those that
        there are lie behind you in this row already: then work on to the end, `dc across`.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: (dc to corner, 3 dc in corner) 2 times, dc across
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, 3 dc in corner, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, string word, bool marked) =>
        new(Kind, span, $"`{word}` finds no corner ahead{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = marked
                ? $"the corners of the {RowName.Next(piece, sizes[0])} below are worked already: work the rest without one, `dc {RowName.ToItsEnd(piece, sizes[0])}`"
                : $"place the corner in an earlier {RowName.Next(piece, sizes[0])}, with `mark corner` behind the stitch that the marker goes into",
        };
}
