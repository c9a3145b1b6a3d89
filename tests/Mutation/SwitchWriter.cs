using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Turnrow.Mutation;

/// <summary>Writes changes into a file, each behind its switch.</summary>
/// <param name="changes">The changes of a node, each with its number.</param>
internal sealed class SwitchWriter(ILookup<SyntaxNode, (Change Change, int Id)> changes) : CSharpSyntaxRewriter
{
    /// <summary>The switch, which is put beside the row model's own files.</summary>
    public const string Switch = """
        namespace Turnrow.Fabric;

        public static class Mutant
        {
            public static int Active = -1;
            public static bool[]? Reached;

            public static bool Is(int id)
            {
                if (Reached is { } reached) reached[id] = true;
                return Active == id;
            }
        }
        """;

    public override SyntaxNode? Visit(SyntaxNode? node)
    {
        var visited = base.Visit(node);
        if (node is null || visited is null || !changes.Contains(node)) return visited;
        var text = visited.ToString();
        foreach (var (change, id) in changes[node])
            text = change.With(string.Create(CultureInfo.InvariantCulture, $"global::Turnrow.Fabric.Mutant.Is({id})"), text);
        return Parsed(node, text).WithTriviaFrom(node);
    }

    private static SyntaxNode Parsed(SyntaxNode node, string text) => node switch
    {
        StatementSyntax => SyntaxFactory.ParseStatement(text),
        SwitchExpressionArmSyntax => ((SwitchExpressionSyntax)SyntaxFactory.ParseExpression($"x switch {{ {text} }}")).Arms[0],
        _ => SyntaxFactory.ParseExpression(text),
    };
}
