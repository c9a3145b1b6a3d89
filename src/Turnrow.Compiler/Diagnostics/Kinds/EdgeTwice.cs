using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows of an edge that are used twice.</summary>
public static class EdgeTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-twice",
        "TR0370",
        Severity.Warning,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, TextSpan before) =>
        new(Kind, span, $"rows of this edge are joined or picked up along already{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take other rows, if this is not meant",
            Related = [new Related(before, "here")],
        };
}
