using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`straight` or `shape` before any row.</summary>
public static class NoRowYet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "no-row-yet",
        "TR0314",
        Severity.Error,
        """
        `straight` and `shape` go on with the stitch of the row before, and the piece has no row yet. So nobody knows whether to work sc
        or dc. Write the first row in words, `row 1 RS: dc across`; the rest can follow with `straight`.
        """,
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              straight 10 rows
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 9 rows
            """));

    internal static Diagnostic At(Context context, TextSpan span, string word, int[] sizes) =>
        new(Kind, span, $"`{word}` goes on with the stitch of the row before, and there is no row yet{(sizes.Length == context.Sizes ? string.Empty : context.Findings.InSizes(sizes))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write the first row above it: `row 1 RS: dc across`",
        };
}
