using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row begins with a stitch that goes back, and its turning chain counts.</summary>
public static class RowBeginsCrossed
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-begins-crossed",
        "TR0485",
        Severity.Error,
        """
        A turning chain that counts stands at the row's edge, for the stitch that goes into its first place. A stitch that skips places and goes
        back to them begins with one further in, so no chain can stand for that. Begin with a plain stitch, which makes a firm edge as well,
        or let the chain of this row not count: `turn dc, next row: ch 3 does not count`.
        """,
        SmallPattern.With("Crossed cloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: dc across
              row 2: crossed across
            """),
        SmallPattern.With("Crossed cloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc, crossed 9, dc
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, RowFault fault, bool isRound)
    {
        var stitch = ((Work)fault.Word!).Stitch.Rule;
        var uncounted = Invariant($"let the chain not count here: `turn {context.Word(stitch)}, next row: ch {stitch.Height} does not count`");
        return new(Kind, span, $"the chain that the {(isRound ? "round" : "row")} begins with counts as a stitch, but `{word}` begins further in{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = isRound ? uncounted : $"put a plain stitch before it, and one behind it at the row's end; or {uncounted}",
        };
    }
}
