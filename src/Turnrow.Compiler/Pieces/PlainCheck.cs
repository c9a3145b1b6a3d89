using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Pieces;

/// <summary>Finds the plain stitch that <c>straight</c> and <c>shape</c> go on with.</summary>
internal static class PlainCheck
{
    /// <summary>
    /// Whether there was no row at all: that is told, and where the rows of such a line belong is then anyone's guess, so that those below
    /// are not faulted for their numbers.
    /// </summary>
    public static bool NothingToGoOnWith(PieceState piece, Stitch? stitch) => stitch is null && piece.Builders[0].RowCount == 0;

    /// <summary>The stitch; null, and reported, if the last row is not plain.</summary>
    public static Stitch? Stitch(Context context, PieceState piece, TextSpan span, string word)
    {
        if (piece.PlainStitch() is { } stitch) return stitch;
        var start = new TextSpan(span.Start, word.Length);
        var builder = piece.Builders[0];
        if (builder.RowsInDoubt || (builder.RowCount > 0 && builder.LastWork is null)) return Guess(context, piece);
        if (builder.RowCount > 0) context.Findings.Add(NotPlain.At(start, word, builder.RowCount));
        else if (builder.Ahead is not null || builder.WaitsForFirstStitch) context.Findings.Add(NoRowYet.At(start, word));
        return null;
    }

    /// <summary>
    /// The stitch to count on with where the last row could not be read or worked: whatever it was, the pattern's own is the best guess.
    /// </summary>
    public static Stitch Guess(Context context, PieceState piece) =>
        piece.PlainStitch() ?? (context.Gauges.Gauges.Count > 0 ? context.Gauges.Gauges[0].Stitch : StitchBook.Single);
}
