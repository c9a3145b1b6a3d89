using System.Globalization;

namespace Turnrow.Mutation;

/// <summary>A test, how long it takes, and the changes that it reaches.</summary>
internal sealed record SurveyedTest(string Id, string Assembly, string Name, int Milliseconds, HashSet<int> Reaches);

/// <summary>What the tests reach when nothing is changed.</summary>
internal sealed class Survey
{
    private static readonly string[] Order = ["Turnrow.Fabric.Tests", "Turnrow.Compiler.Tests", "Turnrow.Publishing.Tests"];
    private readonly List<SurveyedTest> _tests = [];
    private readonly HashSet<int> _atStart = [];

    private Survey()
    {
    }

    /// <summary>Tests that fail as things are; they are not used.</summary>
    public List<string> Failing { get; } = [];

    public int Count => _tests.Count;

    public static Survey Of(string worker, int mutants)
    {
        var survey = new Survey();
        using var process = new WorkerProcess(worker, "survey", mutants.ToString(CultureInfo.InvariantCulture));
        while (process.Answer(TimeSpan.FromMinutes(5), out _) is { } line) survey.Read(line);
        return survey._tests.Count > 0 ? survey : throw new InvalidOperationException("no test ran");
    }

    /// <summary>True if a change takes effect only when the program starts.</summary>
    public bool OnlyAtStart(Mutant mutant) => mutant.AtStart || (_atStart.Contains(mutant.Id) && !_tests.Any(test => test.Reaches.Contains(mutant.Id)));

    /// <summary>The tests that may notice a change, from quick to slow, those of the row model first, or these alone.</summary>
    public IReadOnlyList<SurveyedTest> For(Mutant mutant, bool ownAlone)
    {
        var always = OnlyAtStart(mutant);
        return [.. _tests.Where(test => always ? test.Reaches.Count > 0 : test.Reaches.Contains(mutant.Id))
            .Where(test => !ownAlone || test.Assembly == Order[0])
            .OrderBy(static test => Array.IndexOf(Order, test.Assembly)).ThenBy(static test => test.Milliseconds)];
    }

    private void Read(string line)
    {
        var parts = line.Split(' ', 6);
        var reaches = parts[2] == "-" ? [] : parts[2].Split(',').Select(static n => int.Parse(n, CultureInfo.InvariantCulture)).ToHashSet();
        if (parts[0] == "start") _atStart.UnionWith(reaches);
        else if (parts[0] == "fails") Failing.Add(parts[5]);
        else _tests.Add(new(parts[3], parts[4], parts[5], int.Parse(parts[1], CultureInfo.InvariantCulture), reaches));
    }
}
