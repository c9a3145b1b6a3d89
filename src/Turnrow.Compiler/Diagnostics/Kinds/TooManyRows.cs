using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows than a piece can have.</summary>
public static class TooManyRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-many-rows",
        "TR0317",
        Severity.Error,
        """
        A piece can have 20,000 rows, and a pattern 120,000 in all its pieces and sizes, which is more than anyone has ever worked. So there is
        a slip in a number: a digit too many, or a count of stitches where the rows should stand. If the number comes out of a length, look
        whether it was meant in cm or in m.
        """,
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 30000 rows
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 300 rows
            """));

    internal static Diagnostic InAll(TextSpan span, int most) =>
        new(Kind, span, Invariant($"a pattern can have {most:N0} rows in all its pieces and sizes, and here are more; what goes beyond is not counted"))
        {
            Help = "look for a digit too many, or for pieces and sizes that came in twice",
        };

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int most) =>
        new(Kind, span, Invariant($"a piece can have {most:N0} rows, and this makes more{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "look for a digit too many",
        };
}
