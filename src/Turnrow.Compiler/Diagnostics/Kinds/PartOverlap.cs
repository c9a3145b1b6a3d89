using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that takes stitches another has taken.</summary>
public static class PartOverlap
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-overlap",
        "TR0342",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string other) =>
        new(Kind, span, $"some of these stitches are taken by {other} already{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "both parts together are wider than the row: take fewer stitches for one of them",
        };
}
