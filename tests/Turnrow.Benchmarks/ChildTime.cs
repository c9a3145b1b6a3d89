using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Turnrow.Benchmarks;

/// <summary>What a finished process used of the processor, as the system counts it (on Linux and macOS).</summary>
internal static partial class ChildTime
{
    private const int Children = -1;

    // Two times of seconds and microseconds, and fourteen numbers that are not looked at.
    private const int Fields = 18;

    /// <summary>Runs a program with its output thrown away; user and system time in milliseconds.</summary>
    public static double Of(string program, params string[] args)
    {
        var before = Used();
        var start = new ProcessStartInfo(program, args) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException(program + " did not start");
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException($"{program} ended with {process.ExitCode}");
        return Used() - before;
    }

    private static double Used()
    {
        var usage = new long[Fields];
        if (GetUsage(Children, usage) != 0) throw new InvalidOperationException("the system does not say what its processes use");
        return ((usage[0] + usage[2]) * 1000.0) + ((usage[1] + usage[3]) / 1000.0);
    }

    [LibraryImport("libc", EntryPoint = "getrusage")]
    private static partial int GetUsage(int who, [Out] long[] usage);
}
