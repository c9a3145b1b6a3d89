using System.Text;
using Turnrow.Cli.Files;
using Turnrow.Publishing;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>Whenever the writer is killed, each file is the old one or the new one, whole.</summary>
public sealed class WholeFileTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Until_the_last_step_the_old_file_is_untouched()
    {
        var path = _folder.Write("a.md", "old");
        WholeFile.Stage(path, "new"u8);
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Equal("new", File.ReadAllText(WholeFile.PartOf(path)));
        WholeFile.Commit(path);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal(["a.md"], _folder.Files);
    }

    [Fact]
    public void What_a_killed_run_left_behind_is_gone_after_the_next()
    {
        var path = _folder.Write("a.md", "old");
        WholeFile.Stage(path, Encoding.UTF8.GetBytes("much longer than what comes next"));
        WholeFile.Write(path, "new"u8);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal(["a.md"], _folder.Files);
    }

    [Fact]
    public void What_a_killed_run_left_of_a_chart_that_is_no_longer_made_is_taken_away()
    {
        _folder.Write("out/.a.front.svg.part", "half");
        _folder.Write("out/.a.b.front.svg.part", "of another pattern, a.b, which may be published just now");
        _folder.Write("out/.a.svg.part", "no chart of ours");
        _folder.Write("out/a.front.svg", "whole");
        new OutputFolder(_folder["out"]).RemoveLeftCharts("a");
        Assert.Equal(["out/.a.b.front.svg.part", "out/.a.svg.part", "out/a.front.svg"], _folder.Files);
    }

    [Fact]
    public void All_files_of_a_pattern_stand_beside_the_old_ones_before_the_first_is_replaced()
    {
        _folder.Write("out/a.md", "old");
        _folder.Write("out/b.md/keep", "a folder where a file should go");
        PublishedFile[] files = [new("a.md", "new"), new("b.md", "new")];
        Assert.ThrowsAny<Exception>(() => new OutputFolder(_folder["out"]).Write(files));
        // The rename of the second failed; the first is whole and new, and no part is left.
        Assert.Equal(["out/a.md", "out/b.md/keep"], _folder.Files);
        Assert.Equal("new", File.ReadAllText(_folder["out/a.md"]));
    }

    [Fact]
    public void A_file_that_can_not_be_staged_leaves_all_old_ones()
    {
        _folder.Write("out/a.md", "old");
        _folder.Write("out/.b.md.part/keep", "in the way");
        PublishedFile[] files = [new("a.md", "new"), new("b.md", "new")];
        Assert.ThrowsAny<Exception>(() => new OutputFolder(_folder["out"]).Write(files));
        Assert.Equal("old", File.ReadAllText(_folder["out/a.md"]));
        Assert.Equal(["out/.b.md.part/keep", "out/a.md"], _folder.Files);
    }

    [Theory]
    [InlineData("../a.md")]
    [InlineData("sub/a.md")]
    [InlineData("sub\\a.md")]
    [InlineData("..")]
    [InlineData("")]
    public void Nothing_is_written_outside_the_folder(string name)
    {
        Assert.Throws<InvalidOperationException>(() => new OutputFolder(_folder["out"]).Write([new(name, "text")]));
        Assert.Empty(_folder.Files);
    }

    [Fact]
    public void A_link_in_the_folder_is_replaced_and_what_it_leads_to_is_left()
    {
        if (OperatingSystem.IsWindows()) return;
        var elsewhere = _folder.Write("elsewhere.txt", "kept");
        Directory.CreateDirectory(_folder["out"]);
        File.CreateSymbolicLink(_folder["out/a.md"], elsewhere);
        File.CreateSymbolicLink(_folder["out/.a.md.part"], elsewhere);
        new OutputFolder(_folder["out"]).Write([new("a.md", "new")]);
        Assert.Equal("kept", File.ReadAllText(elsewhere));
        Assert.Equal("new", File.ReadAllText(_folder["out/a.md"]));
        Assert.Null(new FileInfo(_folder["out/a.md"]).LinkTarget);
    }

    [Fact]
    public void A_pattern_that_is_rewritten_keeps_its_rights_and_its_link()
    {
        if (OperatingSystem.IsWindows()) return;
        var path = _folder.Write("a.turnrow", "old");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        var link = _folder["link.turnrow"];
        File.CreateSymbolicLink(link, path);
        WholeFile.Rewrite(link, "new"u8);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal(path, new FileInfo(link).LinkTarget);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, File.GetUnixFileMode(path));
    }
}
