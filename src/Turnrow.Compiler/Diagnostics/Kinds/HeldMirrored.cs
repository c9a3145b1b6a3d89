using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A mirrored piece that would be picked up along another number of held stitches.</summary>
public static class HeldMirrored
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "held-mirrored",
        "TR0367",
        Severity.Error,
        """
        A mirrored piece is picked up where, turned over, its original was: along what the row holds first instead of last. There lies another
        number of stitches or chains, so the rows of the original would not come out over them. Hold as many on both sides, or write the
        second piece out by itself.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 60 stitches
              round 1: dc around
              round 2: dc 10, hold 10 for one-sleeve, bridge 4, dc 10, hold 12 for other-sleeve, bridge 4, dc around

            piece one-sleeve picked up around yoke one-sleeve: 1 dc in each st
            piece other-sleeve is one-sleeve mirrored
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 60 stitches
              round 1: dc around
              round 2: dc 10, hold 10 for one-sleeve, bridge 4, dc 10, hold 10 for other-sleeve, bridge 4, dc around

            piece one-sleeve picked up around yoke one-sleeve: 1 dc in each st
            piece other-sleeve is one-sleeve mirrored
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string original, int held, int turned) =>
        new(Kind, span, $"{original} is picked up along {held} stitches and chains, its mirror image would be along {turned}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "hold and bridge as many on both sides, or write this piece out: `piece NAME picked up around …`",
        };
}
