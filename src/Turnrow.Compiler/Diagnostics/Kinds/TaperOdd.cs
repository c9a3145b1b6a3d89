using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A taper at both edges that can't be shared equally.</summary>
public static class TaperOdd
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "taper-odd",
        "TR0332",
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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] differences, int?[] targets) =>
        new(Kind, span, Invariant($"{Math.Abs(differences[sizes[0]]!.Value)} stitches can't be shared equally between both edges{context.Findings.InSize(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [context.Findings.Each(sizes, i => Invariant($"from {targets[i] - differences[i]} to {targets[i]}"))],
            Help = "aim at one stitch more or fewer in these sizes",
        };
}
