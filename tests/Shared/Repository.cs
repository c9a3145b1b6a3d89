namespace Turnrow.Tests;

/// <summary>Where the checked-out repository is, found from the folder that the tests run in.</summary>
internal static class Repository
{
    /// <summary>The folder that holds <c>Compiler.sln</c>.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The full path of a file or folder given from the root, with <c>/</c> between names.</summary>
    public static string PathOf(string fromRoot) => Path.GetFullPath(Path.Combine(Root, fromRoot));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Compiler.sln")))
                return folder.FullName;
        throw new InvalidOperationException("Compiler.sln is in no folder above " + AppContext.BaseDirectory);
    }
}
