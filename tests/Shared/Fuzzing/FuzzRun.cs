using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Turnrow.Syntax.Text;

namespace Turnrow.Tests;

/// <summary>
/// Does something with many fuzz inputs on all cores, under a watchdog. Each input has a second of time, a limit of memory, and may not
/// make anything throw. TURNROW_FUZZ says how many inputs there are, TURNROW_FUZZ_SEED which ones.
/// </summary>
/// <remarks>
/// Time: an input that takes over a second by the clock is done again when all others are done, and then it is the time that its own
/// thread was on a processor that counts, the least of three, so that a busy machine accuses nobody. One that does not end at all fails
/// the run by itself, though its thread can't be stopped.
/// Memory: everything that the input's thread allocates, given back or not, is more than it can ever have held at once.
/// </remarks>
internal sealed class FuzzRun(Action<SourceText> work)
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(60);

    private const long MostBytes = 200_000_000;
    private const int Tries = 3;
    private const int MostFaults = 20;

    private readonly ConcurrentQueue<string> _faults = new();
    private readonly ConcurrentQueue<int> _slow = new();
    private readonly (int Input, long Since)[] _busy = new (int, long)[Environment.ProcessorCount];
    private int _next = -1;

    /// <summary>How many inputs are asked for.</summary>
    public static int Inputs { get; } = Setting("TURNROW_FUZZ", 20_000);

    private static int Seed { get; } = Setting("TURNROW_FUZZ_SEED", 2011);

    /// <summary>Does them all; what went wrong, a text each.</summary>
    public IReadOnlyList<string> Faults(int inputs)
    {
        List<Thread> threads = [.. Enumerable.Range(0, _busy.Length).Select(place => new Thread(() => Some(place, inputs)) { IsBackground = true })];
        foreach (var thread in threads) thread.Start();
        while (!threads.TrueForAll(static thread => thread.Join(TimeSpan.FromMilliseconds(100))))
        {
            if (Hanging() is { } input) return [.. _faults, Told(input, "does not end")];
        }

        foreach (var input in _slow) Again(input);
        return [.. _faults];
    }

    private void Some(int place, int inputs)
    {
        for (var input = Interlocked.Increment(ref _next); input < inputs && _faults.Count < MostFaults; input = Interlocked.Increment(ref _next))
        {
            _busy[place] = (input, Stopwatch.GetTimestamp());
            Once(input);
            if (Stopwatch.GetElapsedTime(_busy[place].Since) > Limit) _slow.Enqueue(input);
        }

        _busy[place] = default;
    }

    private void Once(int input)
    {
        var source = FuzzInputs.Of(Seed, input);
        var before = GC.GetAllocatedBytesForCurrentThread();
        try
        {
            work(source);
        }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            _faults.Enqueue(Told(input, thrown.ToString()));
        }

        var made = GC.GetAllocatedBytesForCurrentThread() - before;
        if (made > MostBytes) _faults.Enqueue(Told(input, string.Create(CultureInfo.InvariantCulture, $"made {made} bytes")));
    }

    private void Again(int input)
    {
        var least = TimeSpan.MaxValue;
        for (var i = 0; i < Tries && least > Limit; i++)
        {
            GC.Collect();
            var before = OwnTime();
            Once(input);
            var took = OwnTime() - before;
            least = took < least ? took : least;
        }

        if (least > Limit) _faults.Enqueue(Told(input, string.Create(CultureInfo.InvariantCulture, $"takes {least.TotalSeconds:0.0} s at least")));
    }

    /// <summary>The time that this thread was on a processor; by the clock where the system does not say.</summary>
    private static TimeSpan OwnTime()
    {
        const string onProcessor = "/proc/thread-self/schedstat";
        return File.Exists(onProcessor) && long.TryParse(File.ReadAllText(onProcessor).Split(' ')[0], CultureInfo.InvariantCulture, out var nanoseconds)
            ? TimeSpan.FromMicroseconds(nanoseconds / 1000.0)
            : Stopwatch.GetElapsedTime(0);
    }

    private int? Hanging()
    {
        foreach (var (input, since) in _busy)
        {
            if (since != 0 && Stopwatch.GetElapsedTime(since) > Hang) return input;
        }

        return null;
    }

    private static string Told(int input, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"input {input} of seed {Seed}: {what}\n{FuzzInputs.Of(Seed, input).Text}");

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out var set) ? set : otherwise;
}
