using System.Collections;
using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Tests;

/// <summary>Compares trees by what they say and where it stands, lists included; fast enough to do it many thousand times.</summary>
internal static class TreeShape
{
    private static readonly ConcurrentDictionary<Type, Func<object, object?>[]> Getters = new();

    /// <summary>True if both say the same, the second standing <paramref name="shift"/> units behind the first.</summary>
    public static bool Same(object? first, object? second, int shift)
    {
        if (first is null || second is null) return first is null && second is null;
        if (first is TextSpan span) return second is TextSpan other && other.Start == span.Start + shift && other.Length == span.Length;
        if (first.GetType() != second.GetType()) return false;
        if (first is not SyntaxNode) return first is IList list ? SameList(list, (IList)second, shift) : first.Equals(second);
        foreach (var getter in Getters.GetOrAdd(first.GetType(), MakeGetters))
        {
            if (!Same(getter(first), getter(second), shift)) return false;
        }

        return true;
    }

    private static bool SameList(IList first, IList second, int shift)
    {
        if (first.Count != second.Count) return false;
        for (var i = 0; i < first.Count; i++)
        {
            if (!Same(first[i], second[i], shift)) return false;
        }

        return true;
    }

    private static Func<object, object?>[] MakeGetters(Type type) =>
    [
        .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Select(property =>
        {
            var node = Expression.Parameter(typeof(object));
            var value = Expression.Property(Expression.Convert(node, type), property);
            return Expression.Lambda<Func<object, object?>>(Expression.Convert(value, typeof(object)), node).Compile();
        }),
    ];
}
