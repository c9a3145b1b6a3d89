using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An edge that is joined to itself, and not by a fold that its stitches can have.</summary>
public static class SeamItself
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-itself",
        "TR0576",
        Severity.Error,
        """
        A tube is closed flat by folding its last round: `seam heel last row with itself`. Stitch 1 lies on the last stitch, and each that follows on the
        one before it; of an odd number the middle one lies in the fold. `from stitch 12` folds a round elsewhere: stitch 12 lies on
        stitch 11 then, 13 on 10, and so on.

        This is for the stitches of one row or round: the last row, the foundation, stitches held, a part that `divide` named. An edge of row-ends
        is folded by saying which rows lie on which: `seam bag right side, first 20 rows, with bag right side, last 20 rows`.
        """,
        SmallPattern.With("Arm",
            """
            piece arm
              begin with 12 stitches
              round 1: sc around
              fasten off

            seam arm last row with arm last row
            """),
        SmallPattern.With("Arm",
            """
            piece arm
              begin with 12 stitches
              round 1: sc around
              fasten off

            seam arm last row with itself
            """));

    /// <summary>Both edges of the seam are the same.</summary>
    internal static Diagnostic Same(TextSpan second, string what, bool severalMade) =>
        new(Kind, second, $"{what} can't lie on itself as a whole, each stitch on its own")
        {
            Mends = [new Mend("write `itself`", second, "itself")],
            Help = "write `with itself` to fold it and join one half to the other" + (severalMade ? "; of several pieces say which: `first … with second …`" : string.Empty),
        };

    internal static Diagnostic Several(TextSpan edge) =>
        new(Kind, edge, "several edges end to end can't be joined to themselves")
        {
            Help = "`with itself` folds the stitches of one row or round; write a seam for each",
        };

    internal static Diagnostic NothingToSay(TextSpan words, string what) =>
        new(Kind, words, $"an edge that is folded does not say {what}: its halves meet stitch for stitch")
        {
            Help = "take these words out; `from stitch 12` says where a round is folded",
        };

    internal static Diagnostic Rows(TextSpan edge, string piece, Hand? hand, int rows)
    {
        var side = hand == Hand.Left ? "left" : "right";
        return new(Kind, edge, hand is null ? "these stitches lie in several parts, and can't be folded as one" : "this edge is of row-ends, and `with itself` folds stitches")
        {
            Help = hand is null
                ? "name the part that is to be closed, as `divide` calls it"
                : $"say which rows lie on which: `seam {piece} {side} edge, first {Counted.Rows(rows / 2)}, with {piece} {side} edge, last {Counted.Rows(rows / 2)}`",
        };
    }

    internal static Diagnostic TooFew(Context context, TextSpan edge, int[] sizes, Func<int, int> stitches) =>
        new(Kind, edge, $"there is nothing to fold: this edge has {Counted.Stitches(stitches(sizes[0]))}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "what begins in a ring is closed there; name the other end of the piece",
        };

    internal static Diagnostic InRow(Context context, TextSpan number, int[] sizes) =>
        new(Kind, number, $"the two ends of a row lie on each other when it is folded, so it can't be folded elsewhere{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take `from stitch …` out; only a round has no ends",
        };

    internal static Diagnostic Past(Context context, TextSpan number, int[] sizes, Func<int, int> stitches) =>
        new(Kind, number, $"the round has {Counted.Stitches(stitches(sizes[0]))}, so no such stitch lies at the fold{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"write a number from 1 to {Counted.Plain(stitches(sizes[0]))}",
        };

    internal static Diagnostic Alone(TextSpan number) =>
        new(Kind, number, "`from stitch` says where a round is folded, and this seam joins two edges")
        {
            Help = "take it out, or close one edge: `seam heel last row with itself, from stitch 12`",
        };
}
