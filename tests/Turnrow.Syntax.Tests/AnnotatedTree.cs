using System.Text;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tests;

/// <summary>A pattern with, under each of its lines, what the reader made of it.</summary>
internal static class AnnotatedTree
{
    public static string Of(SourceText source)
    {
        var tree = SyntaxReader.Read(source);
        var text = new StringBuilder();
        var next = 0;
        for (var number = 1; number <= source.LineCount; number++)
        {
            var span = source.LineSpan(number);
            if (number < source.LineCount || span.Length > 0) text.Append(source.ToString(span)).Append('\n');
            for (; next < tree.Lines.Count && source.PositionOf(tree.Lines[next].Span.End).Line == number; next++)
            {
                var line = tree.Lines[next];
                text.Append("    ~ ").Append(line.Broken ? "broken " : "").Append(TreeText.Of(line.Statement)).Append('\n');
            }

            foreach (var diagnostic in tree.Diagnostics.Where(found => source.PositionOf(found.Span.Start).Line == number))
                text.Append("    ! ").Append(diagnostic.Kind.Name).Append(": ").Append(diagnostic.Message).Append('\n');
        }

        return text.ToString();
    }
}
