using System.Reflection;
using Xunit;

namespace Turnrow.Tests.Facts;

/// <summary>
/// The table of facts against the tests: this runs in each project that has some, and looks for its own. A fact has a source and a test,
/// and each case of a test of facts is in the table.
/// </summary>
public sealed class FactTableTests
{
    private const int FewestFacts = 80;

    private static readonly string[] Projects = ["Compiler", "Fabric", "Publishing"];

    private static readonly Assembly Here = typeof(FactTableTests).Assembly;

    private static string Project => Here.GetName().Name!.Split('.')[1];

    [Fact]
    public void There_are_eighty_facts_or_more_and_no_two_are_the_same()
    {
        Assert.True(FactTable.Tested.Count >= FewestFacts, $"{FactTable.Tested.Count} facts");
        Assert.Distinct(FactTable.Tested.Select(static f => f.Name));
        Assert.Empty(FactTable.Broken);
    }

    [Fact]
    public void Every_fact_has_a_value_a_source_and_a_test() => None(FactTable.Tested
        .Where(static f => f.Name.Length == 0 || f.Value.Length == 0 || f.Source.Length == 0 || f.Tests.Any(static t => t.Cases < 1 || !Projects.Contains(t.Project)))
        .Select(static f => $"line {f.Line}: {f.Name} | {f.Value} | {f.Source} | {string.Join(", ", f.Tests)}"));

    [Fact]
    public void What_the_notation_can_not_say_has_a_source_and_a_reason() =>
        None(FactTable.OutOfScope.Where(static f => Array.Exists(f.Cells, static c => c.Length == 0)).Select(static f => $"line {f.Line}"));

    [Fact]
    public void Every_test_that_the_table_names_is_there() => None(FactTable.Tested
        .SelectMany(static f => f.Tests.Select(t => (f.Line, Test: t)))
        .Where(static n => n.Test.Project == Project && Find(n.Test) is null)
        .Select(static n => $"line {n.Line}: there is no test {n.Test}"));

    // So that a case which is taken out of a test is missed: tests of facts have no others than those of the table.
    [Fact]
    public void A_test_has_the_cases_that_the_table_counts() => None(Named()
        .Where(static n => Find(n.Test) is { } method && (Cases(method) < n.Cases || (IsOfFacts(method) && Cases(method) > n.Cases)))
        .Select(static n => $"{n.Test}: the table counts {n.Cases} of its cases, and it has {Cases(Find(n.Test)!)}"));

    [Fact]
    public void Every_test_of_facts_is_in_the_table()
    {
        var named = Named().Select(static n => n.Test).ToHashSet();
        None(Here.GetTypes().SelectMany(static t => t.GetMethods()).Where(static m => IsOfFacts(m) && Cases(m) > 0)
            .Select(static m => new FactTest(Project, m.DeclaringType!.Name, m.Name, 1))
            .Where(t => !named.Contains(t)).Select(static t => $"the table does not name {t}"));
    }

    // Each test of this project that the table names, with the cases counted in all its rows.
    private static IEnumerable<(FactTest Test, int Cases)> Named() => FactTable.Tested
        .SelectMany(static f => f.Tests)
        .Where(static t => t.Project == Project)
        .GroupBy(static t => t with { Cases = 1 }, static (test, all) => (test, all.Sum(static t => t.Cases)));

    private static bool IsOfFacts(MethodInfo method) =>
        method.DeclaringType is { } type && type != typeof(FactTableTests) && type.Namespace?.EndsWith(".Facts", StringComparison.Ordinal) == true;

    private static MethodInfo? Find(FactTest test) => Here.GetTypes()
        .Where(t => t.Name == test.Class).Select(t => t.GetMethod(test.Method)).FirstOrDefault(static m => m is not null && Cases(m) > 0);

    // A fact is one case; a theory has one for each line of data.
    private static int Cases(MethodInfo method) => method.GetCustomAttribute<FactAttribute>() switch
    {
        null or { Skip: not null } => 0,
        TheoryAttribute => method.GetCustomAttributes<InlineDataAttribute>().Count(),
        _ => 1,
    };

    // Assert.Empty cuts its list short; whoever mends this needs all of it.
    private static void None(IEnumerable<string> wrong)
    {
        var all = string.Join('\n', wrong);
        if (all.Length > 0) Assert.Fail(all);
    }
}
