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
        if (builder.RowCount == 0)
        {
            if (builder.Ahead is not null || builder.WaitsForFirstStitch) context.Findings.Add(NoRowYet.At(start, word));
        }
        else if (builder.Rows[^1].Work is null)
        {
            // The row could not be read or worked: whatever it was, the pattern's own stitch is the best guess for counting on.
            return context.Gauges.Gauges.Count > 0 ? context.Gauges.Gauges[0].Stitch : StitchBook.Single;
        }
        else
        {
            context.Findings.Add(NotPlain.At(start, word, builder.RowCount));
        }

        return null;
    }
}
