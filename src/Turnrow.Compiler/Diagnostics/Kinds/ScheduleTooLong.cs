using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A schedule that needs more rows than there are.</summary>
public static class ScheduleTooLong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "schedule-too-long",
        "TR0330",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, long> needed, Func<int, int> there) =>
        new(Kind, span, Invariant($"this needs {needed(sizes[0])} rows, and there are {there(sizes[0])}{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"needs {needed(i)}, has {there(i)}"))] : [],
            Help = "give it more rows, fewer times, or shorter intervals",
        };
}
