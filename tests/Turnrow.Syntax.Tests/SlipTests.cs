using System.Text;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>What designers get wrong, and what they are told: one line, one diagnostic, with a mend wherever there is one.</summary>
public sealed class SlipTests
{
    private const string Slips = "tests/Turnrow.Syntax.Tests/Golden/slips.turnrow";

    [Fact]
    public void Each_slip_is_explained_as_it_was_checked_by_a_person()
    {
        var source = new SourceText("slips.turnrow", File.ReadAllText(Repository.PathOf(Slips)));
        var tree = SyntaxReader.Read(source);
        var text = new StringBuilder();
        for (var line = 1; line <= source.LineCount; line++)
        {
            var found = tree.Diagnostics.Where(diagnostic => source.PositionOf(diagnostic.Span.Start).Line == line).ToList();
            if (found.Count == 0 && source.LineSpan(line).Length > 0) text.Append(source.ToString(source.LineSpan(line))).Append("\n   is read\n");
            foreach (var diagnostic in found)
            {
                text.Append(DiagnosticPrinter.Print(diagnostic, source));
                foreach (var mend in diagnostic.Mends) text.Append("   -> ").Append(Mended(source, line, mend)).Append('\n');
            }

            text.Append('\n');
        }

        Golden.Matches("tests/Turnrow.Syntax.Tests/Golden/slips.txt", text.ToString());
    }

    private static string Mended(SourceText source, int line, Mend mend)
    {
        var span = source.LineSpan(line);
        var text = source.ToString(span);
        return text[..(mend.Span.Start - span.Start)] + mend.NewText + text[(mend.Span.End - span.Start)..];
    }
}
