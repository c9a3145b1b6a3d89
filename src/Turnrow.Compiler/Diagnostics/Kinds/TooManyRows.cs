using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows than a piece can have.</summary>
public static class TooManyRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-many-rows",
        "TR0317",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int most) =>
        new(Kind, span, Invariant($"no piece has more than {most} rows{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "look for a digit too many",
        };
}
