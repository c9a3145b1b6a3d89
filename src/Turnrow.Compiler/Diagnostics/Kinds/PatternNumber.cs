using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number in a stitch pattern that depends on the size.</summary>
public static class PatternNumber
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-number",
        "TR0466",
        Severity.Error,
        """
        A stitch pattern is the same in every size: only how often it is repeated differs, and that comes from the stitches of the piece. So its rows
        have plain numbers, no lists in sizes and no counts of the file. Where sizes need another pattern, define two and name each in a line
        for its sizes: `for S: straight 8 rows, in narrow-shells`.
        """,
        SmallPattern.With("Scarf",
            """
            count gap is 2
            stitch pattern net over multiple of 3 + 1
              row 1: sc, (ch 2, skip gap, sc) across
              row 2: sc in each st and 2 sc in each sp

            piece scarf
              begin with 25 stitches
              straight 8 rows, in net
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern net over multiple of 3 + 1
              row 1: sc, (ch 2, skip 2, sc) across
              row 2: sc in each st and 2 sc in each sp

            piece scarf
              begin with 25 stitches
              straight 8 rows, in net
            """));

    internal static Diagnostic At(TextSpan span) => new(Kind, span, "a stitch pattern is the same in every size, and its rows have plain numbers")
    {
        Help = "write the number; for sizes that differ, define a pattern for each",
    };
}
