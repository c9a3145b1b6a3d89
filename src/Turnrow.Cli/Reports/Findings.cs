using Turnrow.Cli.Files;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Cli.Reports;

/// <summary>Shows findings to a person.</summary>
internal static class Findings
{
    /// <summary>Writes all findings of a file, each followed by an empty line.</summary>
    /// <returns>The exit code that they give.</returns>
    public static int Write(TextWriter writer, PatternFile file, bool colour)
    {
        foreach (var finding in file.Compilation.Diagnostics)
            writer.Write(DiagnosticPrinter.Print(finding, file.Compilation.Tree.Source, colour) + "\n");
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
