using System.Diagnostics;
using Xunit;
using Xunit.Abstractions;

namespace Turnrow.Cli.Tests;

/// <summary>
/// A build that is killed outright, at any moment: each file that stands under its name is whole, an old one or a new one, and the next
/// build leaves nothing behind of what was begun. Ten kills each; TURNROW_THOROUGH=1 makes it a hundred.
/// </summary>
public sealed class KilledBuildTests : IDisposable
{
    private const string Pattern = "fenland-wrap-waistcoat";
    private const int Seed = 71;

    private static readonly int Kills = Environment.GetEnvironmentVariable("TURNROW_THOROUGH") == "1" ? 100 : 10;

    private readonly ScratchFolder _folder = new();
    private readonly Random _random = new(Seed);
    private readonly Dictionary<string, byte[]> _us;
    private readonly Dictionary<string, byte[]> _uk;
    private readonly TimeSpan _wholeRun;
    private readonly TimeSpan _writing;
    private readonly ITestOutputHelper _output;
    private int _caught;

    public KilledBuildTests(ITestOutputHelper output)
    {
        _output = output;
        // Once to warm the disk's cache, and once to be measured.
        _us = Built("us", "US");
        (_wholeRun, _writing) = Measured("measured");
        _uk = Built("uk", "UK");
    }

    public void Dispose()
    {
        _output.WriteLine($"{_caught} of {Kills} kills left files that were not finished");
        _folder.Dispose();
    }

    [Fact]
    public void Over_what_is_there_each_file_stays_whole()
    {
        Built("out", "UK");
        for (var kill = 0; kill < Kills; kill++)
        {
            KillOne("out", kill % 2 == 0 ? "US" : "UK", kill % 3 != 0);
            foreach (var (name, bytes) in Standing("out")) Assert.True(bytes.SequenceEqual(_us[name]) || bytes.SequenceEqual(_uk[name]), name);
            Assert.Equal(_us.Keys.Order(StringComparer.Ordinal), Standing("out").Keys.Order(StringComparer.Ordinal));
        }

        AssertSame(_us, Built("out", "US"));
    }

    [Fact]
    public void In_an_empty_folder_each_file_is_there_whole_or_not_at_all()
    {
        for (var kill = 0; kill < Kills; kill++)
        {
            KillOne("new", "US", kill % 3 != 0);
            foreach (var (name, bytes) in Standing("new")) Assert.True(bytes.SequenceEqual(_us[name]), name);
            if (kill % 10 == 9) AssertSame(_us, Built("new", "US"));
            if (Directory.Exists(_folder["new"])) Directory.Delete(_folder["new"], recursive: true);
        }
    }

    /// <summary>Kills a build at a random moment of its run, or of the shorter time in which it writes.</summary>
    private void KillOne(string folder, string terms, bool whileWriting)
    {
        using var build = OutOfProcess.Start(_folder.Path, ArgumentsOf(folder, terms));
        if (whileWriting) WaitForFirstPart(build, folder);
        var moment = _random.NextDouble() * (whileWriting ? _writing : _wholeRun);
        for (var since = Stopwatch.StartNew(); since.Elapsed < moment && !build.HasExited;) Thread.SpinWait(50);
        build.Kill();
        build.WaitForExit();
        if (HasPart(folder)) _caught++;
    }

    private void WaitForFirstPart(Process build, string folder)
    {
        while (!build.HasExited && !HasPart(folder)) Thread.Sleep(1);
    }

    private bool HasPart(string folder) =>
        Directory.Exists(_folder[folder]) && Directory.EnumerateFiles(_folder[folder], ".*").Any(static file => file.EndsWith(".part", StringComparison.Ordinal));

    private (TimeSpan WholeRun, TimeSpan Writing) Measured(string folder)
    {
        var watch = Stopwatch.StartNew();
        using var build = OutOfProcess.Start(_folder.Path, ArgumentsOf(folder, "US"));
        WaitForFirstPart(build, folder);
        var before = watch.Elapsed;
        build.WaitForExit();
        return (watch.Elapsed, watch.Elapsed - before);
    }

    private Dictionary<string, byte[]> Built(string folder, string terms)
    {
        var ran = OutOfProcess.Run(_folder.Path, ArgumentsOf(folder, terms));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        return Directory.EnumerateFiles(_folder[folder]).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes);
    }

    private static string[] ArgumentsOf(string folder, string terms) =>
        ["build", Repository.PathOf($"patterns/{Pattern}.turnrow"), "--out", folder, "--terms", terms];

    /// <summary>The files under their own names: what has a name of its own is not finished.</summary>
    private Dictionary<string, byte[]> Standing(string folder) => Directory.Exists(_folder[folder])
        ? Directory.EnumerateFiles(_folder[folder]).Where(static file => !Path.GetFileName(file).StartsWith('.')).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes)
        : [];

    private static void AssertSame(Dictionary<string, byte[]> expected, Dictionary<string, byte[]> actual)
    {
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), actual.Keys.Order(StringComparer.Ordinal));
        Assert.All(expected, file => Assert.Equal(file.Value, actual[file.Key]));
    }
}
