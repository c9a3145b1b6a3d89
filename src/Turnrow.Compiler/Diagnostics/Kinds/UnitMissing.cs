using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length without a unit.</summary>
public static class UnitMissing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-missing",
        "TR0217",
        Severity.Error,
        """
        A length needs its unit: `20 cm`, `8 in`, `35 mm`. Without it the number could be either, and a piece meant for 20 inches would
        end at 20 centimetres. Write the unit behind the number; behind a list in sizes it stands once, `20 (22, 24) cm`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight to 150
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight to 150 cm
            """));

    internal static Diagnostic At(ExpressionSyntax expression) =>
        new(Kind, expression.Span, "a length is needed here, and this is a plain number")
        {
            Help = "write the unit behind it, `cm` or `in`",
            Mends = expression is NumberExpression or SizesExpression ? Mends(expression) : [],
        };

    internal static IReadOnlyList<Mend> Mends(ExpressionSyntax number)
    {
        var end = new TextSpan(number.Span.End, 0);
        return [new Mend("make it centimetres", end, " cm"), new Mend("make it inches", end, " in")];
    }
}
