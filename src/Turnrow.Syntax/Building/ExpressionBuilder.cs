using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>Sums of lengths and of counts. Brackets nest no deeper than the reader lets them; everything else is a loop.</summary>
internal static class ExpressionBuilder
{
    public static ExpressionSyntax Sum(TurnrowParser.SumContext context, LineBuilding line)
    {
        var first = Factor(context.first, line);
        if (context._rest.Count == 0) return first;
        var rest = new List<OperationSyntax>(context._rest.Count);
        foreach (var operation in context._rest)
            rest.Add(Operation(operation.by, Factor(operation.value, line)));
        return Calculation(first, rest);
    }

    public static ExpressionSyntax Count(TurnrowParser.CountContext context, LineBuilding line) =>
        Calculation(Single(context.first, line), context._rest, line);

    /// <summary>A count that begins with a term which another rule has taken.</summary>
    public static ExpressionSyntax Calculation(
        ExpressionSyntax first, IList<TurnrowParser.CountOperationContext> operations, LineBuilding line)
    {
        if (operations.Count == 0) return first;
        var rest = new List<OperationSyntax>(operations.Count);
        foreach (var operation in operations)
            rest.Add(Operation(operation.by, Single(operation.value, line)));
        return Calculation(first, rest);
    }

    public static ExpressionSyntax Single(TurnrowParser.SingleContext context, LineBuilding line)
    {
        if (context.amount is not null) return List(context.amount, null, line);
        return context.called is null ? Count(context.inside, line) : Name(context.called, line);
    }

    /// <summary>A number, or one for each size.</summary>
    public static ExpressionSyntax List(TurnrowParser.ListContext context, UnitSyntax? unit, LineBuilding line)
    {
        var first = NumberBuilder.Number(context.first, line);
        var span = unit is null ? LineBuilding.Span(context) : LineBuilding.Span(context).To(unit.Span);
        if (context._more.Count == 0) return new NumberExpression(first, unit, span);
        var values = new List<NumberSyntax>(context._more.Count + 1) { first };
        foreach (var number in context._more) values.Add(NumberBuilder.Number(number, line));
        return new SizesExpression(values, unit, span);
    }

    public static NameExpression Name(TurnrowParser.NameContext context, LineBuilding line) =>
        Name(line.Name(context));

    public static NameExpression Name(NameSyntax name) => new(name, name.Span);

    public static UnitSyntax Unit(TurnrowParser.UnitContext context) =>
        new(
            context.Start.Type switch
            {
                TurnrowLexer.MM => LengthUnit.Millimetre,
                TurnrowLexer.CM => LengthUnit.Centimetre,
                TurnrowLexer.IN => LengthUnit.Inch,
                TurnrowLexer.M => LengthUnit.Metre,
                _ => LengthUnit.Yard,
            },
            LineBuilding.Span(context));

    private static ExpressionSyntax Factor(TurnrowParser.FactorContext context, LineBuilding line)
    {
        if (context.amount is not null)
            return List(context.amount, context.measure is null ? null : Unit(context.measure), line);
        return context.called is null ? Sum(context.inside, line) : Name(context.called, line);
    }

    public static OperationSyntax Operation(TurnrowParser.SignContext sign, ExpressionSyntax operand) =>
        new(
            sign.Start.Type switch
            {
                TurnrowLexer.PLUS => Operator.Plus,
                TurnrowLexer.MINUS => Operator.Minus,
                TurnrowLexer.X => Operator.Times,
                _ => Operator.Over,
            },
            operand,
            LineBuilding.Span(sign).To(operand.Span));

    /// <summary>The parser gives operations in one row; products bind before sums.</summary>
    public static ExpressionSyntax Calculation(ExpressionSyntax first, List<OperationSyntax> operations)
    {
        ExpressionSyntax? sumFirst = null;
        var sumRest = new List<OperationSyntax>();
        var sign = default(OperationSyntax);
        var product = first;
        var productRest = new List<OperationSyntax>();
        foreach (var operation in operations)
        {
            if (operation.Operator is Operator.Times or Operator.Over)
            {
                productRest.Add(operation);
                continue;
            }

            EndProduct();
            sign = operation;
            product = operation.Operand;
            productRest = [];
        }

        EndProduct();
        return sumRest.Count == 0 ? sumFirst! : new CalculationExpression(sumFirst!, sumRest, sumFirst!.Span.To(sumRest[^1].Span));

        void EndProduct()
        {
            var whole = productRest.Count == 0
                ? product
                : new CalculationExpression(product, productRest, product.Span.To(productRest[^1].Span));
            if (sign is null)
                sumFirst = whole;
            else
                sumRest.Add(sign with { Operand = whole, Span = TextSpan.FromBounds(sign.Span.Start, whole.Span.End) });
        }
    }
}
