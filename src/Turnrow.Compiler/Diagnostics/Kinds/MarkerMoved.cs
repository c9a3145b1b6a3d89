using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary><c>move marker</c> where no marker can be moved.</summary>
public static class MarkerMoved
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "marker-moved",
        "TR0386",
        Severity.Error,
        """
        In a spiral the beginning of a round is a marker and nothing else, so a round may end anywhere: `move marker` says that it does, and the stitches
        that it has not come to are the first ones of the next round. It stands at the end of a round, behind what is worked, and only where rounds are
        a spiral: others are joined to their beginning. The first round has no marker yet.
        """,
        SmallPattern.With("Bowl",
            """
            piece bowl
              begin with 24 stitches
              round 1: sc around
              round 2: sc 3, move marker
            """),
        SmallPattern.With("Bowl",
            """
            piece bowl
              rounds are spiral
              begin with 24 stitches
              round 1: sc around
              round 2: sc 3, move marker
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFault fault) => fault.There > 0
        ? new(Kind, span, $"`move marker` ends the round, and something stands behind it{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "put it at the end; what is worked behind the marker is a round of its own",
        }
        : new(Kind, span, $"there is no marker here that could be moved{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "it stands behind the stitches of a later round, where `rounds are spiral`",
        };
}
