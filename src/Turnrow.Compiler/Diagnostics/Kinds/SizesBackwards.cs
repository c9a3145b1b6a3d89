using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Sizes from a later to an earlier one.</summary>
public static class SizesBackwards
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-backwards",
        "TR0363",
        Severity.Error,
        """
        A line is said for the sizes from one to another, `for M to L`, in the order in which the `sizes` line has them. Here the second stands
        before the first, so no size lies between. Exchange them, or name the sizes one by one: `for S, L: …`.
        """,
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for L to M: straight 2 rows
              straight 4 rows
            """),
        SmallPattern.With("Vest",
            """
            sizes S, M, L

            piece back
              begin with 30 (32, 34) stitches
              row 1 RS: dc across
              for M to L: straight 2 rows
              straight 4 rows
            """));

    internal static Diagnostic At(SizeRangeSyntax range) =>
        new(Kind, range.Span, $"`{range.First.Text}` to `{range.Last.Text}` runs backwards: `{range.Last.Text}` comes first in the list of sizes")
        {
            Help = "exchange the two sizes",
            Mends = [new Mend("exchange them", range.Span, $"{Written(range.Last)} to {Written(range.First)}")],
        };

    private static string Written(NameSyntax size) => size.Text.All(char.IsAsciiLetterOrDigit) ? size.Text : $"\"{size.Text}\"";
}
