using Turnrow.Compiler.Grading;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An ease of a measure that the finished garment is never said to have.</summary>
public static class EaseUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "ease-unused",
        "TR0419",
        Severity.Warning,
        """
        An `ease` line says how much wider than the body the garment is to be. What it came to is looked at where a `finished` line of the same
        name says what the garment measures, and this pattern has none. Add that line, with the stitches that go round there, or mend the
        name.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            body women, cm
            ease bust is 5 cm

            piece back
              begin with 90 (100) stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            body women, cm
            ease bust is 5 cm

            piece back
              begin with 82 (92) stitches
              row 1 RS: dc across
            finished bust is 2 x 82 (92) dc stitches
            """));

    internal static Diagnostic At(Ease ease, IReadOnlyList<string> finished)
    {
        var near = Spelling.Nearest(ease.Name, finished);
        return new(Kind, ease.Span, $"no line says what the finished {ease.Name} measures, so its ease is never looked at")
        {
            Help = near is null ? $"add a line such as `finished {ease.Name} is 2 x hem stitches`" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", ease.Span, near)],
        };
    }
}
