using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length where a count is needed.</summary>
public static class LengthForCount
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "length-for-count",
        "TR0218",
        Severity.Error,
        """
        Stitches or rows are to be counted here, and a length was given. A length becomes a count by your gauge, and whether it is to be
        stitches or rows only you can say. Make a count of it first: `count hem is stitches for width`, or `count depth is rows for 12
        cm`, and use that name here.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure width is 20 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure width is 20 cm
            count hem is stitches for width

            piece scarf
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(ExpressionSyntax expression)
    {
        var name = (expression as NameExpression)?.Name.Text;
        return new(Kind, expression.Span, name is null ? "a count is needed here, and this is a length" : $"a count is needed here, and `{name}` is a length")
        {
            Help = $"make a count of it at the top, `count hem is stitches for {name ?? "40 cm"}` (or `rows for {name ?? "40 cm"}`), and use that",
        };
    }
}
