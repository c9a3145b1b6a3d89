using System.Globalization;
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
        A circle lies flat if it grows, round by round, by as many stitches as the way round it grows: 2 x pi x the height of a round, divided by the width
        of a stitch. With fewer the edge is too short and the piece cups, as a bowl or a hat does; with more it ruffles. Yarn gives way a little: from 84
        in 100 to 120 in 100 of that number still block flat (common practice, no source; the customary 6 sc, 8 hdc and 12 dc a round lie
        within it). Change the growth, or say what the piece is to do.
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

    internal static Diagnostic At(Context context, ExpectLieStatement expect, int[] sizes, Func<int, double> growth, Func<int, double> needed)
    {
        var first = sizes[0];
        var lies = growth(first) < needed(first) ? "cups" : "ruffles";
        if (expect.Lie != Lie.Flat && Fabric.Solids.Flatness.IsFlat(growth(first), needed(first))) lies = "lies flat";
        return new(Kind, expect.Span, Invariant($"{expect.Piece.Text} {lies}{context.Findings.InSize(first)}: it grows by {Number(growth(first))} stitches a round, and lying flat takes {Number(needed(first))}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. sizes.Length > 1 ? [context.Findings.Each(sizes, i => Number(growth(i)))] : Array.Empty<string>(), "2 x pi x height of a round / width of a stitch = " + Number(needed(first))],
            Help = "change what is increased a round, or say how it is to lie: lies flat, cups, ruffles",
        };
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
