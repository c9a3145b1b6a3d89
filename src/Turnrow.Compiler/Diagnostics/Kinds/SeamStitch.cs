using Turnrow.Compiler.Joins;
using Turnrow.Syntax.Diagnostics;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam in which a row meets one of another stitch.</summary>
public static class SeamStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-stitch",
        "TR0375",
        Severity.Warning,
        """
        The edges have as many rows as each other, but not as many of each stitch: somewhere a row of sc, say, meets a row of hdc. Those are
        not equally high, so one edge is longer than the other and the seam pulls. Mostly a row stands in another stitch than its partner, or
        one is missing and another too many. Compare the pieces row by row with `turnrow rows`. If the edge is to be eased, say `, easing`.
        """,
        SmallPattern.With("Cushion",
            """
            turn sc: ch 1 does not count

            piece front
              begin with 12 stitches
              row 1 RS: sc across
              row 2: sc across
              row 3: dc across
              straight 7 rows

            piece back
              begin with 12 stitches
              row 1 RS: sc across
              row 2: dc across
              straight 8 rows

            seam front right edge with back left edge
            seam front left edge with back right edge, easing
            """),
        SmallPattern.With("Cushion",
            """
            turn sc: ch 1 does not count

            piece front
              begin with 12 stitches
              row 1 RS: sc across
              row 2: sc across
              row 3: dc across
              straight 7 rows

            piece back
              begin with 12 stitches
              row 1 RS: sc across
              row 2: sc across
              row 3: dc across
              straight 7 rows

            seam front right edge with back left edge
            seam front left edge with back right edge
            """));

    internal static Diagnostic At(Context context, BoundWalk first, BoundWalk second, int[] sizes, RowsThatMeet met) =>
        new(Kind, first.Span.To(second.Span), Invariant($"row {met.First} of {first.Piece.Name} is in {context.Word(met.FirstStitch)}, and it meets row {met.Second} of {second.Piece.Name}, which is in {context.Word(met.SecondStitch)}{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "look whether a row is missing or in another stitch in one of the two; if the edges are to be eased, say `, easing`",
        };
}
