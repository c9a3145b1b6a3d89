using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More increases or decreases than fit in a row.</summary>
public static class SpreadTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "spread-too-many",
        "TR0307",
        Severity.Error,
        """
        Increases or decreases are to be spread evenly over a row, and there are more of them than the row has room for. An increase needs
        a stitch of its own, a decrease needs two. So 20 stitches can be increased by 20 at most, and decreased by 10. Spread them over
        two rows, or take a smaller number in the sizes named.
        """,
        SmallPattern.With("Hat",
            """
            piece crown
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc dec 12 evenly
            """),
        SmallPattern.With("Hat",
            """
            piece crown
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc dec 8 evenly
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, RowFailure> failureOf, string word)
    {
        var fault = failureOf(sizes[0]).Fault;
        var increase = fault.Word is Spread { Change: > 0 };
        var most = increase ? fault.There : fault.There / 2;
        return new(Kind, span, Invariant($"`{word}` does not fit into {Counted.Stitches(fault.There)}{context.Findings.InSize(sizes[0])}: {most} would be the most"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["stitches: " + context.Findings.Each(sizes, i => Invariant($"{failureOf(i).Fault.There}"))] : [],
            Help = increase ? "each increase needs a stitch of its own; spread them over two rows" : "each decrease needs two stitches; spread them over two rows",
        };
    }
}
