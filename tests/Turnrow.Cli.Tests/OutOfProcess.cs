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
