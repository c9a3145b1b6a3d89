using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Tests;

/// <summary>A node as text, for goldens and comparisons: what it says, with or without where it stands.</summary>
internal static class TreeText
{
    /// <summary>The node's shape without its places.</summary>
    public static string Of(SyntaxNode? node)
    {
        var text = new StringBuilder();
        Write(text, node, spans: null);
        return text.ToString();
    }

    /// <summary>The node's shape with each place, counted from <paramref name="origin"/>.</summary>
    public static string WithSpans(SyntaxNode? node, int origin)
    {
        var text = new StringBuilder();
        Write(text, node, origin);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, int? spans)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case NumberSyntax number:
                text.Append(CultureInfo.InvariantCulture, $"{number.Numerator}");
                if (number.Denominator != 1) text.Append(CultureInfo.InvariantCulture, $"/{number.Denominator}");
                Place(text, number, spans);
                break;
            case NameSyntax name:
                text.Append(name.Text);
                Place(text, name, spans);
                break;
            case QuotedSyntax quoted:
                text.Append('"').Append(quoted.Text).Append('"');
                Place(text, quoted, spans);
                break;
            case SyntaxNode node:
                WriteNode(text, node, spans);
                break;
            case string word:
                text.Append('"').Append(word).Append('"');
                break;
            case IEnumerable list:
                WriteList(text, list, spans);
                break;
            default:
                text.Append(CultureInfo.InvariantCulture, $"{value}");
                break;
        }
    }

    private static void WriteNode(StringBuilder text, SyntaxNode node, int? spans)
    {
        text.Append(ShortName(node.GetType()));
        Place(text, node, spans);
        text.Append('(');
        var first = true;
        foreach (var property in node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var value = property.GetValue(node);
            // What is unsaid is left out, so that a golden can be read.
            if (property.PropertyType == typeof(TextSpan) || value is null or false or ClaimScope.Usual || value is IList { Count: 0 })
                continue;
            if (!first) text.Append(", ");
            first = false;
            text.Append(property.Name).Append(": ");
            Write(text, value, spans);
        }

        text.Append(')');
    }

    private static void WriteList(StringBuilder text, IEnumerable list, int? spans)
    {
        text.Append('[');
        var first = true;
        foreach (var item in list)
        {
            if (!first) text.Append("; ");
            first = false;
            Write(text, item, spans);
        }

        text.Append(']');
    }

    private static void Place(StringBuilder text, SyntaxNode node, int? spans)
    {
        if (spans is { } origin) text.Append(CultureInfo.InvariantCulture, $"@{node.Span.Start - origin}+{node.Span.Length}");
    }

    private static string ShortName(Type type)
    {
        foreach (var ending in new[] { "Statement", "Syntax", "Expression", "Amount" })
        {
            if (type.Name.EndsWith(ending, StringComparison.Ordinal)) return type.Name[..^ending.Length];
        }

        return type.Name;
    }
}
