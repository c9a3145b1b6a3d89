using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More stitches left than there are.</summary>
public static class EdgeShort
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-short",
        "TR0322",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] counts, Func<int, int> there, int edges) =>
        new(Kind, span, edges == 1
            ? Invariant($"leaving {counts[sizes[0]]} leaves nothing of {there(sizes[0])} stitches{context.Findings.InSize(sizes[0])}")
            : Invariant($"leaving {counts[sizes[0]]} at each edge, {2 * counts[sizes[0]]} in all, leaves nothing of {there(sizes[0])} stitches{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "leave fewer, or begin with more stitches, in these sizes",
        };
}
