using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>A node of a line's tree.</summary>
/// <param name="Node">The node.</param>
/// <param name="Role">What it is of the node that holds it: the name of its property.</param>
/// <param name="Holder">What holds it; null for the statement itself.</param>
internal sealed record NodeInLine(SyntaxNode Node, string Role, NodeInLine? Holder)
{
    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();

    /// <summary>All nodes of a statement, itself first.</summary>
    public static IReadOnlyList<NodeInLine> All(StatementSyntax statement)
    {
        var all = new List<NodeInLine> { new(statement, "", null) };
        for (var i = 0; i < all.Count; i++) all.AddRange(PartsOf(all[i]));
        return all;
    }

    /// <summary>The nearest node of a kind that holds this one; null if none does.</summary>
    public T? In<T>()
        where T : SyntaxNode
    {
        for (var holder = Holder; holder is not null; holder = holder.Holder)
        {
            if (holder.Node is T found) return found;
        }

        return null;
    }

    /// <summary>True if this node, or one that holds it, stands in a role.</summary>
    public bool IsIn(params ReadOnlySpan<string> roles)
    {
        for (var node = this; node.Holder is not null; node = node.Holder)
        {
            if (roles.Contains(node.Role)) return true;
        }

        return false;
    }

    private static IEnumerable<NodeInLine> PartsOf(NodeInLine holder)
    {
        foreach (var property in Properties.GetOrAdd(holder.Node.GetType(), type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance)))
        {
            switch (property.GetValue(holder.Node))
            {
                case SyntaxNode node:
                    yield return new NodeInLine(node, property.Name, holder);
                    break;
                case string:
                    break;
                case IEnumerable list:
                    foreach (var node in list.OfType<SyntaxNode>()) yield return new NodeInLine(node, property.Name, holder);
                    break;
            }
        }
    }
}
