using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An edge that is joined on one side of the body alone.</summary>
public static class EdgeOpen
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-open",
        "TR0376",
        Severity.Warning,
        """
        Two edges have the same name, such as the two sides of a back, or belong to a piece and its mirror. One of them is sewn or picked up
        along, and the other is joined to nothing. Mostly the second seam was forgotten, and the maker would be left with an open side. Write it. If
        that edge is to stay open, like the side of a wrap, leave it so: this is only a reminder, and it comes only once `weave in ends` says that
        the pattern is whole.

        Tip: an edge with a name of its own, `left edge is opening`, is not taken for a forgotten one.
        """,
        SmallPattern.With("Vest",
            """
            piece front
              begin with 12 stitches
              both edges are side
              row 1 RS: dc across
              straight 9 rows

            piece back is front mirrored

            seam front right side with back left side
            weave in ends
            """),
        SmallPattern.With("Vest",
            """
            piece front
              begin with 12 stitches
              both edges are side
              row 1 RS: dc across
              straight 9 rows

            piece back is front mirrored

            seam front right side with back left side
            seam front left side with back right side
            weave in ends
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string used, string open) =>
        new(Kind, span, $"{used} is joined here, and {open} is joined to nothing{(sizes.Length == context.Sizes ? string.Empty : context.Findings.InSizes(sizes))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"write a line that joins {open} as well; if it is to stay open, leave it so",
        };
}
