using System.Text;
using Turnrow.Compiler;
using Turnrow.Syntax.Text;

namespace Turnrow.Cli.Files;

/// <summary>A pattern file, read and compiled.</summary>
/// <param name="Path">Its path as shown.</param>
/// <param name="Bytes">What it held.</param>
/// <param name="Compilation">What it means.</param>
internal sealed record PatternFile(string Path, byte[] Bytes, Compilation Compilation)
{
    /// <summary>More than this is no pattern; the largest ones in print have some hundred kilobytes.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    // Most patterns are read in one go, and memory that is not touched costs nothing.
    private const int PartBytes = 16 * 1024;

    /// <summary>Reads and compiles a file; null if it can't be read, and then <paramref name="refuse"/> was told.</summary>
    public static PatternFile? Open(string path, Action<string> refuse)
    {
        try
        {
            if (Read(path) is { } bytes) return new PatternFile(path, bytes, Compilation.Of(SourceText.FromBytes(path, bytes), name => Beside(path, name)));
            refuse($"{path} has more than {MostBytes / (1024 * 1024)} MB; that is no pattern");
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            refuse($"{path} can't be read: {FileFault.Reason(fault)}");
        }

        return null;
    }

    /// <summary>The same file, had it held another text.</summary>
    public PatternFile With(string text) => this with { Compilation = Compilation.Of(new SourceText(Path, text), name => Beside(Path, name)) };

    // The text of a file that a pattern names: in its own folder and nowhere else.
    private static string? Beside(string pattern, string name)
    {
        if (name.Length == 0 || name != System.IO.Path.GetFileName(name)) return null;
        try
        {
            return Read(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(pattern) ?? string.Empty, name)) is { } bytes ? Encoding.UTF8.GetString(bytes) : null;
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            return null;
        }
    }

    // A pipe has no length, so the limit is kept while reading.
    private static byte[]? Read(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        using var held = new MemoryStream();
        var part = new byte[PartBytes];
        for (var count = file.Read(part); count > 0; count = file.Read(part))
        {
            if (held.Length + count > MostBytes) return null;
            held.Write(part, 0, count);
        }

        return held.ToArray();
    }
}
