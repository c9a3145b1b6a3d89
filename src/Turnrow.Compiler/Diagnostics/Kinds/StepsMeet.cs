using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches left and chains added at one edge before the same row.</summary>
public static class StepsMeet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "steps-meet",
        "TR0327",
        Severity.Error,
        """
        `leave` lets stitches at an edge go unworked, and `add` puts new chains at an edge. At one edge, before one row, only one of the
        two can be done: chains added to stitches that stay unworked would hang in the air. Work a row between the two, or keep one of
        them, with the difference of both numbers.
        """,
        SmallPattern.With("Bag flap",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: sc across
              leave 4 at right edge
              add 2 at right edge
              row 2: sc across
            """),
        SmallPattern.With("Bag flap",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: sc across
              leave 2 at right edge
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, bool adds) =>
        new(Kind, span, $"{(adds ? "stitches are left" : "chains are added")} at this edge before the same row already{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work a row between the two, or keep one of them with the difference of both numbers",
        };

    internal static Diagnostic Mirrored(Context context, TextSpan span, int[] sizes, string original) =>
        new(Kind, span, $"in the mirror of {original}, chains added one row apart fall on an edge where stitches are left before the same row{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "such chains begin where the hook is, in both pieces: leave the stitches a row later, or add the chains at each edge by a line of its own",
        };
}
