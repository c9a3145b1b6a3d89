using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Another file whose stitch patterns can't be used.</summary>
public static class UseFile
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "use-file",
        "TR0460",
        Severity.Error,
        """
        A line `use "stitches.turnrow"` takes the stitches and stitch patterns of another file beside the pattern, and nothing else of it. The file has to be there, under
        the name that is written. Its lines have to be readable and its stitches right, and so have those of its stitch patterns that the pattern works in: the first
        error is told here with its line, and `turnrow check` on that file tells them all, in what is not used too. Two files can't use each other:
        neither could be read first.
        """,
        SmallPattern.With("Scarf",
            """
            use "nowhere.turnrow"

            piece scarf
              begin with 25 stitches
              row 1: dc across
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 25 stitches
              row 1: dc across
            """));

    internal static Diagnostic Missing(TextSpan span, string file, string? by) =>
        new(Kind, span, $"there is no file {file} beside the pattern that could be read{(by is null ? string.Empty : $" ({by} uses it)")}")
        {
            Help = "put it into the same folder, and write its name as it is there, capitals and ending too",
        };

    internal static Diagnostic Circle(TextSpan span, IReadOnlyList<string> files) =>
        new(Kind, span, files.Count == 2 && files[0] == files[1] ? $"{files[0]} uses itself" : $"these files use each other: {string.Join(" uses ", files)}")
        {
            Help = "put what both need into a third file, which uses neither",
        };

    internal static Diagnostic Wrong(TextSpan span, string file, int line, Diagnostic first, int errors) =>
        new(Kind, span, Invariant($"line {line} of {file}: {first.Message}"))
        {
            Ledger = errors > 1 ? [Invariant($"{errors - 1} more {(errors == 2 ? "error" : "errors")} in {file}")] : [],
            Help = first.Help ?? $"see all that is wrong there with `turnrow check {file}`",
        };

    internal static Diagnostic Twice(TextSpan span, string file, TextSpan first) => new(Kind, span, $"{file} is used twice")
    {
        Help = "one line is enough",
        Related = [new Related(first, "first here")],
    };
}
