namespace Turnrow.Cli.Files;

/// <summary>Does something with every pattern that a command line names; one that can't be read does not keep the others waiting.</summary>
internal static class InputFiles
{
    /// <summary>From so many files on, a person is told how far it is.</summary>
    private const int Many = 4;

    /// <summary>Reads, compiles and hands over each file in turn.</summary>
    /// <param name="paths">Files and folders.</param>
    /// <param name="terminal">Where faults and, if <paramref name="progress"/>, progress are told.</param>
    /// <param name="work">What to do; returns its exit code.</param>
    /// <param name="progress">Whether to tell how far it is.</param>
    /// <returns>The largest of all exit codes.</returns>
    public static int ForEach(IReadOnlyList<string> paths, Terminal terminal, Func<PatternFile, int> work, bool progress = false)
    {
        var code = ExitCode.Clean;
        void Refuse(string message) => code = Math.Max(code, terminal.Refuse(message));
        var files = PatternFinder.Find(paths, Refuse);
        var meter = progress && terminal.ShowsProgress && files.Count >= Many ? new ProgressLine(terminal, files.Count) : null;
        foreach (var path in files)
        {
            meter?.Next(path);
            var file = PatternFile.Open(path, Refuse);
            meter?.Clear();
            if (file is not null) code = Math.Max(code, work(file));
        }

        return code;
    }

    /// <summary>Reads, compiles and hands over one file; a folder is refused, even if it holds just one pattern.</summary>
    public static int One(string path, Terminal terminal, Func<PatternFile, int> work) =>
        Directory.Exists(path)
            ? terminal.Refuse($"{path} is a folder; name one pattern in it")
            : ForEach([path], terminal, work);
}
