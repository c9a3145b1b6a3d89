using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A pick-up rate that does not come out whole.</summary>
public static class PickUpRemainder
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-remainder",
        "TR0349",
        Severity.Error,
        """
        Stitches are picked up so many over so many rows, and the edge's rows can't be shared out so without a rest: 3 in 2 rows does not
        come out over 9 rows. At the end of the edge the maker would not know what to do. Pick up along a number of rows that fits, or
        give another rate; `2 sc in each row` always comes out.
        """,
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              straight 8 rows

            piece border picked up along cuff right edge: 3 sc per 2 rows
              row 2: sc across
            """),
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along cuff right edge: 3 sc per 2 rows
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, IReadOnlyList<(int Size, PickUpLeg Leg)> uneven)
    {
        var (size, leg) = uneven[0];
        var sizes = uneven.Select(u => u.Size).Distinct().ToArray();
        var what = leg.Stretch.Kind == StretchKind.RowEnds ? "rows" : "stitches";
        var one = what == "rows" ? "row" : "stitch";
        var over = leg.Stretch.Count % leg.Per;
        var less = leg.Stretch.Count - over;
        var near = less > 0 ? Invariant($"{less} or {less + leg.Per}") : Invariant($"{less + leg.Per}");
        return new(Kind, span, Invariant($"{leg.Rate} in {leg.Per} {what} does not come out over {leg.Stretch.Count} {(leg.Stretch.Count == 1 ? one : what)}{context.Findings.InSize(size)}: {over} {(over == 1 ? one + " is" : what + " are")} left over"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [what + ": " + context.Findings.Each([.. sizes], i => Invariant($"{uneven.First(u => u.Size == i).Leg.Stretch.Count}"))] : [],
            Help = Invariant($"{near} {what} would come out{context.Findings.InSize(size)}; pick up along a part of the edge, or give another rate"),
        };
    }
}
