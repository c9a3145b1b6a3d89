using System.Text.RegularExpressions;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>
/// The manual's commands do what its pages say, run against the built command in one folder a page, in the page's order. A block
/// <c>turnrow file NAME</c> is written there as that file, without the comments that say which errors it gives.
/// </summary>
public sealed partial class ManualTests
{
    public static TheoryData<string> Pages =>
        [.. TrackedFiles.All.Where(file => file.StartsWith("grammar/manual/", StringComparison.Ordinal) && file.EndsWith(".md", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_command_does_what_the_page_says(string page)
    {
        using var folder = new ScratchFolder();
        var text = File.ReadAllText(Repository.PathOf(page)).ReplaceLineEndings("\n");
        var from = 0;
        foreach (Match file in FileBlock().Matches(text))
        {
            Run(folder, page, text[from..file.Index]);
            folder.Write(file.Groups["name"].Value, System.Text.Encoding.UTF8.GetBytes(Expectation().Replace(file.Groups["text"].Value, "")));
            from = file.Index + file.Length;
        }

        Run(folder, page, text[from..]);
    }

    private static void Run(ScratchFolder folder, string page, string part)
    {
        foreach (var example in ReadmeExamples.Of(part))
        {
            var ran = OutOfProcess.Shell(folder.Path, example.Script);
            if (example.Output is null) Assert.True(ran.Code == 0, $"{page}: {example.Script}\nends with {ran.Code}:\n{ran.Out}");
            else if (ReadmeExamples.Difference(example.Output, ran.Out) is { } difference) Assert.Fail($"{page}: {example.Script}\n{difference}\nIt printed:\n{ran.Out}");
        }
    }

    [GeneratedRegex(@"^```turnrow file (?<name>\S+)\n(?<text>.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex FileBlock();

    [GeneratedRegex(@" *# (error|warning): .*$", RegexOptions.Multiline)]
    private static partial Regex Expectation();
}
