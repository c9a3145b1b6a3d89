using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>The names that an expression uses.</summary>
internal static class NamesIn
{
    public static IReadOnlyList<string> Expression(ExpressionSyntax expression)
    {
        var names = new List<string>();
        foreach (var part in ExpressionParts.Of(expression))
        {
            if (part is NameExpression name) names.Add(name.Name.Text);
        }

        return names;
    }
}

/// <summary>The lists in sizes that an expression uses.</summary>
internal static class ListsIn
{
    public static IEnumerable<SizesExpression> Expression(ExpressionSyntax expression) => ExpressionParts.Of(expression).OfType<SizesExpression>();
}

/// <summary>An expression and all that it is made of, without recursion however deep it is.</summary>
internal static class ExpressionParts
{
    public static IEnumerable<ExpressionSyntax> Of(ExpressionSyntax expression)
    {
        var open = new Stack<ExpressionSyntax>([expression]);
        while (open.TryPop(out var next))
        {
            yield return next;
            if (next is not CalculationExpression calculation) continue;
            open.Push(calculation.First);
            foreach (var operation in calculation.Rest) open.Push(operation.Operand);
        }
    }
}
