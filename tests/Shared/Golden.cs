using System.Text;
using Xunit;

namespace Turnrow.Tests;

/// <summary>
/// Golden files: what a test makes is compared with a file that is checked in. A missing or different file fails. The
/// file is written only where a person asked for it, by TURNROW_ACCEPT=1, and never where the variable CI is set.
/// </summary>
internal static class Golden
{
    private const int ShownLines = 5;

    /// <summary>Compares, to the last character, <paramref name="actual"/> with the file at <paramref name="path"/>.</summary>
    /// <param name="path">From the repository's root, with <c>/</c>; under <c>tests/</c> or <c>patterns/</c>.</param>
    /// <param name="actual">What the code under test made.</param>
    public static void Matches(string path, string actual)
    {
        var accept = MayWrite(Environment.GetEnvironmentVariable("TURNROW_ACCEPT"), Environment.GetEnvironmentVariable("CI"));
        if (Compare(Repository.Root, path, actual, accept) is { } fault)
            Assert.Fail(fault);
    }

    internal static bool MayWrite(string? accept, string? ci) => accept == "1" && string.IsNullOrEmpty(ci);

    /// <summary>What differs, in words, or null where nothing does (any more).</summary>
    internal static string? Compare(string root, string path, string actual, bool accept)
    {
        if (!(path.StartsWith("tests/", StringComparison.Ordinal) || path.StartsWith("patterns/", StringComparison.Ordinal)) || path.Split('/').Contains(".."))
            return $"{path}: a golden file lies under tests/ or patterns/, named from the root";
        var file = Path.Combine(root, path);
        var expected = File.Exists(file) ? File.ReadAllText(file) : null;
        if (expected == actual)
            return null;
        if (!accept)
            return $"{path} {(expected is null ? "is missing" : "differs")}, {Difference(expected ?? "", actual)}to accept what was made: TURNROW_ACCEPT=1 dotnet test, then read the diff";
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, actual);
        return null;
    }

    private static string Difference(string expected, string actual)
    {
        string[] left = expected.Split('\n'), right = actual.Split('\n');
        var first = left.Zip(right).TakeWhile(pair => pair.First == pair.Second).Count();
        var text = new StringBuilder($"first at line {first + 1}:\n");
        foreach (var (sign, lines) in new[] { ("- ", left), ("+ ", right) })
            foreach (var line in lines.Skip(first).Take(ShownLines))
                text.Append(sign).Append(line.Replace("\r", "\\r", StringComparison.Ordinal)).Append('\n');
        return text.ToString();
    }
}
