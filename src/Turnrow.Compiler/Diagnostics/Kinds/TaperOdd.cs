using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
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
        The piece is to become wider or narrower at both edges alike, so what is gained or lost has to be an even number, half of it for
        each edge. Here one stitch is left that would belong to one side only, and the piece would hang askew. Aim at one stitch more or
        less, or begin with another number. For a count made of a length say `, odd` or `, even`, so that both ends of the shaping agree.
        """,
        SmallPattern.With("Sleeve",
            """
            piece sleeve
              begin with 20 stitches
              row 1 RS: dc across
              shape 30 rows evenly to 31, at both edges
            """),
        SmallPattern.With("Sleeve",
            """
            piece sleeve
              begin with 20 stitches
              row 1 RS: dc across
              shape 30 rows evenly to 32, at both edges
            """));

    internal static Diagnostic At(Context context, ExpressionSyntax to, int[] sizes, int?[] differences, int?[] targets)
    {
        var first = sizes[0];
        var target = targets[first]!.Value;
        var all = sizes.Length == context.Sizes && to is NumberExpression;
        return new(Kind, to.Span, Invariant($"{Counted.Stitches(Math.Abs(differences[first]!.Value))} can't be shared equally between both edges{context.Findings.InSize(first)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [context.Findings.Each(sizes, i => Invariant($"from {targets[i] - differences[i]} to {targets[i]}"))],
            Help = sizes.Length == context.Sizes ? "aim at one stitch more or fewer" : "aim at one stitch more or fewer in these sizes",
            Mends = all ? [new Mend("one stitch more", to.Span, Counted.Plain(target + 1)), .. target > 1 ? (Mend[])[new Mend("one stitch fewer", to.Span, Counted.Plain(target - 1))] : []] : [],
        };
    }
}
