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
        So many stitches are left unworked at the edge that no stitch remains for the next row. At `both edges` the number is taken twice,
        once on each side. Leave fewer, or have more stitches before; if it happens in some sizes only, give each size its own number:
        `leave 4 (6, 8) at both edges`.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              leave 10 at both edges
              row 2: dc across
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              leave 5 at both edges
              row 2: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] counts, Func<int, int> there, int edges) =>
        new(Kind, span, edges == 1
            ? Invariant($"leaving {counts[sizes[0]]} leaves nothing of {there(sizes[0])} stitches{context.Findings.InSize(sizes[0])}")
            : Invariant($"leaving {counts[sizes[0]]} at each edge, {2 * counts[sizes[0]]} in all, leaves nothing of {there(sizes[0])} stitches{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "leave fewer, or begin with more stitches, in these sizes",
        };
}
