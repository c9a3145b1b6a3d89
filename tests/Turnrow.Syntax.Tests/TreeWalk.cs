using System.Collections;
using System.Reflection;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Tests;

/// <summary>All nodes below a node, each with the one that holds it.</summary>
internal static class TreeWalk
{
    public static IEnumerable<(SyntaxNode Parent, SyntaxNode Child)> Parts(SyntaxNode node)
    {
        foreach (var property in node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            foreach (var child in Nodes(property.GetValue(node)))
            {
                yield return (node, child);
                foreach (var part in Parts(child)) yield return part;
            }
        }
    }

    private static IEnumerable<SyntaxNode> Nodes(object? value) => value switch
    {
        SyntaxNode node => [node],
        string => [],
        IEnumerable list => list.OfType<SyntaxNode>(),
        _ => [],
    };
}
