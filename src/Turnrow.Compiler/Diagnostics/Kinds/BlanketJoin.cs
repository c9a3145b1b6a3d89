using Turnrow.Fabric.Motifs;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Motifs that can't be joined to a blanket as it is said.</summary>
public static class BlanketJoin
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "blanket-join",
        "TR0437",
        Severity.Error,
        """
        Motifs of a blanket are joined in their last round: in the corners, and between them in each place that is named, `in each sp`, `in each ch-1 sp`,
        `in each st` or `in each st and sp`; `in each corner` joins the corners alone. The joined round is the plain one with a stitch into the
        neighbour in each of these places, so there must be such places along the sides, its corners are worked by words of their own
        (`in corner`, `in next corner`), and stitches that are joined one by one are made one by one.
        """,
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of tile: 4 across, 5 down, join in each ch-3 sp
            """),
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
              fasten off
            blanket throw of tile: 4 across, 5 down, join in each sp
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, BlanketFaultKind fault, string motif)
    {
        var (message, help) = fault switch
        {
            BlanketFaultKind.NothingToJoin => ($"along the sides of {motif} there is nothing of this kind between two corners", "name what is there, or say `in each corner`"),
            BlanketFaultKind.CornersPassed => ($"the last round of {motif} goes over its corners in passing, so there is no place for the stitch that joins", "work its corners by words of their own: `dc to corner, (2 dc, ch 2, 2 dc) in corner`"),
            BlanketFaultKind.SeveralAtOnce => ($"the last round of {motif} makes several stitches in one place along its sides, and these can't be joined one by one", "write them in a bracket, `(2 dc) in next`, or join in each space"),
            _ => ($"joined in these places, the last round of {motif} does not come out", "write the joined round out with `join to`, motif by motif"),
        };
        return new(Kind, span, message + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = help,
        };
    }

    internal static Diagnostic Place(TextSpan span) => new(Kind, span, "a blanket is joined in all places of a kind")
    {
        Help = "say `in each sp`, `in each st`, `in each st and sp` or `in each corner`",
    };
}
