using Turnrow.Syntax.Text;

namespace Turnrow.Tests;

/// <summary>The patterns that lie in the repository.</summary>
internal static class Patterns
{
    public static SourceText Read(string path) => SourceText.FromBytes(path, File.ReadAllBytes(Repository.PathOf(path)));

    public static IReadOnlyList<string> All { get; } =
    [
        .. Directory.GetFiles(Repository.PathOf("patterns"), "*.turnrow", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];
}
