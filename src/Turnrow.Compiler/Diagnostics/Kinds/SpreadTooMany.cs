using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More increases or decreases than fit in a row.</summary>
public static class SpreadTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "spread-too-many",
        "TR0307",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, RowFailure> failureOf, string word) =>
        new(Kind, span, Invariant($"`{word}` does not fit in {failureOf(sizes[0]).Fault.There} stitches{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "an increase needs a stitch of its own, a decrease two; spread them over two rows",
        };
}
