using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A round after short rows of which the last did not come back to where rounds begin.</summary>
public static class RoundAtTurn
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "round-at-turn",
        "TR0577",
        Severity.Error,
        """
        After rounds, rows go to and fro over part of them and leave the rest for later: a heel, the cup of a cap. The next round goes once round
        everything, from where rounds begin. So the last of these rows has to come back to that place, which is the right edge of the rows: it is a wrong-side row
        that leaves nothing behind. Write `row WS: sc across` before the round.
        """,
        SmallPattern.With("Heel",
            """
            turn sc: ch 1 does not count

            piece sock
              begin with 24 stitches
              round 1: sc around
              row RS: sc 12, leave the rest for later
              row WS: sc 8, leave the rest for later
              round: sc around
            """),
        SmallPattern.With("Heel",
            """
            turn sc: ch 1 does not count

            piece sock
              begin with 24 stitches
              round 1: sc around
              row RS: sc 12, leave the rest for later
              row WS: sc across
              round: sc around
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int waiting) =>
        new(Kind, span, $"the row before turned, and {Counted.Stitches(waiting)} wait between there and where rounds begin{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "let the last row before the round go all the way back to where rounds begin, `row WS: sc across`, and leave nothing there",
        };
}
