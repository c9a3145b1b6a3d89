using Turnrow.Compiler.Values;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Two numbers that are not equal as expected.</summary>
public static class ExpectEqual
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "expect-equal",
        "TR0361",
        Severity.Error,
        """
        An `expect` line says that two numbers are the same, as the rows of a back and a front that are to be joined, and they are not.
        The message gives both. Find out which of the two is not what you meant, and look at the lines that it comes from.
        """,
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 8 rows

            expect front rows are back rows
            seam front foundation with back foundation
            """),
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            expect front rows are back rows
            seam front foundation with back foundation
            """));

    internal static Diagnostic At(Context context, ExpectEqualStatement expect, int[] sizes, Value?[] left, Value?[] right)
    {
        var (one, other) = (left[sizes[0]]!.Value, right[sizes[0]]!.Value);
        var said = $"{Said(context, expect.Left, one)}, and {Said(context, expect.Right, other)}";
        return new(Kind, expect.Span, $"{Wrong(expect.Bound)}: {said}{context.Findings.InSize(sizes[0])}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => $"{Text(context, left[i]!.Value)} and {Text(context, right[i]!.Value)}")] : [],
            Help = "one of the two is not what you expect: look at the lines that it comes from",
        };
    }

    private static string Wrong(Bound bound) => bound switch
    {
        Bound.AtLeast => "the first is less than the second",
        Bound.AtMost => "the first is more than the second",
        _ => "these are not the same",
    };

    private static string Said(Context context, ExpressionSyntax expression, Value value) => expression switch
    {
        PieceExpression { Quantity: PieceQuantity.Rows } piece when !value.IsLength => $"{piece.Piece.Text} has {Counted.Rows((int)value.Number.Floor())}",
        PieceExpression { Side: { } side } piece when !value.IsLength => $"the {side.Text} side of {piece.Piece.Text} has {Counted.Stitches((int)value.Number.Floor())}",
        PieceExpression piece when !value.IsLength => $"the last row of {piece.Piece.Text} has {Counted.Stitches((int)value.Number.Floor())}",
        NameExpression name => $"{name.Name.Text} is {Text(context, value)}",
        CalculationExpression => $"the calculation makes {Text(context, value)}",
        _ => $"the number here is {Text(context, value)}",
    };

    private static string Text(Context context, Value value) => value.IsLength ? context.Length(value.Number) : value.Number.ToString();
}
