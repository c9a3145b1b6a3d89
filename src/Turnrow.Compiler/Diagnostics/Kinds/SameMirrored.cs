using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch in the place where a decrease ended, in a piece that is mirrored.</summary>
public static class SameMirrored
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "same-mirrored",
        "TR0540",
        Severity.Error,
        """
        `dc2tog, dc in same` puts the dc into the stitch that the decrease ended in. Read from the other end the dc comes first, and the decrease would have
        to begin where the dc is: behind it, `in same` goes to the decrease's other leg, and the two pieces would not match. Work the stitch beside the
        decrease into a place of its own, or write the second piece out. In a fabric without sides, `mirrored, turned over` keeps the rows as they are.
        """,
        SmallPattern.With("Fronts",
            """
            piece front
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 5, dc2tog, dc in same, dc across

            piece other is front mirrored
            seam front right edge with other left edge
            """),
        SmallPattern.With("Fronts",
            """
            piece front
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 5, dc2tog, inc, dc across

            piece other is front mirrored
            seam front right edge with other left edge
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string original, int row, string kind) =>
        new(Kind, span, Invariant($"{kind} {row} of {original} works a stitch into the place where a decrease ends, and mirrored it would go to the decrease's other leg{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "give that stitch a place of its own, `dc2tog, inc`, or write this piece out; in a fabric without sides, `mirrored, turned over`",
        };
}
