using System.Globalization;

namespace Turnrow.Mutation;

/// <summary>Tries changes one after the other and keeps what came of each, so that it can go on where it was stopped.</summary>
/// <param name="worker">The copy's program.</param>
/// <param name="survey">What the tests reach.</param>
/// <param name="results">The file that keeps what came of each change.</param>
/// <param name="ownAlone">True to ask the row model's own tests alone; what they do not find is not kept.</param>
internal sealed class Trial(string worker, Survey survey, string results, bool ownAlone) : IDisposable
{
    private readonly Dictionary<string, string> _done = Read(results);
    private WorkerProcess? _process;

    /// <summary>What came of a change: <c>alive</c>, or how it was found; null if it was not tried.</summary>
    public string? Of(Mutant mutant) => _done.GetValueOrDefault(mutant.Key);

    /// <summary>True if a change was found.</summary>
    public bool Found(Mutant mutant) => Of(mutant) is { } outcome && IsFound(outcome);

    /// <summary>Forgets what was not found, to try it anew with other tests.</summary>
    public void ForgetAlive()
    {
        foreach (var (key, _) in _done.Where(static d => !IsFound(d.Value)).ToList()) _done.Remove(key);
        File.WriteAllLines(results, _done.Select(static d => $"{d.Key}\t{d.Value}"));
    }

    public void Run(Mutant mutant)
    {
        if (_done.ContainsKey(mutant.Key)) return;
        var tests = survey.For(mutant, ownAlone);
        var outcome = tests.Count == 0 ? "unreached" : survey.OnlyAtStart(mutant) ? Alone(mutant, tests) : Tried(mutant, tests);
        _done[mutant.Key] = outcome;
        if (!ownAlone || IsFound(outcome)) File.AppendAllText(results, $"{mutant.Key}\t{outcome}\n");
    }

    public void Dispose() => Stop();

    private static bool IsFound(string outcome) => outcome.StartsWith("found", StringComparison.Ordinal);

    private static Dictionary<string, string> Read(string results) =>
        File.Exists(results) ? File.ReadLines(results).Select(static line => line.Split('\t', 2)).ToDictionary(static p => p[0], static p => p[1]) : [];

    // What is worked out when the program starts needs a program that has not started.
    private string Alone(Mutant mutant, IReadOnlyList<SurveyedTest> tests)
    {
        Stop();
        _process = new WorkerProcess(worker, "try", mutant.Id.ToString(CultureInfo.InvariantCulture));
        var outcome = IsReady(_process) ? Tried(mutant, tests) : "found, dies: when it starts";
        Stop();
        return outcome;
    }

    private string Tried(Mutant mutant, IReadOnlyList<SurveyedTest> tests)
    {
        _process ??= Started();
        _process.Tell(string.Create(CultureInfo.InvariantCulture, $"{mutant.Id} {string.Join(' ', tests.Select(static t => t.Id))}"));
        var running = tests[0];
        while (true)
        {
            var answer = _process.Answer(TimeSpan.FromMilliseconds(6_000 + (5 * running.Milliseconds)), out var late);
            if (answer is null)
            {
                Stop();
                return (late ? "found, hangs: " : "found, dies: ") + running.Name;
            }

            if (!answer.StartsWith("runs ", StringComparison.Ordinal)) return answer;
            running = tests.First(test => test.Id == answer[5..]);
        }
    }

    private WorkerProcess Started()
    {
        var process = new WorkerProcess(worker, "try");
        if (IsReady(process)) return process;
        process.Dispose();
        throw new InvalidOperationException("the copy's program does not start");
    }

    private static bool IsReady(WorkerProcess process) => process.Answer(TimeSpan.FromMinutes(1), out _) == "ready";

    private void Stop()
    {
        _process?.Dispose();
        _process = null;
    }
}
