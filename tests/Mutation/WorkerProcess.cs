using System.Diagnostics;

namespace Turnrow.Mutation;

/// <summary>The program in the copy, from outside.</summary>
internal sealed class WorkerProcess : IDisposable
{
    // A change may also leave a test waiting for what never comes, which is no work.
    private const int MostIdle = 20;

    private readonly Process _process;

    public WorkerProcess(string worker, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [worker, .. arguments]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        // A change that makes ever more of something dies of it, soon and alone.
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x60000000";
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        start.Environment["CsCheck_Threads"] = "1";
        start.Environment["CI"] = "true";
        _process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        _process.ErrorDataReceived += static (_, _) => { };
        _process.BeginErrorReadLine();
    }

    public void Tell(string line)
    {
        _process.StandardInput.WriteLine(line);
        _process.StandardInput.Flush();
    }

    /// <summary>
    /// The next line; null if it does not come, or not within so much work of the processor: a busy machine makes nothing late.
    /// </summary>
    public string? Answer(TimeSpan patience, out bool late)
    {
        var line = _process.StandardOutput.ReadLineAsync();
        var began = Stopwatch.GetTimestamp();
        var before = Worked();
        late = false;
        while (!late && !line.Wait(TimeSpan.FromSeconds(1)))
            late = Worked() - before > patience || Stopwatch.GetElapsedTime(began) > patience * MostIdle;
        return late ? null : line.Result;
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }

    private TimeSpan Worked()
    {
        _process.Refresh();
        return _process.HasExited ? TimeSpan.Zero : _process.TotalProcessorTime;
    }
}
