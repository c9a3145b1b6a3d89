using System.Diagnostics;

namespace Turnrow.Cli.Tests;

/// <summary>Runs the built command as a user's shell does.</summary>
internal static class OutOfProcess
{
    private const int PatienceInMilliseconds = 60_000;

    /// <summary>The built command, which the build puts beside the tests.</summary>
    public static string Turnrow { get; } = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "turnrow.exe" : "turnrow");

    public static Ran Run(string folder, params string[] args) => Wait(Starting(Turnrow, args, folder));

    /// <summary>Runs a shell command in which <c>turnrow</c> is the built one; both outputs come in one, as on a screen.</summary>
    public static Ran Shell(string folder, string command) => Wait(Starting("sh", ["-c", "exec 2>&1\n" + command], folder));

    /// <summary>Runs the built command with some variables of its environment set.</summary>
    public static Ran RunWith(IReadOnlyDictionary<string, string> variables, string folder, params string[] args)
    {
        var start = Starting(Turnrow, args, folder);
        foreach (var (name, value) in variables) start.Environment[name] = value;
        return Wait(start);
    }

    /// <summary>Starts the built command and leaves it to the caller, its outputs unread: they are short enough for a pipe.</summary>
    public static Process Start(string folder, params string[] args)
    {
        var process = Process.Start(Starting(Turnrow, args, folder)) ?? throw new InvalidOperationException(Turnrow + " did not start");
        process.StandardInput.Close();
        return process;
    }

    private static ProcessStartInfo Starting(string program, IReadOnlyList<string> args, string folder)
    {
        var start = new ProcessStartInfo(program, args)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        start.Environment["PATH"] = AppContext.BaseDirectory + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        // The runtime that runs the tests also runs the command, wherever it is installed.
        if (Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet")
            start.Environment["DOTNET_ROOT"] = Path.GetDirectoryName(host);
        return start;
    }

    private static Ran Wait(ProcessStartInfo start)
    {
        using var process = Process.Start(start) ?? throw new InvalidOperationException(start.FileName + " did not start");
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        if (process.WaitForExit(PatienceInMilliseconds)) return new Ran(process.ExitCode, output.Result, error.Result);
        process.Kill();
        throw new InvalidOperationException($"{start.FileName} {string.Join(' ', start.ArgumentList)} does not end");
    }
}
