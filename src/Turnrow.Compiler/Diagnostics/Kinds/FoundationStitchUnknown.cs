using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A foundation of stitches that can't make their own chain.</summary>
public static class FoundationStitchUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "foundation-stitch",
        "TR0467",
        Severity.Error,
        """
        A foundation stitch makes the chain at its own foot and then stands on it, so the foundation and the first row are worked at once. The
        basic stitches can do that. What is worked into several places, or ends several stitches in one loop, needs a row to be worked over: begin
        with a basic stitch, and work it from row 2 on.
        """,
        SmallPattern.With("Cuff",
            """
            piece cuff
              begin with 30 foundation puff
              row 2: sc across
            """),
        SmallPattern.With("Cuff",
            """
            piece cuff
              begin with 30 foundation sc
              row 2: sc across
            """));

    internal static Diagnostic At(TextSpan span, string word, IReadOnlyList<string> there) =>
        new(Kind, span, $"`{word}` can't make its own foundation")
        {
            Help = $"begin with foundation {string.Join(", ", there.Take(there.Count - 1))} or {there[^1]}",
        };
}
