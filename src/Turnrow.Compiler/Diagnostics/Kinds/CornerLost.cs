using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A corner that would be lost.</summary>
public static class CornerLost
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "corner-lost",
        "TR0433",
        Severity.Error,
        """
        A corner lives on in what is worked into it. Here it is skipped, passed over on the way to another place, or worked together with
        other stitches of which it is not the middle one: so the next row would have a corner fewer, without a word said. Work into it; put
        it in the middle of an odd number worked together, `dc until 1 remains before corner, dc3tog`; or say that the corners end here, with
        `remove corners` in this row. Stitches left at an edge take their corners with them: that needs no word.
        """,
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc 4, skip 1, dc 4
            """),
        SmallPattern.With("Kerchief",
            """
            piece kerchief
              begin with 9 stitches
              row 1 RS: dc 5, mark corner, dc across
              row 2: dc until 1 remains before corner, dc3tog, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFaultKind kind, string word) =>
        new(Kind, span, $"`{word}` {(kind == RowFaultKind.CornerPassed ? "passes over a corner" : "works a corner together with other stitches, and it is not the middle one")}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work into the corner, or write `remove corners` in this row if no later row asks for it",
        };
}
