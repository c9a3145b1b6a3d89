using Turnrow.Cli.Files;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>Which files a command line means.</summary>
public sealed class PatternFinderTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_folder_is_searched_to_its_depth_in_ordinal_order()
    {
        foreach (var name in new[] { "b.turnrow", "Z.turnrow", "a/x.turnrow", "a.turnrow", "a/deep/y.turnrow", "notes.md", ".hidden/z.turnrow", "ä.turnrow" })
            _folder.Write(name, "");
        var faults = new List<string>();
        var found = PatternFinder.Find([_folder.Path], faults.Add).Select(file => Path.GetRelativePath(_folder.Path, file).Replace('\\', '/'));
        Assert.Equal(["Z.turnrow", "a.turnrow", "a/deep/y.turnrow", "a/x.turnrow", "b.turnrow", "ä.turnrow"], found);
        Assert.Empty(faults);
    }

    [Fact]
    public void A_file_named_twice_is_done_once()
    {
        var path = _folder.Write("a.turnrow", "");
        Assert.Equal([path], PatternFinder.Find([path, _folder.Path, path], Assert.Fail));
    }

    [Fact]
    public void What_is_not_there_or_holds_nothing_is_said_and_the_rest_is_found()
    {
        var path = _folder.Write("poncho.turnrow", "");
        Directory.CreateDirectory(_folder["empty"]);
        var faults = new List<string>();
        Assert.Equal([path], PatternFinder.Find([_folder["ponxho.turnrow"], _folder["empty"], "", "a\0b", path], faults.Add));
        Assert.Equal(4, faults.Count);
        Assert.Contains("did you mean `" + path, faults[0], StringComparison.Ordinal);
        Assert.Contains("holds no pattern", faults[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_without_its_ending_is_told_with_it()
    {
        var path = _folder.Write("poncho.turnrow", "");
        var faults = new List<string>();
        Assert.Empty(PatternFinder.Find([_folder["poncho"]], faults.Add));
        Assert.Contains($"did you mean `{path}`?", Assert.Single(faults), StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_that_leads_round_in_a_circle_is_not_followed()
    {
        if (OperatingSystem.IsWindows()) return;
        var path = _folder.Write("a/x.turnrow", "");
        Directory.CreateSymbolicLink(_folder["a/round"], _folder.Path);
        Assert.Equal([path], PatternFinder.Find([_folder.Path], Assert.Fail));
    }
}
