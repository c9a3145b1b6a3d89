using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length and a plain number mixed.</summary>
public static class UnitMix
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unit-mix",
        "TR0216",
        Severity.Error,
        """
        Lengths and plain numbers do not mix in a sum: 20 cm and 2 of what? Two lengths can be added or taken from each other, a length
        can be multiplied or divided by a plain number, and a length divided by a length is a plain number. Mostly a unit was forgotten:
        write `2 cm` or `1 in`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure chest is 80 cm
            count width is stitches for chest + 4

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure chest is 80 cm
            count width is stitches for chest + 4 cm

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic Sum(OperationSyntax operation, bool lengthFirst)
    {
        var number = operation.Operand is NumberExpression { Unit: null } plain && Rational.Of(plain.Number.Numerator, plain.Number.Denominator) is { } value
            ? value.ToString()
            : null;
        var verb = operation.Operator == Operator.Minus ? "taken from" : "added to";
        return new(Kind, operation.Span, lengthFirst
            ? $"a plain number can't be {verb} a length{(number is null ? string.Empty : $": {number} of what?")}"
            : $"a length can't be {verb} a plain number")
        {
            Help = !lengthFirst ? "write the unit behind the plain number, or divide the length by another length"
                : number is null ? "the one behind the sign has to be a length as well"
                : $"write the unit: `{number} cm`, or `{number} in`",
            Mends = !lengthFirst || number is null ? [] : UnitMissing.Mends(operation.Operand),
        };
    }

    internal static Diagnostic Product(TextSpan span) =>
        new(Kind, span, "a length can be multiplied or divided by a plain number, and divided by a length; not this way round")
        {
            Help = "one of the two is most likely to be a plain number, without a unit",
        };
}
