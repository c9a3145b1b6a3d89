using Turnrow.Compiler.Joins;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam whose edges are not equally long.</summary>
public static class SeamLength
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-length",
        "TR0350",
        Severity.Error,
        """
        The two edges of this seam are not equally long: row-ends meet row for row, stitches meet stitch for stitch, and one edge has some
        over. Sewn together the longer one would pucker. Look first whether a piece has a row too many or too few. If a slit is meant,
        leave rows open: `all but last 2 rows`. If one edge is to be eased into the other, as a sleeve cap into its armhole, say `,
        easing`.
        """,
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 7 rows

            seam front right edge with back left edge: 2 sc in each row
            """),
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 7 rows

            seam front right edge, all but last 2 rows, with back left edge: 2 sc in each row
            """));

    internal static Diagnostic At(Context context, IReadOnlyList<BoundWalk> first, IReadOnlyList<BoundWalk> second, int[] sizes, Func<int, Seam> of)
    {
        var one = of(sizes[0]);
        return new(Kind, first[0].Span.To(second[^1].Span), $"{Pieces(first)} {Has(first)} {Of(one.WholeFirst)} along this seam, and {Pieces(second)} {Has(second)} {Of(one.WholeSecond)}{context.Findings.InSizes(sizes, Lengths)}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = context.Findings.Unlike(sizes, Lengths),
            Help = IsMixed(one) ? "stitches meet stitches and rows meet rows; say `, easing`, and the two lengths are weighed by the gauge" : Open(first, second, one) + "make one piece longer or shorter, or say `, easing` if one edge is to be eased into the other",
        };

        string Lengths(int size) => $"{Of(of(size).WholeFirst)} to {Of(of(size).WholeSecond)}";
    }

    private static string Pieces(IReadOnlyList<BoundWalk> edge) => string.Join(" and ", edge.Select(static w => w.Piece.Name).Distinct());

    private static string Has(IReadOnlyList<BoundWalk> edge) => edge.Select(static w => w.Piece.Name).Distinct().Count() > 1 ? "have" : "has";

    private static bool IsMixed(Seam seam) =>
        !seam.GoesOn && (seam.First.RowEnds == 0) != (seam.Second.RowEnds == 0) && (seam.First.Stitches == 0) != (seam.Second.Stitches == 0);

    // Where only rows differ, the longer piece can leave some open.
    private static string Open(IReadOnlyList<BoundWalk> first, IReadOnlyList<BoundWalk> second, Seam seam)
    {
        var more = seam.First.RowEnds - seam.Second.RowEnds;
        if (seam.GoesOn || more == 0 || seam.First.Stitches != seam.Second.Stitches) return string.Empty;
        return $"leave {Counted.Rows(Math.Abs(more))} of {(more > 0 ? first : second)[0].Piece.Name} open (`, all but last {Counted.Rows(Math.Abs(more))}`), ";
    }

    private static string Of(IReadOnlyList<JoinSide> edge) => edge is [{ Stretches: [{ Kind: StretchKind.Side } side] } only] ? OfSide(only.Piece, side) : (Seam.RowEnds(edge), Seam.Stitches(edge)) switch
    {
        (var rows, 0) => Counted.Rows(rows),
        (0, var stitches) => Counted.Stitches(stitches),
        var (rows, stitches) => $"{Counted.Rows(rows)} and {Counted.Stitches(stitches)}",
    };

    private static string OfSide(Piece piece, Stretch side)
    {
        var stitches = MotifSides.PlacesOf(piece, side).CountWhere(static p => p.IsStitch);
        var spaces = side.Count - stitches;
        return $"{Counted.Stitches(stitches)}{(spaces == 0 ? string.Empty : $" and {Counted.Spaces(spaces)}")} from corner to corner";
    }
}
