using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>
/// README's commands do what README says. Each <c>sh</c> block is run against the built command in a copy of the patterns; where a <c>text</c>
/// block follows, it is what the commands print. A line <c>…</c> there stands for any lines.
/// </summary>
public sealed class ReadmeTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_command_in_README_does_what_it_says()
    {
        // A pattern is what the commands are about; before the first one there is nothing to run them on.
        if (!TrackedFiles.All.Any(IsPattern)) return;
        foreach (var file in TrackedFiles.All.Where(IsPattern)) _folder.Write(file, File.ReadAllBytes(Repository.PathOf(file)));
        foreach (var example in ReadmeExamples.Of(File.ReadAllText(Repository.PathOf("README.md"))))
        {
            var ran = OutOfProcess.Shell(_folder.Path, example.Script);
            if (example.Output is null) Assert.True(ran.Code == 0, $"{example.Script}\nends with {ran.Code}:\n{ran.Out}");
            else if (ReadmeExamples.Difference(example.Output, ran.Out) is { } difference) Assert.Fail($"{example.Script}\n{difference}\nIt printed:\n{ran.Out}");
        }
    }

    [Fact]
    public void Examples_are_read_with_what_they_print()
    {
        const string document = "# T\n```sh\n$ turnrow a\n$ turnrow b\n```\n\n```text\nx\n```\n\n```sh\ndotnet run --project src/Turnrow.Cli -c Release -- build p\n```\nprose\n```text\nno output\n```\n```sh\ndotnet test Compiler.sln\n```\n";
        Assert.Equal([new ReadmeExample("turnrow a\nturnrow b", "x\n"), new ReadmeExample("turnrow build p", null)], ReadmeExamples.Of(document));
    }

    [Theory]
    [InlineData("a\nb\n", "a\nb\n", true)]
    [InlineData("a\n", "a\nb\n", false)]
    [InlineData("a\n…\n", "a\nb\nc\n", true)]
    [InlineData("a\n…\nd\n", "a\nb\nc\nd\n", true)]
    [InlineData("…\nb\n…\nd\n", "a\nb\nc\nb\nd\n", true)]
    [InlineData("a\n…\nd\n", "a\nb\nc\n", false)]
    [InlineData("…\n", "", true)]
    [InlineData("a\nb\n", "a\n", false)]
    public void Three_dots_stand_for_any_lines(string shown, string printed, bool same) =>
        Assert.Equal(same, ReadmeExamples.Difference(shown, printed) is null);

    private static bool IsPattern(string file) => file.StartsWith("patterns/", StringComparison.Ordinal) && file.EndsWith(".turnrow", StringComparison.Ordinal);
}
