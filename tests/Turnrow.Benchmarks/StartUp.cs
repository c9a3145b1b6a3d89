using System.Diagnostics;
using System.Globalization;

namespace Turnrow.Benchmarks;

/// <summary>
/// Whole native processes against a native hello world made in the same way, pair by pair: a machine that slows down slows down both of a
/// pair. What counts is the time on the processor, user and system, since the clock also counts what other programs do.
/// </summary>
internal static class StartUp
{
    private const int Pairs = 200;
    private const int PairsEach = 60;
    private const int WarmUp = 10;

    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("turnrow-startup").FullName;
        try
        {
            var turnrow = Published("src/Turnrow.Cli", folder, "turnrow");
            var hello = Published("tests/Turnrow.Benchmarks/Hello", folder, "hello");
            var (wide, narrow) = (Path.Combine(folder, "rows-1000.turnrow"), Path.Combine(folder, "rows-10.turnrow"));
            File.WriteAllText(wide, Texts.Blanket(1000));
            File.WriteAllText(narrow, Texts.Blanket(10));
            var (large, small) = (Path.Combine(folder, "square-200.turnrow"), Path.Combine(folder, "square-20.turnrow"));
            File.WriteAllText(large, Texts.Square(200));
            File.WriteAllText(small, Texts.Square(20));
            Compare("turnrow check, the waistcoat, to a hello world", () => ChildTime.Of(turnrow, "check", Texts.WaistcoatPath), () => ChildTime.Of(hello));
            Compare("turnrow --version, to a hello world", () => ChildTime.Of(turnrow, "--version"), () => ChildTime.Of(hello));
            Compare("turnrow check, a million stitches, to 10 rows of them", () => ChildTime.Of(turnrow, "check", wide), () => ChildTime.Of(turnrow, "check", narrow));
            Compare("turnrow check, a granny square of 200 rounds, to 20 rounds of it", () => ChildTime.Of(turnrow, "check", large), () => ChildTime.Of(turnrow, "check", small));
            foreach (var pattern in Directory.GetFiles(Path.Combine(Texts.Root, "patterns"), "*.turnrow").Order(StringComparer.Ordinal))
                Compare($"turnrow check, {Path.GetFileNameWithoutExtension(pattern)}, to a hello world", () => ChildTime.Of(turnrow, "check", pattern), () => ChildTime.Of(hello), PairsEach);
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Published(string project, string folder, string name)
    {
        string[] args =
        [
            "publish", Path.Combine(Texts.Root, project), "-c", "Release", "-o", Path.Combine(folder, name), "-v:quiet",
            "-p:PublishAot=true", "-p:NuGetLockFilePath=obj/aot.lock.json",
        ];
        using var publish = Process.Start("dotnet", args);
        publish.WaitForExit();
        if (publish.ExitCode != 0) throw new InvalidOperationException($"{project} could not be published");
        return Path.Combine(folder, name, name);
    }

    private static void Compare(string what, Func<double> one, Func<double> other, int pairs = Pairs)
    {
        var (times, others, ratios) = (new List<double>(), new List<double>(), new List<double>());
        for (var i = -WarmUp; i < pairs; i++)
        {
            var (time, against) = (one(), other());
            if (i < 0) continue;
            times.Add(time);
            others.Add(against);
            ratios.Add(time / against);
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: {Median(ratios):0.00} times (medians of {pairs} pairs: {Median(times):0.00} and {Median(others):0.00} ms on the processor)"));
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }
}
