using System.Diagnostics;

namespace Turnrow.Cli.Tests;

/// <summary>The files that are, or are about to be, part of the repository: all but what .gitignore leaves out.</summary>
internal static class TrackedFiles
{
    /// <summary>Paths from the root, with <c>/</c>.</summary>
    public static IReadOnlyList<string> All { get; } = List();

    /// <summary>Whether a clone has this file, or a file in this folder; a folder that a build makes does not count.</summary>
    public static bool Has(string path) =>
        All.Any(file => file == path || file.StartsWith(path.TrimEnd('/') + "/", StringComparison.Ordinal));

    public static IEnumerable<string> Lines(string file) => File.ReadLines(Repository.PathOf(file));

    private static List<string> List()
    {
        var start = new ProcessStartInfo("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"])
        {
            WorkingDirectory = Repository.Root,
            RedirectStandardOutput = true,
        };
        using var git = Process.Start(start) ?? throw new InvalidOperationException("git did not start");
        var names = git.StandardOutput.ReadToEnd().Split('\0', StringSplitOptions.RemoveEmptyEntries);
        git.WaitForExit();
        if (git.ExitCode != 0 || names.Length == 0)
            throw new InvalidOperationException("git names no files; these tests need a clone, not a bare copy");
        return [.. names.Where(name => File.Exists(Repository.PathOf(name)))];
    }
}
