using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A picot without anything before it in the row that it could stand on.</summary>
public static class StandsOnNothing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stands-on-nothing",
        "TR0355",
        Severity.Error,
        """
        A picot is closed into the top of the stitch just made, or into the chain just made, and takes no place of its own. At the beginning of a
        row or round nothing is made yet: the hook is in the last stitch of the row below, or in the join. Write the picot behind the stitch that it
        is to stand on: `(sc 3, picot) around`.
        """,
        SmallPattern.With("Edging",
            """
            piece edging
              begin with 60 stitches
              round 1: sc around
              round 2: (picot, sc 3) around
            """),
        SmallPattern.With("Edging",
            """
            piece edging
              begin with 60 stitches
              round 1: sc around
              round 2: (sc 3, picot) around
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word) =>
        new(Kind, span, $"`{word}` stands on the stitch before it, and none is made before it in the row{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write it behind the stitch that it is to stand on: `(sc 3, picot) across`",
        };
}
