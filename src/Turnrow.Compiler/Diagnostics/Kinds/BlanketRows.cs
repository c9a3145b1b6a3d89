using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows of a blanket that can't lie on each other.</summary>
public static class BlanketRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "blanket-rows",
        "TR0525",
        Severity.Error,
        """
        `5 and 4 across` says how many motifs the rows have by turns, from the lowest up. Hexagons lie in rows set off by half a motif: a row that has one less lies
        between the motifs of the one below it, one that has one more stands out over it at both ends, and one of as many at its right end alone. So
        the two numbers are the same or differ by one. Squares lie in columns too, and all their rows have as many: `5 across`.
        """,
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (2 dc, ch 1, mark corner) 6 times in ring
              fasten off
            blanket throw of tile: 5 and 3 across, 4 down, join in each corner
            """),
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (2 dc, ch 1, mark corner) 6 times in ring
              fasten off
            blanket throw of tile: 5 and 4 across, 4 down, join in each corner
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Piece made, string motif) => MotifSides.Count(made) == 4
        ? new(Kind, span, $"{motif} has four sides, and rows of squares have as many motifs as each other{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say one number, `5 across`; rows that are set off are of motifs with six sides",
        }
        : new(Kind, span, $"rows that are set off by half a motif have as many motifs as each other, or one more or less by turns{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "say `5 across`, `5 and 4 across` or `4 and 5 across`; the first number is the lowest row's",
        };
}
