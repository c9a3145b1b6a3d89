using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More is worked into a corner by words of their own.</summary>
public static class CornerAgain
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "corner-again",
        "TR0435",
        Severity.Error,
        """
        All that is worked into a corner has to stand together, since its middle is the corner of the next row. `in same` behind a corner
        would leave open what that middle is. Write one bracket: `(dc, ch 2, dc) in corner`, not `dc in corner, ch 2, dc in same`.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, dc in corner, ch 2, dc in same, dc across
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc to corner, (dc, ch 2, dc) in corner, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word) =>
        new(Kind, span, $"`{word}` goes into a corner once more{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write all that goes into the corner as one: `(dc, ch 2, dc) in corner`",
        };
}
