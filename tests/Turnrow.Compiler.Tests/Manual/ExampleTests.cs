using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Manual;

/// <summary>Each example of the manual is compiled: it gives what it says at its lines' ends, and nothing else.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Pages => [.. ManualPage.All.Select(page => page.Name)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Examples_give_what_they_say(string page)
    {
        var wrong = Page(page).Blocks.Where(block => block.IsNotation).SelectMany(Differences).ToList();
        Assert.True(wrong.Count == 0, string.Join("\n\n", wrong));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Messages_are_shown_as_they_are_printed(string page)
    {
        ManualBlock? example = null;
        foreach (var block in Page(page).Blocks)
        {
            if (block.IsNotation) example = block;
            if (!block.IsMessage) continue;
            Assert.NotNull(example);
            Assert.Equal(string.Join('\n', block.Lines), Printed(example));
        }
    }

    private static ManualPage Page(string name) => ManualPage.All.Single(page => page.Name == name);

    private static IEnumerable<string> Differences(ManualBlock block)
    {
        var example = ManualFrames.All.Frame(block);
        var compilation = ManualFrames.Compile(example, page: ManualPage.All.Single(page => page.Name == block.Page));
        var expected = Expectation.Of(block).ToList();
        foreach (var found in compilation.Diagnostics)
        {
            var line = compilation.Tree.Source.PositionOf(found.Span.Start).Line - example.FirstLine + 1;
            var met = expected.FindIndex(one => one.IsMetBy(found, line));
            if (met >= 0) expected.RemoveAt(met);
            else yield return $"{block}: not said at the end of line {line} ({block.Page}:{block.Line + line - 1}):\n{DiagnosticPrinter.Print(found, compilation.Tree.Source)}";
        }

        foreach (var missing in expected) yield return $"{block}: said and not found: {missing} ({block.Page}:{block.Line + missing.Line - 1})";
    }

    private static string Printed(ManualBlock block)
    {
        var compilation = ManualFrames.Compile(ManualFrames.All.Frame(block), block.FileName ?? "example");
        return string.Join('\n', compilation.Diagnostics.Select(found => DiagnosticPrinter.Print(found, compilation.Tree.Source))).TrimEnd();
    }
}
