using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A special stitch that ends in chains beside other chains.</summary>
public static class ChainsMeet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "chains-meet",
        "TR0541",
        Severity.Error,
        """
        Chains with nothing worked between them are one space, whoever made them. Where a stitch of your own begins or ends with chains and other chains
        come beside them, the maker sees one longer space, half of it in the stitch and half outside, and `in next ch-1 sp` would find neither. Write all
        chains of such a space in one place: in the stitch, or between the stitches.
        """,
        SmallPattern.With("Net scarf",
            """
            stitch leaf is (2 dc, ch 1) in one place

            piece scarf
              begin with 31 stitches
              row 1 RS: dc across
              row 2: dc, (leaf in next, ch 2, skip 2) until 3 remain, dc across
            """),
        SmallPattern.With("Net scarf",
            """
            stitch leaf is (2 dc) in one place

            piece scarf
              begin with 31 stitches
              row 1 RS: dc across
              row 2: dc, (leaf in next, ch 3, skip 2) until 3 remain, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word) =>
        new(Kind, span, $"`{word}` brings chains of a stitch and other chains together, and to a maker they are one space{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write all chains of that space in one place: in the `stitch` line, or between the stitches",
        };
}
