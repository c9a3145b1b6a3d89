using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece whose rounds have no mirror image that begins where they do.</summary>
public static class RoundMirrored
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "round-mirrored",
        "TR0492",
        Severity.Error,
        """
        A mirror image is worked from the other end: where a round of the original ends, the mirrored one begins. That comes out as long as all
        rounds begin in one line. Rounds that begin further on than the one below, in a corner or behind slip stitches, and rounds that are turned
        where they are joined would begin elsewhere in the mirror image, and it would not be one. Write out the second piece with words of
        its own; a piece that is its own mirror image is simply made twice, `piece square, make 2`. In a fabric without sides, `mirrored, turned
        over` keeps the rounds as they are.
        """,
        SmallPattern.With("Pot holders",
            """
            piece square
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) around
              fasten off

            piece other is square mirrored
            seam square last row with other last row: 1 sc in each st
            """),
        SmallPattern.With("Pot holders",
            """
            piece square
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) around
              fasten off

            piece other is square mirrored, turned over
            seam square last row with other last row: 1 sc in each st
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string original) =>
        new(Kind, span, $"the rounds of {original} do not all begin in one line, so their mirror image would begin elsewhere{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write the second piece out; or `make 2` if it is its own mirror image; or `mirrored, turned over` in a fabric without sides",
        };
}
