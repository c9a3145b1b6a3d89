using Turnrow.Cli.Files;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Cli.Reports;

/// <summary>Shows findings to a person.</summary>
internal static class Findings
{
    /// <summary>More than a person mends in one go; the rest comes up once these are gone.</summary>
    public const int Most = 100;

    /// <summary>Writes the findings of a file, the first hundred if there are more, each followed by an empty line.</summary>
    /// <returns>The exit code that all of them give.</returns>
    public static int Write(TextWriter writer, PatternFile file, bool colour)
    {
        var findings = file.Compilation.Diagnostics;
        foreach (var finding in findings.Take(Most))
            writer.Write(DiagnosticPrinter.Print(finding, file.Compilation.Tree.Source, colour) + "\n");
        if (findings.Count > Most)
            writer.Write($"… and {findings.Count - Most} more in {file.Path}: mend those above first (`turnrow check --json` lists all)\n\n");
        return CodeOf(file);
    }

    /// <summary>The exit code that a file's findings give.</summary>
    public static int CodeOf(PatternFile file)
    {
        foreach (var finding in file.Compilation.Diagnostics)
        {
            if (finding.Kind.Severity == Severity.Error) return ExitCode.Errors;
        }

        return ExitCode.Clean;
    }
}
