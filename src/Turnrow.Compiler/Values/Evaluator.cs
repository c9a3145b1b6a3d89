using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>
/// Works out expressions, in all sizes at once. What can't be worked out is null in that size, and was reported once; whatever uses
/// it then says nothing.
/// </summary>
internal sealed class Evaluator(Findings findings, Scope scope, bool sizesInDoubt)
{
    /// <summary>The largest whole number that a count may be.</summary>
    public const int LargestCount = 1_000_000;

    /// <summary>Finds how many rows or stitches a piece has, for <c>expect</c> lines.</summary>
    public Func<PieceExpression, Value?[]>? PieceValues { get; set; }

    /// <summary>The sizes that the line being read is for.</summary>
    public SizesHere Here { get; } = new();

    /// <summary>The values of an expression; null in the sizes that the line is not for.</summary>
    public Value?[] Of(ExpressionSyntax expression) => Here.Only(InAllSizes(expression));

    private Value?[] InAllSizes(ExpressionSyntax expression) => expression switch
    {
        NumberExpression number => Sized.Same(findings.Sizes, Literal(number.Number, number.Unit, number.Span)),
        SizesExpression list => InSizes(list),
        NameExpression name => OfName(name.Name),
        PieceExpression piece => PieceValues?.Invoke(piece) ?? Sized.Same<Value?>(findings.Sizes, null),
        CalculationExpression calculation => Calculate(calculation),
        _ => Sized.Same<Value?>(findings.Sizes, null),
    };

    /// <summary>The values as whole numbers from <paramref name="least"/> up; reports what is not one.</summary>
    public int?[] Counts(ExpressionSyntax expression, int least = 0)
    {
        var values = Of(expression);
        var lengths = Sized.Where(values.Length, i => values[i] is { IsLength: true });
        if (lengths.Length > 0)
        {
            findings.Add(LengthForCount.At(expression));
            return Sized.Same<int?>(values.Length, null);
        }

        var broken = Sized.Where(values.Length, i => values[i] is { } v && !v.Number.IsWhole);
        if (broken.Length > 0) findings.Add(NotWhole.At(expression.Span, findings, broken, i => values[i]!.Value.Number));
        var small = Sized.Where(values.Length, i => values[i] is { } v && v.Number < least);
        if (small.Length > 0 && broken.Length == 0) findings.Add(TooSmall.At(expression.Span, findings, small, least, i => values[i]!.Value.Number));
        var large = Sized.Where(values.Length, i => values[i] is { } v && v.Number > LargestCount);
        if (large.Length > 0) findings.Add(TooLarge.At(expression.Span, findings, large, LargestCount));
        return values.Select(v => v is { } x && x.Number.IsWhole && x.Number >= least && x.Number <= LargestCount ? (int?)x.Number.Numerator : null);
    }

    /// <summary>The values as lengths in centimetres; reports plain numbers.</summary>
    public Rational?[] Lengths(ExpressionSyntax expression)
    {
        var values = Of(expression);
        if (Array.Exists(values, v => v is { IsLength: false }))
        {
            findings.Add(UnitMissing.At(expression));
            return Sized.Same<Rational?>(values.Length, null);
        }

        var small = Sized.Where(values.Length, i => values[i] is { } v && v.Number < Rational.Zero);
        if (small.Length > 0) findings.Add(TooSmall.Length(expression.Span, findings, small));
        return values.Select(v => v is { } x && x.Number >= Rational.Zero ? x.Number : (Rational?)null);
    }

    private Value? Literal(NumberSyntax number, UnitSyntax? unit, TextSpan span)
    {
        if (Rational.Of(number.Numerator, number.Denominator) is { } value)
        {
            if (unit is null) return new Value(value, false);
            if (value * Units.Centimetres(unit.Unit) is { } length) return new Value(length, true);
        }

        findings.Add(TooLarge.At(span, findings, All, LargestCount));
        return null;
    }

    private int[] All => Sized.Where(findings.Sizes, _ => true);

    private Value?[] InSizes(SizesExpression list)
    {
        if (list.Values.Count == findings.Sizes) return [.. list.Values.Select(v => Literal(v, list.Unit, list.Span))];
        if (!sizesInDoubt) findings.Add(SizesList.At(list.Span, findings, list.Values.Count));
        return Sized.Same<Value?>(findings.Sizes, null);
    }

    private Value?[] OfName(NameSyntax name)
    {
        if (scope.Use(name.Text) is { } definition) return definition.Values;
        if (scope.FindLater(name.Text) is { } later)
        {
            findings.Add(scope.Circle(name.Text) is { } circle ? Circular.At(name.Span, circle, later) : DefinedBelow.At(name.Span, name.Text, later));
        }
        else if (!scope.InDoubt)
        {
            findings.Add(UnknownName.At(name.Span, name.Text, scope.Names));
        }

        return Sized.Same<Value?>(findings.Sizes, null);
    }

    private Value?[] Calculate(CalculationExpression calculation)
    {
        var values = (Value?[])Of(calculation.First).Clone();
        foreach (var operation in calculation.Rest)
        {
            var operands = Of(operation.Operand);
            var before = (Value?[])values.Clone();
            for (var i = 0; i < values.Length; i++)
            {
                values[i] = before[i] is { } a && operands[i] is { } b ? Apply(operation.Operator, a, b) : null;
            }

            Explain(operation, before, operands, values);
        }

        return values;
    }

    private static Value? Apply(Operator operation, Value a, Value b)
    {
        if (!Applies(operation, a, b)) return null;
        return operation switch
        {
            Operator.Plus => Make(a.Number + b.Number, a.IsLength),
            Operator.Minus => Make(a.Number - b.Number, a.IsLength),
            Operator.Times => Make(a.Number * b.Number, a.IsLength || b.IsLength),
            _ => Make(a.Number / b.Number, a.IsLength && !b.IsLength),
        };
    }

    // Whether the units of two values let them be calculated with each other.
    private static bool Applies(Operator operation, Value a, Value b) => operation switch
    {
        Operator.Plus or Operator.Minus => a.IsLength == b.IsLength,
        Operator.Times => !(a.IsLength && b.IsLength),
        _ => a.IsLength || !b.IsLength,
    };

    private static Value? Make(Rational? number, bool isLength) => number is { } n ? new Value(n, isLength) : null;

    private void Explain(OperationSyntax operation, Value?[] left, Value?[] right, Value?[] result)
    {
        var failed = Sized.Where(result.Length, i => result[i] is null && left[i] is not null && right[i] is not null);
        if (failed.Length == 0) return;
        var (a, b) = (left[failed[0]]!.Value, right[failed[0]]!.Value);
        var zero = Sized.Where(result.Length, i => right[i] is { } r && r.Number == Rational.Zero);
        if (operation.Operator == Operator.Over && zero.Length > 0) findings.Add(DivisionByZero.At(operation.Operand.Span, findings, zero));
        else if (Applies(operation.Operator, a, b)) findings.Add(TooLarge.At(operation.Span, findings, failed, LargestCount));
        else if (operation.Operator is Operator.Plus or Operator.Minus) findings.Add(UnitMix.Sum(operation, a.IsLength));
        else findings.Add(UnitMix.Product(operation.Span));
    }
}
