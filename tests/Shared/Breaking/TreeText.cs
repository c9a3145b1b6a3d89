using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Tests;

/// <summary>A node as text, for goldens: what it says, without where it stands.</summary>
internal static class TreeText
{
    public static string Of(SyntaxNode? node)
    {
        var text = new StringBuilder();
        Write(text, node);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case NumberSyntax number:
                text.Append(CultureInfo.InvariantCulture, $"{number.Numerator}");
                if (number.Denominator != 1) text.Append(CultureInfo.InvariantCulture, $"/{number.Denominator}");
                break;
            case NameSyntax name:
                text.Append(name.Text);
                break;
            case QuotedSyntax quoted:
                text.Append('"').Append(quoted.Text).Append('"');
                break;
            case SideSyntax side:
                text.Append(side.RightSide ? "RS" : "WS");
                break;
            case SyntaxNode node:
                WriteNode(text, node);
                break;
            case string word:
                text.Append('"').Append(word).Append('"');
                break;
            case IEnumerable list:
                WriteList(text, list);
                break;
            default:
                text.Append(CultureInfo.InvariantCulture, $"{value}");
                break;
        }
    }

    private static void WriteNode(StringBuilder text, SyntaxNode node)
    {
        text.Append(ShortName(node.GetType()));
        text.Append('(');
        var first = true;
        foreach (var property in node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var value = property.GetValue(node);
            // What is unsaid is left out, so that a golden can be read.
            if (property.PropertyType == typeof(TextSpan) || value is null or ClaimScope.Usual or IList { Count: 0 }) continue;
            if (value is false && property.PropertyType == typeof(bool)) continue;
            if (!first) text.Append(", ");
            first = false;
            text.Append(property.Name).Append(": ");
            Write(text, value);
        }

        text.Append(')');
    }

    private static void WriteList(StringBuilder text, IEnumerable list)
    {
        text.Append('[');
        var first = true;
        foreach (var item in list)
        {
            if (!first) text.Append("; ");
            first = false;
            Write(text, item);
        }

        text.Append(']');
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
