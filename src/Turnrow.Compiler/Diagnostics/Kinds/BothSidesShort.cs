using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A chain that has no two sides.</summary>
public static class BothSidesShort
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "both-sides-short",
        "TR0493",
        Severity.Error,
        """
        An oval is worked round both sides of a foundation chain. The chains at its two ends are one place each for both sides, so there have to be at
        least two. What begins in a single place is a circle: `begin with ring`.
        """,
        SmallPattern.With("Basket",
            """
            piece base
              begin with both sides of 1 stitch
              round 1: 6 sc in corner
            """),
        SmallPattern.With("Basket",
            """
            piece base
              begin with both sides of 10 stitches
              round 1: (3 sc in corner, sc to corner) around = 22
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"a chain of one stitch has no two sides{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "begin with at least 2 stitches, or `begin with ring`",
        };
}
