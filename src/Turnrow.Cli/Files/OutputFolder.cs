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

    private static string PlainName(string name) => name.Length > 0 && name is not ("." or "..") && name.AsSpan().IndexOfAny("/\\:\0") < 0
        ? name
        : throw new InvalidOperationException($"a published file may not be called \"{name}\"");
}
