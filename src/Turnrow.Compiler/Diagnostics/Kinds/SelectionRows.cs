using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows taken of an edge than it has.</summary>
public static class SelectionRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "selection-rows",
        "TR0348",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> there, string piece) =>
        new(Kind, span, Invariant($"this part of the edge of {piece} has {there(sizes[0])} rows{context.Findings.InSize(sizes[0])}, fewer than that"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take fewer rows",
        };
}
