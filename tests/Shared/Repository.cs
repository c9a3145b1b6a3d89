namespace Turnrow.Tests;

/// <summary>Where the checked-out repository is, found from the folder that the tests run in.</summary>
internal static class Repository
{
    /// <summary>The folder that holds <c>Compiler.sln</c>.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The full path of a file or folder given from the root, with <c>/</c> between names.</summary>
    public static string PathOf(string fromRoot) => Path.GetFullPath(Path.Combine(Root, fromRoot));

    /// <summary>The names of the patterns that make something: a library of stitch patterns makes nothing by itself.</summary>
    public static IReadOnlyList<string> PatternNames { get; } =
    [
        .. Directory.GetFiles(PathOf("patterns"), "*.turnrow")
            .Where(static file => File.ReadLines(file).Any(static line => line.StartsWith("piece ", StringComparison.Ordinal)))
            .Select(static file => Path.GetFileNameWithoutExtension(file)!)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of a file beside the patterns; null if there is none.</summary>
    public static string? Beside(string name) => File.Exists(PathOf("patterns/" + name)) ? File.ReadAllText(PathOf("patterns/" + name)) : null;

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Compiler.sln")))
                return folder.FullName;
        throw new InvalidOperationException("Compiler.sln is in no folder above " + AppContext.BaseDirectory);
    }
}
