using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>The names that an expression uses.</summary>
internal static class NamesIn
{
    public static IReadOnlyList<string> Expression(ExpressionSyntax expression)
    {
        var names = new List<string>();
        var open = new Stack<ExpressionSyntax>([expression]);
        while (open.TryPop(out var next))
        {
            if (next is NameExpression name) names.Add(name.Name.Text);
            if (next is not CalculationExpression calculation) continue;
            open.Push(calculation.First);
            foreach (var operation in calculation.Rest) open.Push(operation.Operand);
        }

        return names;
    }
}
