using Turnrow.Cli.Files;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Cli.Reports;

/// <summary>The line that ends the check of a file.</summary>
internal static class Summary
{
    /// <summary><c>patterns/x.turnrow: 7 sizes, 4 pieces, 312 rows: no errors, 1 warning</c>; rows of all sizes together.</summary>
    public static string Of(PatternFile file)
    {
        var pattern = file.Compilation.Pattern;
        var (errors, warnings) = Count(file.Compilation.Diagnostics);
        return $"{file.Path}: {Many(Math.Max(1, pattern.Sizes.Count), "size")}, {Many(pattern.Pieces.Count(), "piece")}, "
            + $"{Many(RowsOf(pattern), "row")}: {Findings(errors, warnings)}";
    }

    /// <summary><c>no errors, 1 warning</c></summary>
    public static string Findings(int errors, int warnings) => $"{Many(errors, "error")}, {Many(warnings, "warning")}";

    /// <summary><c>  accepted: grade-falls in line 12, "the largest size has a wider neck"</c>, a line each.</summary>
    public static IEnumerable<string> Accepted(PatternFile file)
    {
        var source = file.Compilation.Tree.Source;
        foreach (var (warning, reason) in file.Compilation.Accepted)
            yield return $"  accepted: {warning.Kind.Name} in line {source.PositionOf(warning.Span.Start).Line}, \"{reason}\"";
    }

    /// <summary>Errors and warnings.</summary>
    public static (int Errors, int Warnings) Count(IReadOnlyList<Diagnostic> findings)
    {
        var errors = 0;
        foreach (var finding in findings)
        {
            if (finding.Kind.Severity == Severity.Error) errors++;
        }

        return (errors, findings.Count - errors);
    }

    /// <summary><c>no rows</c>, <c>1 row</c>, <c>2 rows</c>.</summary>
    public static string Many(int count, string what) => count switch
    {
        0 => $"no {what}s",
        1 => $"1 {what}",
        _ => $"{count} {what}s",
    };

    private static int RowsOf(Pattern pattern)
    {
        var rows = 0;
        foreach (var piece in pattern.Pieces)
        {
            foreach (var inSize in piece.InSizes) rows += inSize.Rows.Count;
        }

        return rows;
    }
}
