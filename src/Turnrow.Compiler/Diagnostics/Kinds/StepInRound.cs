using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches left or chains added at an edge before a round.</summary>
public static class StepInRound
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "step-in-round",
        "TR0336",
        Severity.Error,
        """
        A round is joined to its own beginning, so it has no edge at which stitches could be left or chains added. For an opening in a tube,
        hold stitches inside the round and bridge them with chains, `hold 10 for thumb, bridge 10`. To leave stitches at an edge, go on
        in rows first, `row: dc across`.
        """,
        SmallPattern.With("Wrist warmer",
            """
            piece cuff
              begin with 30 stitches
              round 1: sc around
              leave 4 at left edge
              round 2: sc around
            """),
        SmallPattern.With("Wrist warmer",
            """
            piece cuff
              begin with 30 stitches
              round 1: sc around
              leave 4 at left edge
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"the next row is a round, which has no edge to leave stitches or add chains at{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "go on in rows, `row: …`, or write `hold` and `bridge` among the round's words",
        };
}
