using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Turnrow.Mutation;

/// <summary>What can be changed in a piece of syntax: each operator, condition, small number and statement, one at a time.</summary>
internal static class Changes
{
    private static readonly Dictionary<string, string[]> Operators = new()
    {
        ["+"] = ["-"],
        ["-"] = ["+"],
        ["*"] = ["/"],
        ["/"] = ["*"],
        ["%"] = ["*"],
        ["<"] = ["<=", ">="],
        ["<="] = ["<", ">"],
        [">"] = [">=", "<="],
        [">="] = [">", "<"],
        ["=="] = ["!="],
        ["!="] = ["=="],
        ["&&"] = ["||"],
        ["||"] = ["&&"],
        ["+="] = ["-="],
        ["-="] = ["+="],
        ["*="] = ["/="],
        ["|="] = ["&="],
        ["&="] = ["|="],
        ["++"] = ["--"],
        ["--"] = ["++"],
    };

    private static readonly Dictionary<string, string> Calls = new() { ["Math.Min"] = "Math.Max", ["Math.Max"] = "Math.Min" };

    /// <summary>All changes of this node itself; its parts have their own.</summary>
    public static IEnumerable<Change> Of(SyntaxNode node) => node switch
    {
        BinaryExpressionSyntax { RawKind: (int)SyntaxKind.CoalesceExpression } choice => [Instead(choice, choice.Right.ToString())],
        BinaryExpressionSyntax binary => Swapped(binary, binary.OperatorToken).Concat(Negated(binary)),
        AssignmentExpressionSyntax assignment => Swapped(assignment, assignment.OperatorToken),
        IsPatternExpressionSyntax test => [Not(test), .. Boundaries(test)],
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalNotExpression or (int)SyntaxKind.UnaryMinusExpression } sign =>
            [Instead(sign, sign.Operand.ToString())],
        PrefixUnaryExpressionSyntax step => Swapped(step, step.OperatorToken),
        PostfixUnaryExpressionSyntax step => Swapped(step, step.OperatorToken),
        LiteralExpressionSyntax literal => Number(literal),
        InvocationExpressionSyntax call when Calls.TryGetValue(call.Expression.ToString(), out var other) =>
            [Instead(call, other + call.ArgumentList.ToString())],
        InvocationExpressionSyntax or IdentifierNameSyntax or MemberAccessExpressionSyntax => Negated((ExpressionSyntax)node),
        ExpressionStatementSyntax statement => Removed(statement),
        ReturnStatementSyntax { Expression: null } or ContinueStatementSyntax => Removed((StatementSyntax)node),
        BreakStatementSyntax { Parent: not SwitchSectionSyntax } leave => Removed(leave),
        SwitchExpressionArmSyntax arm => Untaken(arm),
        _ => [],
    };

    private static Change Instead(ExpressionSyntax node, string other) =>
        new(node, $"`{Short(node)}` becomes `{Short(other)}`", (on, text) => $"({on} ? ({other}) : ({text}))");

    // A step as a statement of its own can't be a choice of two: the choice is assigned to nothing.
    private static IEnumerable<Change> Swapped(ExpressionSyntax node, SyntaxToken sign)
    {
        if (!Operators.TryGetValue(sign.Text, out var others)) yield break;
        var alone = node.Parent is ExpressionStatementSyntax || (node.Parent is ForStatementSyntax loop && loop.Condition != node);
        var text = node.ToString();
        var at = sign.SpanStart - node.SpanStart;
        foreach (var other in others)
        {
            var changed = text.Remove(at, sign.Text.Length).Insert(at, other);
            var change = Instead(node, changed);
            yield return alone ? change with { With = (on, same) => $"_ = {on} ? ({changed}) : ({same})" } : change;
        }
    }

    // A condition that is no comparison is turned round as a whole.
    private static IEnumerable<Change> Negated(ExpressionSyntax node)
    {
        if (IsCondition(node) && !Operators.ContainsKey((node as BinaryExpressionSyntax)?.OperatorToken.Text ?? "")) yield return Not(node);
    }

    private static bool IsCondition(ExpressionSyntax node) => node.Parent switch
    {
        IfStatementSyntax or WhileStatementSyntax or WhenClauseSyntax => true,
        ForStatementSyntax loop => loop.Condition == node,
        ConditionalExpressionSyntax choice => choice.Condition == node,
        BinaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalAndExpression or (int)SyntaxKind.LogicalOrExpression } => true,
        _ => false,
    };

    // What a condition names is needed afterwards: such a one can be made false, but not turned round.
    private static Change Not(ExpressionSyntax node) => Names(node)
        ? new(node, $"`{Short(node)}` is never so", (on, text) => $"(({text}) && !{on})")
        : new(node, $"`{Short(node)}` is turned round", (on, text) => $"({on} ^ ({text}))");

    private static bool Names(SyntaxNode node) => node.DescendantNodes().Any(static n => n is SingleVariableDesignationSyntax);

    // Nothing in a pattern can be switched by itself, so the whole test is written twice.
    private static IEnumerable<Change> Boundaries(IsPatternExpressionSyntax test)
    {
        foreach (var part in test.Pattern.DescendantNodesAndSelf().OfType<RelationalPatternSyntax>())
        {
            foreach (var other in Operators[part.OperatorToken.Text])
            {
                var at = part.OperatorToken.SpanStart - test.SpanStart;
                yield return Instead(test, test.ToString().Remove(at, part.OperatorToken.Text.Length).Insert(at, other));
            }
        }
    }

    private static IEnumerable<Change> Number(LiteralExpressionSyntax literal)
    {
        var other = literal.Token.Value switch
        {
            true => "false",
            false => "true",
            int number => (number == 1 ? 0 : number + 1).ToString(CultureInfo.InvariantCulture),
            long number => (number == 1 ? 0 : number + 1).ToString(CultureInfo.InvariantCulture) + "L",
            _ => null,
        };
        if (other is not null) yield return Instead(literal, other);
    }

    private static IEnumerable<Change> Removed(StatementSyntax statement)
    {
        if (statement is ExpressionStatementSyntax { Expression: not (InvocationExpressionSyntax or AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression }) })
            yield break;
        var embedded = statement.Parent is not (BlockSyntax or SwitchSectionSyntax);
        yield return new(statement, $"`{Short(statement)}` is left out", (on, text) => embedded ? $"{{ if (!{on}) {text} }}" : $"if (!{on}) {text}");
    }

    private static IEnumerable<Change> Untaken(SwitchExpressionArmSyntax arm)
    {
        if (arm.Pattern is DiscardPatternSyntax && arm.WhenClause is null) yield break;
        var when = arm.WhenClause is null ? " when " : " && ";
        var arrow = $"{arm.Pattern} {arm.WhenClause}".TrimEnd();
        yield return new(arm, $"`{Short(arrow)}` is never taken", (on, text) => WithGuard(text, when + "!" + on));
    }

    private static string WithGuard(string armText, string guard)
    {
        var arm = ((SwitchExpressionSyntax)SyntaxFactory.ParseExpression($"x switch {{ {armText} }}")).Arms[0];
        var condition = arm.WhenClause is null ? "" : $" when ({arm.WhenClause.Condition})";
        return $"{arm.Pattern}{condition}{guard} => {arm.Expression}";
    }

    private static string Short(SyntaxNode node) => Short(node.ToString());

    private static string Short(string text)
    {
        var line = string.Join(' ', text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= 90 ? line : line[..87] + "...";
    }
}
