using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that would go into a space unasked.</summary>
public static class SpaceAhead
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "space-ahead",
        "TR0304",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, int chains) =>
        new(Kind, span, Invariant($"the next place for `{word}` is a ch-{chains} space, not a stitch{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "a row over spaces says its places: `in next sp`, `in next dc`, `in each st`, `in each st and sp`",
        };
}
