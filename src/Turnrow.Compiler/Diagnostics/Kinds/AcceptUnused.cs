using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An accept line without a warning to accept.</summary>
public static class AcceptUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "accept-unused",
        "TR0409",
        Severity.Warning,
        """
        The file accepts a warning that does not come up, or comes up no more. Take the line out, so that it does not hide the same warning when
        it comes up for another reason.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45)
            accept grade-falls: "a strap has one length"

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45)

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(AcceptStatement line, IReadOnlyList<string> others)
    {
        var of = line.Of is { } named ? $" of `{named.Text}`" : string.Empty;
        var near = line.Of is { } name ? Spelling.Nearest(name.Text, others) : null;
        return new(Kind, line.Of?.Span ?? line.Warning.Span, $"`{line.Warning.Text}` does not come up{of} in this pattern")
        {
            Help = near is not null ? $"did you mean `{near}`?"
                : line.Of is not null && others.Count > 0 ? $"it comes up of {Findings.Join([.. others.Select(static o => $"`{o}`")])}; name one of them, or take the line out"
                : "take the line out",
            Mends = near is null ? [] : [new Mend($"write {near}", line.Of!.Span, near)],
        };
    }
}
