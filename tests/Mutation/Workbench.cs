using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Turnrow.Mutation;

/// <summary>A copy of the project in a folder outside it, where the row model has switches.</summary>
internal sealed partial class Workbench(string root, string folder)
{
    private const string RowModel = "src/Turnrow.Fabric";

    private string Tree => Path.Combine(folder, "tree");

    /// <summary>The program in the copy, which runs the tests with a switch on.</summary>
    public string Worker => Path.Combine(Tree, "tests/Mutation/bin/Release/net10.0/Turnrow.Mutation.dll");

    /// <summary>Brings the copy up to date and builds it.</summary>
    public (IReadOnlyList<Mutant> Mutants, int Found) Prepare()
    {
        foreach (var file in Output("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], root).Split('\0', StringSplitOptions.RemoveEmptyEntries))
            if (File.Exists(Path.Combine(root, file)) && !(file.StartsWith(RowModel, StringComparison.Ordinal) && file.EndsWith(".cs", StringComparison.Ordinal)))
                Copy(file);
        var source = new RowModelSource(Path.Combine(root, RowModel));
        source.WriteTo(Path.Combine(Tree, RowModel));
        // The switch is what the project's own rules forbid, and they have nothing to say to a copy.
        Output("dotnet", ["build", "tests/Mutation", "-c", "Release", "-v:quiet", "-nologo", "-p:TreatWarningsAsErrors=false", "-p:RunAnalyzers=false",
            "-p:EnforceCodeStyleInBuild=false", "-p:GenerateDocumentationFile=false", "-p:WarningLevel=0"], Tree);
        return (source.Mutants, source.Found);
    }

    /// <summary>Writes a file if that changes it, so that what is built stays built.</summary>
    public static void Write(string path, string text)
    {
        if (File.Exists(path) && File.ReadAllText(path) == text) return;
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private void Copy(string file)
    {
        var (from, to) = (Path.Combine(root, file), Path.Combine(Tree, file));
        if (file.EndsWith(".cs", StringComparison.Ordinal))
        {
            Write(to, file.StartsWith("tests/", StringComparison.Ordinal) ? FewerTries(File.ReadAllText(from)) : File.ReadAllText(from));
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        if (!File.Exists(to) || File.GetLastWriteTimeUtc(to) != File.GetLastWriteTimeUtc(from)) File.Copy(from, to, overwrite: true);
    }

    // A change that a random test finds at all, it finds soon; and thousands of changes are tried.
    private static string FewerTries(string test) => Tries().Replace(test, static match =>
    {
        var tries = int.Parse(match.Groups[1].Value.Replace("_", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return string.Create(CultureInfo.InvariantCulture, $"iter: {Math.Max(Math.Min(tries, 50), tries / 10)}");
    });

    private static string Output(string program, IEnumerable<string> arguments, string where)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = where, RedirectStandardOutput = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException(program + " did not start");
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} failed:\n{output}");
    }

    [GeneratedRegex(@"iter: (\d[\d_]*)")]
    private static partial Regex Tries();
}
