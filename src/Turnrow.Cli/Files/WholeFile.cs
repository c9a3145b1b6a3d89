namespace Turnrow.Cli.Files;

/// <summary>
/// Writes files so that each is, at any moment and however the program ends, either the old one or the new one: written beside, flushed
/// to the disk, and renamed.
/// </summary>
internal static class WholeFile
{
    /// <summary>What the name of a file that is not yet in its place ends with.</summary>
    public const string Part = ".part";

    /// <summary>The file that takes the place of an old one, before it does. A left one is overwritten by the next run.</summary>
    public static string PartOf(string path) => Path.Combine(Path.GetDirectoryName(path) ?? "", "." + Path.GetFileName(path) + Part);

    /// <summary>Writes the new file beside the old one and leaves the old one as it is.</summary>
    public static void Stage(string path, ReadOnlySpan<byte> bytes)
    {
        var part = PartOf(path);
        // A link in its place would lead the bytes elsewhere.
        if (new FileInfo(part).LinkTarget is not null) File.Delete(part);
        using var file = new FileStream(part, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Puts the staged file in the old one's place.</summary>
    public static void Commit(string path, bool overwrite = true) => File.Move(PartOf(path), path, overwrite);

    /// <summary>Takes a staged file away again.</summary>
    public static void Discard(string path)
    {
        try
        {
            File.Delete(PartOf(path));
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            // It harms nobody, and the next run overwrites it.
        }
    }

    /// <summary>Writes one file whole.</summary>
    public static void Write(string path, ReadOnlySpan<byte> bytes, bool overwrite = true)
    {
        try
        {
            Stage(path, bytes);
            Commit(path, overwrite);
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            Discard(path);
            throw;
        }
    }

    /// <summary>Writes the new text of a file that a person keeps: a link stays a link, and the rights stay as they are.</summary>
    public static void Rewrite(string path, ReadOnlySpan<byte> bytes)
    {
        var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        try
        {
            Stage(target, bytes);
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(PartOf(target), File.GetUnixFileMode(target));
            Commit(target);
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            Discard(target);
            throw;
        }
    }
}
