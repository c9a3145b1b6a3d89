using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that is wider than the row it is part of.</summary>
public static class PartTooWide
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-too-wide",
        "TR0341",
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

    internal static Diagnostic At(Context context, TextSpan span, PieceState from, int[] sizes, int?[] counts, Func<int, int> there) =>
        new(Kind, span, Invariant($"the last row of {from.Name} has {there(sizes[0])} stitches{context.Findings.InSize(sizes[0])}, not {counts[sizes[0]]}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take fewer stitches for this part in these sizes",
        };
}
