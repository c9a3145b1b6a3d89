using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that goes to the turn of the row below, where none turned.</summary>
public static class TurnMissing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "turn-missing",
        "TR0469",
        Severity.Error,
        """
        `to turn` is the way to the gap where a row below turned before its edge: behind it lie the stitches that were left for later. There is one
        only at an edge where stitches wait, and a row that goes to the other edge, or that comes when all of them are worked over, finds none.
        Short rows go to and fro, so a row finds the turn of the row two rows before it.
        """,
        SmallPattern.With("Heel",
            """
            piece heel
              begin with 20 stitches
              row 1 RS: sc across
              row 2: sc 12, leave 8 for later
              row 3: sc until 1 remains before turn, dec, sc across
            """),
        SmallPattern.With("Heel",
            """
            piece heel
              begin with 20 stitches
              row 1 RS: sc across
              row 2: sc 12, leave 8 for later
              row 3: sc across
              row 4: sc until 1 remains before turn, dec, sc across = 19
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, RowFailure failure)
    {
        var edge = failure.Start == Hand.Right ? "left" : "right";
        var there = failure.Fault.There;
        var what = there < 0 ? $"`{word}` goes to a turn, and no stitches wait at the {edge} edge, where this row goes"
            : $"`{word}` would end before the turn, and {there} {(there == 1 ? "stitch comes" : "stitches come")} before it here";
        return new Diagnostic(Kind, span, what + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = there < 0 ? "say how many stitches it works over, or `across`" : "let fewer remain, or work fewer before it",
        };
    }
}
