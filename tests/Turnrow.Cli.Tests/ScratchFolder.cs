namespace Turnrow.Cli.Tests;

/// <summary>A folder for one test, taken away after it.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("turnrow").FullName;

    /// <summary>The files there are, from this folder, in ordinal order.</summary>
    public IReadOnlyList<string> Files =>
        [.. Directory.EnumerateFiles(Path, "*", SearchOption.AllDirectories).Select(file => System.IO.Path.GetRelativePath(Path, file).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public string this[string name] => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a file, making its folders.</summary>
    /// <returns>Its full path.</returns>
    public string Write(string name, string text) => Write(name, System.Text.Encoding.UTF8.GetBytes(text));

    public string Write(string name, byte[] bytes)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], bytes);
        return this[name];
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
