using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A marker without a stitch that it could go into.</summary>
public static class MarkWithoutStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "mark-without-stitch",
        "TR0432",
        Severity.Error,
        """
        `mark corner` puts a marker into the stitch just made, or into the space if chains were made last. Here nothing is made before it in
        the row, or in its bracket. Write it behind the stitch that is to be the corner: `dc 13, mark corner`.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: mark corner, dc across
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"`mark corner` has no stitch before it that the marker could go into{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write it behind the stitch or the chains that are to be the corner, in the same bracket",
        };
}
