using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Shaping;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Shaping in a stitch pattern that has no rule for it, or that does not come out.</summary>
public static class PatternShape
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-shape",
        "TR0462",
        Severity.Error,
        """
        A stitch pattern comes out over whole repeats only: one stitch more or less at an edge leaves a part of a repeat, and what that part is to be
        is yours to say. `shape 20 rows, in shells, edges in dc: inc 1 at both edges every 2 rows` works it in plain dc; a whole repeat joins the
        pattern when an edge is wide enough for one, and leaves it when the edge is used up, in a row where the pattern then stands as if it had
        always been that wide. Where there is no such row in time, the shaping is refused: shape more slowly, keep more stitches at the edges, or
        work a plain row first and shape in plain rows.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern moss over multiple of 2
              row 1: (sc, dc) across

            piece scarf
              begin with 24 stitches
              straight 4 rows, in moss
              shape 20 rows: dec 1 at both edges every 4 rows
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern moss over multiple of 2
              row 1: (sc, dc) across

            piece scarf
              begin with 24 stitches
              straight 4 rows, in moss
              shape 20 rows, edges in sc: dec 1 at both edges every 4 rows
            """));

    internal static Diagnostic NoRule(TextSpan span, StitchPattern pattern) =>
        new(Kind, span, $"what stands beside the whole repeats of {pattern.Name} is not said")
        {
            Help = "say in which stitch: `shape 20 rows, edges in dc: …`; or work a plain row first, and shape in plain rows",
        };

    internal static Diagnostic NoPattern(TextSpan span) =>
        new(Kind, span, "this line has edges beside a stitch pattern, and the last row is of none")
        {
            Help = "say which: `straight 8 rows, in shells, edges in dc`",
        };

    internal static Diagnostic Rounds(TextSpan span, string name) =>
        new(Kind, span, $"{name} is worked in rounds here, and a round has no edges")
        {
            Help = "shape in plain rounds between two bands of the pattern",
        };

    internal static Diagnostic Steps(TextSpan span, string name) =>
        new(Kind, span, $"beside {name} the edges grow and shrink by single stitches, and this schedule leaves or adds several at once")
        {
            Help = "write `inc` or `dec`, or shape in plain rows",
        };

    internal static Diagnostic Evenly(TextSpan span, string name) =>
        new(Kind, span, $"nothing can be spread over rows of {name}: its repeats have no stitch to spare, and they would not come out above each other")
        {
            Help = "shape at the edges, `inc 1 at both edges`, or in plain rows between two bands of the pattern",
        };

    internal static Diagnostic Stuck(Context context, TextSpan span, PieceState piece, int size, EdgedPattern pattern, int row) =>
        new(Kind, span, Invariant($"{RowName.Of(piece, size, piece.Builders[size].RowCount + row)} of {piece.Name} can't be shaped in {pattern.Pattern.Name}{context.Findings.InSize(size)}: its edge has too few stitches, and no whole repeat can leave the pattern in time"))
        {
            Help = "shape more slowly or in other rows, begin with more stitches at the edges, or work a plain row first and shape in plain rows",
        };
}
