using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A divided row that does not come out.</summary>
public static class DivideSum
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "divide-sum",
        "TR0344",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] sums, Func<int, int> there) =>
        new(Kind, span, Invariant($"the parts are {sums[sizes[0]]} stitches together, and the row has {there(sizes[0])}{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"parts {sums[i]}, row {there(i)}"))] : [],
            Help = "every stitch of the row belongs to a part or is skipped; change one of the numbers",
        };
}
