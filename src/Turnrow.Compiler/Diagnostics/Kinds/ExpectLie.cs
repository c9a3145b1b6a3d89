using System.Globalization;
using Turnrow.Fabric.Solids;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rounds that do not lie as expected.</summary>
public static class ExpectLie
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "expect-lie",
        "TR0474",
        Severity.Error,
        """
        Work lies flat if it grows, round by round, by as many stitches as the way round it grows. For a circle, and for the two ends of an oval, that is 2 x
        pi x the height of a round, divided by the width of a stitch; for a square 8 x, a triangle 10.4 x, a hexagon 6.9 x that height by that width, since
        a corner lies further out than a side: corners are those that have markers. A half circle in rows takes half of a circle. Growth is what a round
        has more than the round before, so a tube grows by nothing. With less the edge is too short and the piece cups, as a bowl or a hat does; with more
        it ruffles. Yarn gives way a little: from 84 in 100 to 120 in 100 of that number still block flat (common practice, no source; the customary 6 sc, 8
        hdc and 12 dc a round lie within it). Rows with open ends that do not begin in a ring lie flat up to a whole turn. Change the growth, or say what
        the piece is to do.
        """,
        SmallPattern.With("Coaster",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece coaster
              begin with 6 stitches
              round 1: sc around
              round 2: sc inc 4 evenly
              expect coaster lies flat
            """),
        SmallPattern.With("Coaster",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece coaster
              begin with 6 stitches
              round 1: sc around
              round 2: sc inc 6 evenly
              expect coaster lies flat
            """));

    internal static Diagnostic At(Context context, ExpectLieStatement expect, int[] sizes, Func<int, RoundGrowth> growth)
    {
        var first = growth(sizes[0]);
        var lies = first.IsFlat ? "lies flat" : first.Stitches < first.Needed ? "cups" : "ruffles";
        var each = first.Shape is FlatShape.HalfCircle or FlatShape.HalfPolygon or FlatShape.Fan ? "row" : "round";
        return new(Kind, expect.Span, Invariant($"{expect.Piece.Text} {lies}{context.Findings.InSize(sizes[0])}: it grows by {Number(first.Stitches)} stitches a {each}, and {Named(first)} lies flat with {Number(first.Needed)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. sizes.Length > 1 ? [context.Findings.Each(sizes, i => Number(growth(i).Stitches))] : Array.Empty<string>(), Formula(first, each)],
            Help = Invariant($"change what is increased a {each}, or say how it is to lie: lies flat, cups, ruffles"),
        };
    }

    private static string Named(RoundGrowth growth) => growth switch
    {
        { Shape: FlatShape.Oval } => "an oval",
        { Shape: FlatShape.Polygon, Corners: 3 } => "a triangle",
        { Shape: FlatShape.Polygon, Corners: 4 } => "a square",
        { Shape: FlatShape.Polygon, Corners: 6 } => "a hexagon",
        { Shape: FlatShape.Polygon, Corners: 8 } => "an octagon",
        { Shape: FlatShape.Polygon } => Invariant($"a shape of {growth.Corners} corners"),
        { Shape: FlatShape.HalfCircle } => "a half circle",
        { Shape: FlatShape.HalfPolygon, Corners: 1 } => "half a square",
        { Shape: FlatShape.HalfPolygon } => Invariant($"half a shape of {2 * (growth.Corners + 1)} corners"),
        { Shape: FlatShape.Fan } => "a whole turn",
        _ => "a circle",
    };

    private static string Formula(RoundGrowth growth, string each)
    {
        var factor = growth.Shape switch
        {
            FlatShape.Polygon => Invariant($"2 x {growth.Corners} x tan(180 / {growth.Corners})"),
            FlatShape.HalfPolygon => Invariant($"{2 * (growth.Corners + 1)} x tan(180 / {2 * (growth.Corners + 1)})"),
            FlatShape.HalfCircle => "pi",
            _ => "2 x pi",
        };
        return Invariant($"{factor} x height of a {each} / width of a stitch = {Number(growth.Needed)}");
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
