using System.Reflection;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace Turnrow.Mutation;

/// <summary>The tests that may notice a change, each to be run by itself.</summary>
internal sealed class Tests
{
    private static readonly string[] Assemblies = ["Turnrow.Fabric.Tests", "Turnrow.Compiler.Tests", "Turnrow.Publishing.Tests"];

    // What breaks and fuzzes text, and what says the same of the same pattern once more: long, and little is found by it alone.
    private static readonly string[] LeftOut =
    [
        ".Breaking.BreakTests.", ".Hostile.", ".Reader.RandomPatternTests.", ".ReaderTests.A_number_that_is_one_off", ".Page.", ".RobustnessTests.",
        "Nothing_lies_beside", ".svg", ".csv", ".html", "uk/",
    ];

    private readonly Dictionary<string, (ITestCase Case, XunitTestFrameworkExecutor Executor)> _byId = [];

    public Tests()
    {
        foreach (var name in Assemblies)
        {
            var assembly = Assembly.Load(name);
            var framework = new XunitTestFramework(new Sink());
            var executor = (XunitTestFrameworkExecutor)framework.GetExecutor(assembly.GetName());
            var found = new Sink();
            framework.GetDiscoverer(Reflector.Wrap(assembly)).Find(includeSourceInformation: false, found, new Options());
            found.Finished.Wait();
            foreach (var test in found.Cases.Where(static test => !LeftOut.Any(part => test.DisplayName.Contains(part, StringComparison.Ordinal))))
                if (_byId.TryAdd(test.UniqueID, (test, executor)))
                    Ids.Add(test.UniqueID);
        }
    }

    /// <summary>The tests' names for themselves, in the order of their assemblies.</summary>
    public List<string> Ids { get; } = [];

    /// <summary>A test's name for people.</summary>
    public string NameOf(string id) => _byId[id].Case.DisplayName;

    /// <summary>The assembly that a test is in.</summary>
    public string AssemblyOf(string id) => _byId[id].Case.TestMethod.TestClass.TestCollection.TestAssembly.Assembly.Name.Split(',')[0];

    /// <summary>Runs one test.</summary>
    /// <returns>True if it passes.</returns>
    public bool Passes(string id)
    {
        // A change may rename a case of a theory; that alone is no find.
        if (!_byId.TryGetValue(id, out var found)) return true;
        var (test, executor) = found;
        var sink = new Sink();
        executor.RunTests([(IXunitTestCase)test], sink, new Options());
        sink.Finished.Wait();
        return !sink.Failed;
    }

    private sealed class Options : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> _values = new()
        {
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.SynchronousMessageReporting"] = true,
        };

        public TValue GetValue<TValue>(string name) => _values.TryGetValue(name, out var value) ? (TValue)value! : default!;

        public void SetValue<TValue>(string name, TValue value) => _values[name] = value;
    }

    private sealed class Sink : IMessageSink
    {
        public ManualResetEventSlim Finished { get; } = new();

        public List<ITestCase> Cases { get; } = [];

        public bool Failed { get; private set; }

        public bool OnMessage(IMessageSinkMessage message)
        {
            if (message is ITestCaseDiscoveryMessage { TestCase: var test }) Cases.Add(test);
            if (message is ITestFailed or IErrorMessage or ITestClassCleanupFailure or ITestCleanupFailure) Failed = true;
            if (message is IDiscoveryCompleteMessage or ITestAssemblyFinished) Finished.Set();
            return true;
        }
    }
}
