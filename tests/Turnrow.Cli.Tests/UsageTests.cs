using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>What is typed wrongly is answered in words, with what to type instead, and ends with 2.</summary>
public sealed class UsageTests
{
    [Theory]
    [InlineData("chek", "did you mean `check`?")]
    [InlineData("--hlp", "did you mean `--help`?")]
    [InlineData("check", "check needs a FILE or a FOLDER")]
    [InlineData("check --jsn x.turnrow", "check knows no `--jsn`; did you mean `--json`?")]
    [InlineData("rows", "rows needs a FILE")]
    [InlineData("rows a.turnrow b.turnrow", "rows has no use for `b.turnrow`")]
    [InlineData("rows a.turnrow --piece", "--piece")]
    [InlineData("build --out o", "build needs a FILE")]
    [InlineData("build a.turnrow", "build needs --out DIR")]
    [InlineData("build a.turnrow --out o --terms XX", "there are no `XX` terms")]
    [InlineData("explain no-such-thing", "no finding is called `no-such-thing`")]
    [InlineData("new ---", "a pattern can't be called")]
    [InlineData("new", "new needs a NAME")]
    [InlineData("--version check", "check")]
    [InlineData("claim", "claim needs a FILE")]
    [InlineData("gauge --stitches 17 --rows 9", "gauge needs a FILE")]
    [InlineData("gauge a.turnrow", "gauge needs --stitches N or --rows N")]
    [InlineData("gauge a.turnrow --stitches 0", "`0` can't be counted on a swatch")]
    [InlineData("gauge a.turnrow --rows 9,5", "`9,5` can't be counted on a swatch")]
    [InlineData("gauge a.turnrow --rows 9#", "`9#` can't be counted on a swatch")]
    [InlineData("gauge a.turnrow --stitchs 9", "did you mean `--stitches`?")]
    [InlineData("claim not-there.turnrow", "not-there.turnrow is not there")]
    [InlineData("check @file", "@file is not there")]
    public void Wrong_use_says_what_is_right(string line, string says)
    {
        var ran = InProcess.Turnrow(line == "new ---" ? ["new", "--", "---"] : line.Split(' '));
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.StartsWith("turnrow: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("build")]
    [InlineData("rows")]
    [InlineData("claim")]
    [InlineData("gauge")]
    [InlineData("explain")]
    [InlineData("new")]
    public void Every_verb_has_a_page_with_its_use_and_an_example(string verb)
    {
        foreach (var help in new[] { "--help", "-h" })
        {
            var ran = InProcess.Turnrow(verb, help);
            Assert.Equal((0, ""), (ran.Code, ran.Error));
            Assert.StartsWith($"turnrow {verb} ", ran.Out, StringComparison.Ordinal);
            Assert.Matches($@"\nFor example:\n  turnrow {verb} [^\n]+\n$", ran.Out);
            FitsAScreen(ran.Out);
        }
    }

    [Theory]
    [InlineData("rows")]
    [InlineData("claim")]
    [InlineData("gauge", "--rows", "9")]
    public void A_verb_for_one_pattern_takes_no_folder(string verb, params string[] options)
    {
        using var folder = new ScratchFolder();
        folder.Write("a.turnrow", "");
        var ran = InProcess.Turnrow([verb, folder.Path, .. options]);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("is a folder", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_word_it_shows_all_that_can_be_typed()
    {
        var bare = InProcess.Turnrow();
        Assert.Equal((0, ""), (bare.Code, bare.Error));
        Assert.Equal(bare, InProcess.Turnrow("--help"));
        foreach (var verb in new[] { "check", "build", "rows", "claim", "gauge", "explain", "new" })
            Assert.Contains($"\n  turnrow {verb} ", bare.Out, StringComparison.Ordinal);
        FitsAScreen(bare.Out);
    }

    [Fact]
    public void The_version_is_the_projects()
    {
        var version = System.Xml.Linq.XDocument.Load(Repository.PathOf("Directory.Build.props")).Descendants("Version").Single().Value;
        Assert.Equal(new Ran(0, $"turnrow {version}\n", ""), InProcess.Turnrow("--version"));
    }

    [Fact]
    public void A_fault_of_our_own_ends_in_an_apology_and_never_in_a_stack_trace()
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        using var terminal = new Terminal(output, error);
        var code = CommandLine.Guarded(() => throw new InvalidOperationException("a loop was dropped"), ["check", "x.turnrow"], terminal);
        var text = System.Text.Encoding.UTF8.GetString(error.ToArray());
        Assert.Equal(2, code);
        Assert.Contains("sorry", text, StringComparison.Ordinal);
        Assert.Contains("turnrow " + TurnrowVersion.Text, text, StringComparison.Ordinal);
        Assert.Contains("turnrow check x.turnrow", text, StringComparison.Ordinal);
        Assert.Contains("a loop was dropped", text, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_output_that_nobody_reads_any_more_ends_quietly()
    {
        using var gone = new GoneReader();
        using var error = new MemoryStream();
        using var terminal = new Terminal(gone, error);
        Assert.Equal(0, CommandLine.Run(["--help"], terminal));
        Assert.Empty(error.ToArray());
    }

    [Theory]
    [InlineData(null, "xterm", true)]
    [InlineData("", "xterm", true)]
    [InlineData("1", "xterm", false)]
    [InlineData("0", "xterm", false)]
    [InlineData(null, "dumb", false)]
    public void Colour_is_left_out_where_it_is_not_wanted(string? noColour, string kind, bool colour) =>
        Assert.Equal(colour, Terminal.MayColour(noColour, kind));

    [Theory]
    [InlineData(4, true, true)]
    [InlineData(3, true, false)]
    [InlineData(4, false, false)]
    public void Progress_is_told_to_a_person_who_waits_for_many_files(int files, bool watched, bool told)
    {
        using var folder = new ScratchFolder();
        for (var i = 0; i < files; i++) folder.Write($"a{i}.turnrow", "");
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        using var terminal = new Terminal(output, error) { ShowsProgress = watched };
        CommandLine.Run(["build", folder.Path, "--out", folder["out"]], terminal);
        var text = System.Text.Encoding.UTF8.GetString(error.ToArray());
        Assert.Equal(told, text.Contains($"[{files}/{files}] ", StringComparison.Ordinal));
        Assert.Equal(told, text.Contains(" \r", StringComparison.Ordinal));
        Assert.DoesNotContain("\r", System.Text.Encoding.UTF8.GetString(output.ToArray()), StringComparison.Ordinal);
    }

    private static void FitsAScreen(string page) =>
        Assert.All(page.Split('\n'), line => Assert.True(line.Length <= 110 && line == line.TrimEnd(), $"too wide or blanks at its end: {line}"));

    /// <summary>A pipe whose reader is gone, as <c>head</c> leaves it.</summary>
    private sealed class GoneReader : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new IOException("Broken pipe", 32);

        public override void Write(ReadOnlySpan<byte> buffer) => throw new IOException("Broken pipe", 32);
    }
}
