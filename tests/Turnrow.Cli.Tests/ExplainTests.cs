using System.Text;
using Turnrow.Cli.Reports;
using Turnrow.Compiler;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>Every diagnostic has a page, a bad example that gives it and nothing else, and a good one that gives nothing.</summary>
public sealed class ExplainTests
{
    public static TheoryData<string> Names => [.. ExplainPages.All.Select(kind => kind.Name)];

    [Fact]
    public void Names_and_codes_are_given_once_and_look_alike()
    {
        Assert.NotEmpty(ExplainPages.All);
        Assert.Empty(Twice(ExplainPages.All.Select(kind => kind.Name)));
        Assert.Empty(Twice(ExplainPages.All.Select(kind => kind.Code)));
        Assert.All(ExplainPages.All, kind => Assert.Matches("^[a-z]+(-[a-z]+)*$", kind.Name));
        Assert.All(ExplainPages.All, kind => Assert.Matches("^TR0[0-9]{3}$", kind.Code));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_example_gives_it_and_no_other(string name)
    {
        var kind = KindOf(name);
        var found = Compile(kind.BadFile?.Invoke() ?? Encoding.UTF8.GetBytes(kind.Bad));
        Assert.True(found.Count > 0, $"the bad example of {name} gives nothing:\n{kind.Bad}");
        Assert.All(found, finding => Assert.True(finding.Kind == kind, $"the bad example of {name} gives {finding.Kind.Name}: {finding.Message}\n{kind.Bad}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_example_gives_nothing(string name)
    {
        var kind = KindOf(name);
        var found = Compile(Encoding.UTF8.GetBytes(kind.Good));
        Assert.True(found.Count == 0, $"the good example of {name} gives {string.Join("; ", found.Select(finding => $"{finding.Kind.Name}: {finding.Message}"))}\n{kind.Good}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_is_printed_by_name_and_by_code(string name)
    {
        var kind = KindOf(name);
        Assert.True(kind.Page.Trim().Length >= 80, $"the page of {name} says next to nothing");
        Assert.True(kind.Bad != kind.Good, $"both examples of {name} are the same");
        var page = InProcess.Turnrow("explain", kind.Name);
        Assert.Equal((0, ""), (page.Code, page.Error));
        Assert.Equal(page, InProcess.Turnrow("explain", kind.Code));
        Assert.Equal(page, InProcess.Turnrow("explain", $"[{kind.Code.ToLowerInvariant()}]"));
        Assert.StartsWith($"{kind.Name} [{kind.Code}], ", page.Out, StringComparison.Ordinal);
        Assert.Contains(kind.Page.Trim(), page.Out, StringComparison.Ordinal);
        foreach (var line in (kind.Bad + "\n" + kind.Good).Split('\n').Where(line => line.Trim().Length > 0))
            Assert.Contains("    " + line, page.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_all_are_listed()
    {
        var list = InProcess.Turnrow("explain");
        Assert.Equal((0, ""), (list.Code, list.Error));
        Assert.All(ExplainPages.All, kind => Assert.Matches($@"\n  {kind.Name} +{kind.Code}  (error|warning)\n", list.Out));
    }

    [Fact]
    public void A_misspelt_name_is_answered_with_the_nearest()
    {
        var kind = ExplainPages.All[0];
        var ran = InProcess.Turnrow("explain", kind.Name[..^1]);
        Assert.Equal(2, ran.Code);
        Assert.Contains($"did you mean `{kind.Name}`?", ran.Error, StringComparison.Ordinal);
    }

    private static DiagnosticKind KindOf(string name) => ExplainPages.All.Single(kind => kind.Name == name);

    private static IReadOnlyList<Diagnostic> Compile(byte[] bytes) => Compilation.Of(SourceText.FromBytes("example.turnrow", bytes)).Diagnostics;

    private static IEnumerable<string> Twice(IEnumerable<string> words) => words.GroupBy(word => word).Where(group => group.Count() > 1).Select(group => group.Key);
}
