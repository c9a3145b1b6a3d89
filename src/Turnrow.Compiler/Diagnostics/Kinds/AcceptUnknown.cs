using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An accept line that names no warning.</summary>
public static class AcceptUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "accept-unknown",
        "TR0408",
        Severity.Error,
        """
        An `accept` line says that a warning was thought about and is right as it is, and gives the reason. It names the warning as the message
        does, `accept grade-falls: "…"`, and may say of which count, measure or piece: `accept grade-falls of strap: "…"`. An error can't be accepted, since the pattern can't be worked with it; it has to be mended.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 40 (45)
            accept row-count: "it looks better so"

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is 45 (40)
            accept grade-falls: "a trial: the larger size is worked more tightly"

            piece back
              begin with hem stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(NameSyntax name)
    {
        var near = Spelling.Nearest(name.Text, CompilerDiagnostics.All.Where(k => k.Severity == Severity.Warning).Select(k => k.Name));
        return new(Kind, name.Span, $"there is no warning called `{name.Text}`")
        {
            Help = near is null ? "write the name that stands behind `warning` in the message" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", name.Span, near)],
        };
    }

    internal static Diagnostic Error(NameSyntax name) =>
        new(Kind, name.Span, $"`{name.Text}` is an error, and only warnings can be accepted")
        {
            Help = "mend what the error is about, and take this line out",
        };
}
