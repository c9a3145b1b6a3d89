using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam or a pick-up along stitches from which a piece goes on.</summary>
public static class StitchesTaken
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitches-taken",
        "TR0444",
        Severity.Error,
        """
        The stitches of a last row are an edge as long as nothing is worked into them. Here a later piece goes on from them, so they lie inside the
        work, and nothing can be sewn to them or picked up along them. Name stitches that no piece goes on from, as those of an underarm, or
        another edge; what closes the later piece is a seam along its own edges.
        """,
        SmallPattern.With("Top",
            """
            piece body
              begin with 40 stitches
              round 1: dc around
              divide: 18 for front, 2 for right-underarm, 18 for back, 2 for left-underarm
              fasten off

            piece yoke across body front, body back
              row: dc across

            seam body front with body back
            seam body right-underarm with body left-underarm
            """),
        SmallPattern.With("Top",
            """
            piece body
              begin with 40 stitches
              round 1: dc around
              divide: 18 for front, 2 for right-underarm, 18 for back, 2 for left-underarm
              fasten off

            piece yoke across body front, body back
              row: dc across

            seam body right-underarm with body left-underarm
            """));

    /// <param name="context">The pattern.</param>
    /// <param name="span">Where the stitches are named.</param>
    /// <param name="sizes">The sizes in which they are taken.</param>
    /// <param name="stitches">What they are called: <c>the stitches of front</c>, <c>the last row of sleeve</c>.</param>
    /// <param name="by">The piece that goes on from them.</param>
    /// <param name="opened">Where that piece begins.</param>
    /// <param name="open">The parts beside them from which nothing goes on.</param>
    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string stitches, string by, TextSpan? opened, IReadOnlyList<string> open) =>
        new(Kind, span, $"{by} goes on from {stitches}{context.Findings.InSizes(sizes)}, so there is no edge any more")
        {
            Sizes = context.Findings.Names(sizes),
            Help = open.Count > 0 ? $"nothing goes on from {Findings.Join([.. open.Select(part => $"`{part}`")])}; if you mean the edges of {by}, name those"
                : $"name another edge, or those of {by}; or take the line out",
            Related = opened is { } there ? [new Related(there, $"{by} begins here")] : [],
        };
}
