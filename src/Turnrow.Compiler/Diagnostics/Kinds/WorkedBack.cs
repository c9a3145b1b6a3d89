using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that is worked back from left to right, where the row can't go that way.</summary>
public static class WorkedBack
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "worked-back",
        "TR0468",
        Severity.Error,
        """
        Reverse single crochet (crab stitch) goes back over the row before with the same side facing, from left to right. So all stitches of such a
        row are worked that way, and there has to be a row that it can go back over: it begins no piece, and nothing is picked up by it.
        """,
        SmallPattern.With("Mat",
            """
            piece mat
              begin with 20 stitches
              row 1 RS: sc across
              row 2: rsc 10, sc across
            """),
        SmallPattern.With("Mat",
            """
            piece mat
              begin with 20 stitches
              row 1 RS: sc across
              row 2 RS: rsc across
            """));

    internal static Diagnostic Mixed(Context context, TextSpan span, int[] sizes, string word) =>
        new(Kind, span, $"`{word}` is worked from right to left, and other stitches of this row from left to right{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"work the whole row in reverse {context.Word(Turnrow.Fabric.Stitches.StitchBook.Single)}, or each kind in a row of its own",
        };

    internal static Diagnostic PickedUp(Context context, TextSpan span, string word) =>
        new(Kind, span, $"`{word}` goes back over a row, and an edge is walked the other way")
        {
            Help = $"pick up in {context.Word(Turnrow.Fabric.Stitches.StitchBook.Single)}, and work a row or round of `{word}` over that",
        };

    internal static Diagnostic First(Context context, TextSpan span, int[] sizes, string word, bool afterRow) =>
        new(Kind, span, (afterRow ? $"`{word}` goes back over a round here, and the last one is a row" : $"`{word}` goes back over a row, and here is none of this piece yet") + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"work a {(afterRow ? "round" : "row or round")} of {context.Word(Turnrow.Fabric.Stitches.StitchBook.Single)} first",
        };
}
