using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace Turnrow.Mutation;

/// <summary>
/// The program in the copy: runs tests with one switch after the other on, as it is told line by line, and says what it does before
/// it does it, since a change may make it hang or die.
/// </summary>
internal sealed class Worker
{
    private static readonly Type Switch = Type.GetType("Turnrow.Fabric.Mutant, Turnrow.Fabric") ?? throw new InvalidOperationException("this copy has no switches");

    private readonly Tests _tests = new();
    private readonly TextWriter _answers = Console.Out;

    private Worker() => Console.SetOut(TextWriter.Null);

    private static int Active { set => Switch.GetField("Active")!.SetValue(null, value); }

    private static bool[]? Reached { set => Switch.GetField("Reached")!.SetValue(null, value); }

    /// <summary>Says of each test how long it takes and which changes it reaches; the first line is what starting alone reaches.</summary>
    public static void Survey(int mutants)
    {
        var worker = new Worker();
        var reached = new bool[mutants];
        Reached = reached;
        Start();
        worker.Say($"start 0 {Numbers(reached)}");
        foreach (var id in worker._tests.Ids)
        {
            Array.Clear(reached);
            var began = Stopwatch.GetTimestamp();
            var passed = worker._tests.Passes(id);
            var took = (long)Stopwatch.GetElapsedTime(began).TotalMilliseconds;
            worker.Say($"{(passed ? "test" : "fails")} {took} {Numbers(reached)} {id} {worker._tests.AssemblyOf(id)} {worker._tests.NameOf(id)}");
        }
    }

    /// <summary>Reads lines of a change's number and the tests to run, and answers each with the test that noticed it, or none.</summary>
    public static void Try()
    {
        var worker = new Worker();
        Start();
        worker.Say("ready");
        while (Console.In.ReadLine() is { } line)
        {
            var parts = line.Split(' ');
            Active = int.Parse(parts[0], CultureInfo.InvariantCulture);
            var by = parts.Skip(1).FirstOrDefault(worker.Notices);
            Active = -1;
            worker.Say(by is null ? "alive" : $"found {worker._tests.NameOf(by)}");
        }
    }

    /// <summary>The same for one change that takes effect when the program starts, which even finding the tests does.</summary>
    public static void TryFromStart(int change)
    {
        Active = change;
        var worker = new Worker();
        worker.Say("ready");
        var tests = Console.In.ReadLine()!.Split(' ').Skip(1);
        var by = tests.FirstOrDefault(worker.Notices);
        worker.Say(by is null ? "alive" : $"found {worker._tests.NameOf(by)}");
    }

    private bool Notices(string test)
    {
        Say($"runs {test}");
        return !_tests.Passes(test);
    }

    // What is worked out once must not be worked out with a change in it that is then gone.
    private static void Start()
    {
        foreach (var assembly in AppDomain.CurrentDomain.GetAssemblies().Where(static a => a.GetName().Name!.StartsWith("Turnrow.", StringComparison.Ordinal)).ToList())
            foreach (var type in assembly.GetTypes().Where(static type => !type.ContainsGenericParameters))
                RuntimeHelpers.RunClassConstructor(type.TypeHandle);
    }

    private static string Numbers(bool[] reached)
    {
        var numbers = Enumerable.Range(0, reached.Length).Where(i => reached[i]).Select(i => i.ToString(CultureInfo.InvariantCulture)).ToList();
        return numbers.Count == 0 ? "-" : string.Join(',', numbers);
    }

    private void Say(string line)
    {
        _answers.WriteLine(line);
        _answers.Flush();
    }
}
