using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The built program, run as a shell runs it.</summary>
public sealed class BuiltCommandTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void It_says_its_version_in_plain_bytes()
    {
        Assert.Equal(new Ran(0, $"turnrow {TurnrowVersion.Text}\n", ""), OutOfProcess.Run(_folder.Path, "--version"));
    }

    [Fact]
    public void A_new_pattern_is_written_once_and_checks_clean()
    {
        var made = OutOfProcess.Run(_folder.Path, "new", "summer-bag");
        Assert.Equal((0, ""), (made.Code, made.Error));
        var text = File.ReadAllText(_folder["summer-bag.turnrow"]);
        Assert.Contains("pattern \"Summer Bag\"\n", text, StringComparison.Ordinal);

        var check = OutOfProcess.Run(_folder.Path, "check", ".");
        Assert.Equal((0, ""), (check.Code, check.Error));
        Assert.EndsWith(": no errors, no warnings\n", check.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', check.Out);

        var again = OutOfProcess.Run(_folder.Path, "new", "summer-bag.turnrow");
        Assert.Equal((2, ""), (again.Code, again.Out));
        Assert.Contains("is there already", again.Error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(_folder["summer-bag.turnrow"]));
        Assert.Equal(["summer-bag.turnrow"], _folder.Files);
    }

    [Fact]
    public void A_file_that_is_not_there_ends_with_2_and_the_others_are_done()
    {
        OutOfProcess.Run(_folder.Path, "new", "bag");
        var ran = OutOfProcess.Run(_folder.Path, "check", "bog.turnrow", "bag.turnrow");
        Assert.Equal(2, ran.Code);
        Assert.Equal("turnrow: bog.turnrow is not there; did you mean `bag.turnrow`?\n", ran.Error);
        Assert.StartsWith("bag.turnrow: ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_short_by_head_it_ends_quietly()
    {
        if (OperatingSystem.IsWindows()) return;
        for (var i = 0; i < 300; i++) _folder.Write($"a{i}.turnrow", "");
        Assert.Equal("1\n", OutOfProcess.Shell(_folder.Path, "turnrow check . | head -n 1 | wc -l | tr -d ' '").Out);
    }
}
