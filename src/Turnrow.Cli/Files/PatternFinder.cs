using System.IO.Enumeration;

namespace Turnrow.Cli.Files;

/// <summary>Finds the pattern files that a command line names: files, and folders to search.</summary>
internal static class PatternFinder
{
    /// <summary>What a pattern's name ends with.</summary>
    public const string Ending = ".turnrow";

    /// <summary>Pattern files as they are to be shown, each once: as given, a folder's by name in ordinal order.</summary>
    /// <param name="paths">What was typed.</param>
    /// <param name="refuse">Told, in a sentence, of each path that gives nothing.</param>
    public static IReadOnlyList<string> Find(IReadOnlyList<string> paths, Action<string> refuse)
    {
        var files = new List<string>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in paths)
        {
            foreach (var file in Under(path, refuse))
            {
                if (seen.Add(Path.GetFullPath(file))) files.Add(file);
            }
        }

        return files;
    }

    private static IReadOnlyList<string> Under(string path, Action<string> refuse)
    {
        // Path.GetFullPath takes neither of these.
        if (path.Length == 0 || path.Contains('\0', StringComparison.Ordinal))
        {
            refuse("a file's name is empty or can't be one");
            return [];
        }

        if (!Directory.Exists(path))
        {
            if (File.Exists(path)) return [path];
            refuse(File.Exists(path + Ending)
                ? $"{path} is not there; did you mean `{path}{Ending}`?"
                : $"{path} is not there{DidYouMean.Clause(path, Neighbours(path))}");
            return [];
        }

        try
        {
            var found = Search(path);
            if (found.Count == 0) refuse($"{path} holds no pattern (a file whose name ends with {Ending})");
            return found;
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            refuse($"{path} can't be searched: {FileFault.Reason(fault)}");
            return [];
        }
    }

    private static List<string> Search(string folder)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.Hidden };
        var found = new FileSystemEnumerable<string>(folder, static (ref FileSystemEntry entry) => entry.ToSpecifiedFullPath(), options)
        {
            ShouldIncludePredicate = static (ref FileSystemEntry entry) =>
                !entry.IsDirectory && entry.FileName.EndsWith(Ending, StringComparison.OrdinalIgnoreCase),
            // A link to a folder may lead round in a circle.
            ShouldRecursePredicate = static (ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) == 0,
        };
        List<string> names = [.. found.Select(Shown)];
        names.Sort(StringComparer.Ordinal);
        return names;
    }

    private static string Shown(string path)
    {
        var shown = path.Replace(Path.DirectorySeparatorChar, '/');
        return shown.StartsWith("./", StringComparison.Ordinal) ? shown[2..] : shown;
    }

    private static IEnumerable<string> Neighbours(string path)
    {
        try
        {
            var folder = Path.GetDirectoryName(path);
            var names = Directory.GetFiles(string.IsNullOrEmpty(folder) ? "." : folder, "*" + Ending);
            return [.. names.Select(Shown).Order(StringComparer.Ordinal)];
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            return [];
        }
    }
}
