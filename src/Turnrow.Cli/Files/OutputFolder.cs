using System.Text;
using Turnrow.Publishing;

namespace Turnrow.Cli.Files;

/// <summary>The folder that published files go to. Nothing outside it is touched.</summary>
/// <param name="Path">As typed.</param>
internal sealed record OutputFolder(string Path)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes the files of one pattern: all of them beside the old ones first, then each in its old one's place.</summary>
    /// <returns>Their paths as shown, in the order of writing.</returns>
    public IReadOnlyList<string> Write(IReadOnlyList<PublishedFile> files)
    {
        Directory.CreateDirectory(Path);
        List<string> paths = [.. files.Select(file => System.IO.Path.Combine(Path, PlainName(file.Name)))];
        try
        {
            for (var i = 0; i < files.Count; i++) WholeFile.Stage(paths[i], Utf8.GetBytes(files[i].Text));
            foreach (var path in paths) WholeFile.Commit(path);
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            foreach (var path in paths) WholeFile.Discard(path);
            throw;
        }

        return [.. paths.Select(path => path.Replace(System.IO.Path.DirectorySeparatorChar, '/'))];
    }

    /// <summary>
    /// Takes away what a killed run left of charts that are no longer made: all other files have the same name each time, so that the
    /// next run writes over what was left of them.
    /// </summary>
    /// <param name="name">The pattern's name. A pattern whose name only begins like it is left alone: it may be published just now.</param>
    public void RemoveLeftCharts(string name)
    {
        try
        {
            foreach (var path in Directory.EnumerateFiles(Path))
            {
                if (IsLeftChart(System.IO.Path.GetFileName(path), name)) File.Delete(path);
            }
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            // It harms nobody.
        }
    }

    private static bool IsLeftChart(ReadOnlySpan<char> file, string name)
    {
        var (before, after) = ("." + name + ".", ".svg" + WholeFile.Part);
        return file.Length > before.Length + after.Length
            && file.StartsWith(before, StringComparison.Ordinal)
            && file.EndsWith(after, StringComparison.Ordinal)
            && !file[before.Length..^after.Length].Contains('.');
    }

    private static string PlainName(string name) => name.Length > 0 && name is not ("." or "..") && name.AsSpan().IndexOfAny("/\\:\0") < 0
        ? name
        : throw new InvalidOperationException($"a published file may not be called \"{name}\"");
}
