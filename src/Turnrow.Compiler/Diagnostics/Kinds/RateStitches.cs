using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that is picked up in two stitches.</summary>
public static class RateStitches
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rate-stitches",
        "TR0383",
        Severity.Error,
        """
        What is picked up is one row of one stitch: along row-ends perhaps 3 in 2 rows, along a last row 1 in each stitch, but all of them in
        the same stitch, since they are turned and worked over together. Name that stitch in every rate.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              both edges are side
              row 1 RS: dc across
              straight 7 rows
            piece border picked up along bib right side and bib last row: 2 sc in each row, 1 dc in each st
              straight 1 row
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              both edges are side
              row 1 RS: dc across
              straight 7 rows
            piece border picked up along bib right side and bib last row: 2 sc in each row, 1 sc in each st
              straight 1 row
            """));

    internal static Diagnostic At(NameSyntax stitch, NameSyntax first) =>
        new(Kind, stitch.Span, $"the row is picked up in {first.Text}, and this part of it in {stitch.Text}")
        {
            Help = $"write `{first.Text}` here too; another stitch can begin in the next row",
            Mends = [new Mend($"write {first.Text}", stitch.Span, first.Text)],
        };
}
