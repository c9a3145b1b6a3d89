using System.Globalization;

namespace Turnrow.Tests.Facts;

/// <summary>A row of <c>tests/FACTS.md</c>: what is published, where, and the tests that hold the product to it.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Name">What it is about.</param>
/// <param name="Value">What is published.</param>
/// <param name="Source">Where; or that it is common practice, from memory or arithmetic.</param>
/// <param name="Tests">Its tests.</param>
public sealed record FactRow(int Line, string Name, string Value, string Source, IReadOnlyList<FactTest> Tests);

/// <summary>A test as the table names it: <c>Compiler/FoundationFacts.Method</c>.</summary>
/// <param name="Project">The test project's short name: <c>Turnrow.NAME.Tests</c>.</param>
/// <param name="Class">The class, without its namespace.</param>
/// <param name="Method">The method.</param>
/// <param name="Cases">How many of its cases the row speaks of; after the name, <c>×4</c>, where it is not one.</param>
public readonly record struct FactTest(string Project, string Class, string Method, int Cases)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Project}/{Class}.{Method}";
}

/// <summary>Reads the table of facts.</summary>
internal static class FactTable
{
    /// <summary>The table, from the root.</summary>
    public const string Path = "tests/FACTS.md";

    private const int TestedColumns = 4;

    /// <summary>Facts that have a test.</summary>
    public static IReadOnlyList<FactRow> Tested { get; } = [.. Rows().Where(static r => r.Cells.Length == TestedColumns).Select(Tell)];

    /// <summary>Rows that are neither a fact with a test nor one without.</summary>
    public static IReadOnlyList<(int Line, string Cells)> Broken { get; } =
        [.. Rows().Where(static r => r.Cells.Length is not (3 or TestedColumns)).Select(static r => (r.Line, string.Join(" | ", r.Cells)))];

    /// <summary>Facts that the notation can't say yet: about, source, reason.</summary>
    public static IReadOnlyList<(int Line, string[] Cells)> OutOfScope { get; } = [.. Rows().Where(static r => r.Cells.Length == 3)];

    private static IEnumerable<(int Line, string[] Cells)> Rows()
    {
        var lines = File.ReadAllLines(Repository.PathOf(Path));
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith('|') || lines[i].StartsWith("|---", StringComparison.Ordinal) || IsHead(lines, i)) continue;
            yield return (i + 1, [.. lines[i].Trim().Trim('|').Split('|').Select(static c => c.Trim())]);
        }
    }

    private static bool IsHead(string[] lines, int i) => i + 1 < lines.Length && lines[i + 1].StartsWith("|---", StringComparison.Ordinal);

    private static FactRow Tell((int Line, string[] Cells) row) =>
        new(row.Line, row.Cells[0], row.Cells[1], row.Cells[2], [.. row.Cells[3].Split("<br>").Select(Test)]);

    // What can't be read is kept as it stands, so that the test which looks for it says what it read.
    private static FactTest Test(string text)
    {
        var times = text.IndexOf('×', StringComparison.Ordinal);
        var name = (times < 0 ? text : text[..times]).Trim().Trim('`');
        var cases = times < 0 ? 1 : int.TryParse(text[(times + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var said) ? said : 0;
        var slash = name.IndexOf('/', StringComparison.Ordinal);
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        return slash > 0 && dot > slash ? new(name[..slash], name[(slash + 1)..dot], name[(dot + 1)..], cases) : new(name, string.Empty, string.Empty, 0);
    }
}
