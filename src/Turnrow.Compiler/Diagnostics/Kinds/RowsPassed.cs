using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows since a mark than asked for.</summary>
public static class RowsPassed
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rows-passed",
        "TR0326",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> over) =>
        new(Kind, span, $"there are more rows than that since the mark already: {context.Findings.Each(sizes, i => Invariant($"{over(i)} too many"))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "the number counts from the marked row",
        };
}
