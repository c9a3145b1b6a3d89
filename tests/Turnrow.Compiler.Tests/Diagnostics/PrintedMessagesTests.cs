using System.Text;
using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Diagnostics;

/// <summary>What each bad example prints, so that a person can read the messages one after the other and a change to one shows.</summary>
public sealed class PrintedMessagesTests
{
    private const int LongestExample = 900;

    [Theory]
    [InlineData("reading", "TR01", "TR02")]
    [InlineData("names-and-numbers", "TR0201", "TR0221")]
    [InlineData("header-and-words", "TR0221", "TR03")]
    [InlineData("rows", "TR0301", "TR0320")]
    [InlineData("edges-and-shaping", "TR0320", "TR0340")]
    [InlineData("parts-and-joins", "TR0340", "TR04")]
    public void They_read_as_reviewed(string group, string from, string to)
    {
        var text = new StringBuilder();
        foreach (var kind in Examples.Kinds)
        {
            if (string.CompareOrdinal(kind.Code, from) >= 0 && string.CompareOrdinal(kind.Code, to) < 0) Append(text, kind);
        }

        Golden.Matches($"tests/Turnrow.Compiler.Tests/golden/diagnostics-{group}.txt", text.ToString());
    }

    private static void Append(StringBuilder text, DiagnosticKind kind)
    {
        var source = Examples.Bad(kind);
        text.Append("==== ").Append(kind.Name).Append("\n\n");
        if (source.Text.Length <= LongestExample) text.Append(source.Text.TrimEnd()).Append("\n\n");
        foreach (var diagnostic in Examples.Found(source)) text.Append(DiagnosticPrinter.Print(diagnostic, source)).Append('\n');
    }
}
