using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Pieces;

/// <summary>Finds the plain stitch that <c>straight</c> and <c>shape</c> go on with.</summary>
internal static class PlainCheck
{
    /// <summary>The stitch in each size; null, and reported, in a size where the last row is not plain.</summary>
    /// <param name="context">What the file says.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="span">The line.</param>
    /// <param name="word">Its first word.</param>
    /// <param name="asked">The sizes that it is asked of.</param>
    public static Stitch?[] Stitches(Context context, PieceState piece, TextSpan span, string word, Func<int, bool> asked)
    {
        var (start, plain) = (new TextSpan(span.Start, word.Length), piece.Builders.Select(b => b.PlainStitch()));
        var notPlain = Sized.Where(context.Sizes, i => asked(i) && plain[i] is null && !InDoubt(piece.Builders[i]) && piece.Builders[i].RowCount > 0);
        var noRow = Sized.Where(context.Sizes, i => asked(i) && plain[i] is null && !InDoubt(piece.Builders[i]) && IsBare(piece.Builders[i]));
        if (notPlain.Length > 0) context.Findings.Add(NotPlain.At(context, start, word, piece, notPlain, i => piece.Builders[i].RowCount));
        if (noRow.Length > 0) context.Findings.Add(NoRowYet.At(context, start, word, noRow));
        for (var i = 0; i < plain.Length; i++)
        {
            if (plain[i] is null && InDoubt(piece.Builders[i])) plain[i] = Guess(context, piece);
        }

        return plain;
    }

    /// <summary>
    /// Whether there was no row at all: that is told, and where the rows of such a line belong is then anyone's guess, so that those below
    /// are not faulted for their numbers.
    /// </summary>
    public static bool NothingToGoOnWith(PieceState piece, Onward[] onward) =>
        Array.Exists(onward, static o => o.Fabric is null) && piece.Lead.RowCount == 0;

    private static bool InDoubt(PieceBuilder builder) => builder.RowsInDoubt || (builder.RowCount > 0 && builder.LastWork is null);

    private static bool IsBare(PieceBuilder builder) => builder.RowCount == 0 && (builder.Ahead is not null || builder.WaitsForFirstStitch);

    /// <summary>
    /// The stitch to count on with where the last row could not be read or worked: whatever it was, the pattern's own is the best guess.
    /// </summary>
    public static Stitch Guess(Context context, PieceState piece) =>
        piece.PlainStitch() ?? (context.Gauges.Gauges.Count > 0 ? context.Gauges.Gauges[0].Stitch : StitchBook.Single);
}
