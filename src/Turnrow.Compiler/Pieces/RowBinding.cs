using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>row 5: …</c> and <c>rows 2 to 19: …</c></summary>
internal static class RowBinding
{
    public static void Bind(Context context, PieceState piece, RowStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        // A slip of one letter would open the tube: it is told, and the rows are the rounds that they were meant to be.
        var isRound = statement.IsRound || RowsOrRounds.IsAround(context, piece, statement);
        foreach (var builder in piece.Builders) builder.WorkInRounds(isRound);
        var counts = RowWorking.Bounded(context, piece, statement.Span, CountRows(context, piece, statement));
        TurningChainCheck.Add(context, statement.Items);
        var words = new RowBinder(context, piece).Bind(statement.Items, piece.OnlyStitch() ?? (piece.Unread ? PlainCheck.Guess(context, piece) : null));
        // What a row that is not known holds or bridges has a name all the same, and nobody knows how many it is.
        if (Sized.Where(context.Sizes, i => words[i] is null && context.Here.Has(i)).Length > 0 && statement.Items.Any(static item => item is HoldItem or BridgeItem)) piece.NamesInDoubt = true;
        for (var i = 0; i < context.Sizes; i++) piece.Builders[i].WorkBack(words[i]);
        CheckSide(context, piece, statement);
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            var plan = words[i] is { } list ? new WordsPlan(list) : null;
            if (counts[i] is not { } count) piece.Builders[i].Doubt(true);
            else working.Rows(i, count, _ => plan);
        }

        for (var i = 0; i < context.Sizes; i++)
        {
            if ((words[i] is null || counts[i] is null) && context.Here.Has(i) && statement.Items is [.., LeaveItem { ForLater: true }]) piece.Builders[i].DoubtTurns(2);
        }

        working.Finish();
        // What may have moved the marker ends anywhere: a claim tells what it made, not how many come next. Nor does it tell the chains of a bridge
        // that can't be read.
        if (!MayMoveMarker(statement) && !(Array.Exists(words, static w => w is null) && statement.Items.Any(static item => item is BridgeItem)))
            new ClaimBinder(context).CheckRow(piece, claim);
    }

    // `move marker`, one of the words misspelt.
    private static bool MayMoveMarker(RowStatement statement) =>
        statement.Items is [_, .., StitchItem { Words: [var move, var marker] }] && (move.Text == "move") != (marker.Text == "marker");

    /// <summary>How many rows "rows 2 to 19" are; reports numbers that are not the row's own.</summary>
    public static int?[] CountRows(Context context, PieceState piece, ExpressionSyntax? first, ExpressionSyntax? last)
    {
        if (first is null) return Sized.Same<int?>(context.Sizes, 1);
        var from = context.Evaluate.Counts(first, 1);
        var to = last is null ? from : context.Evaluate.Counts(last);
        CheckNumbers(context, piece, first, from);
        var counts = new int?[context.Sizes];
        for (var i = 0; i < counts.Length; i++) counts[i] = to[i] - from[i] + 1;
        var backwards = Sized.Where(context.Sizes, i => counts[i] is < 0);
        if (backwards.Length > 0) context.Findings.Add(RowsBackwards.At(context, first.Span.To(last!.Span), backwards, from, to));
        return counts.Select(c => c is < 0 ? null : c);
    }

    private static void CheckNumbers(Context context, PieceState piece, ExpressionSyntax first, int?[] said)
    {
        var off = new int[context.Sizes];
        for (var i = 0; i < off.Length; i++)
            off[i] = !context.Here.Has(i) ? piece.NumbersOff[i] : said[i] is { } n && !piece.Builders[i].RowsInDoubt ? n - (piece.Builders[i].RowCount + 1) : 0;
        var wrong = Sized.Where(context.Sizes, i => context.Here.Has(i) && off[i] != 0);
        if (Array.Exists(wrong, i => off[i] != piece.NumbersOff[i])) context.Findings.Add(RowNumber.At(context, first.Span, piece, wrong, said));
        off.CopyTo(piece.NumbersOff, 0);
    }

    private static int?[] CountRows(Context context, PieceState piece, RowStatement statement) =>
        CountRows(context, piece, statement.First, statement.Last);

    private static void CheckSide(Context context, PieceState piece, RowStatement statement)
    {
        if (statement.Side is not { } side) return;
        foreach (var builder in piece.Builders)
        {
            // Which side the first row of a foundation has is the designer's to say, and whether rows after rounds go on or back.
            builder.BeginOnSide(side.RightSide);
        }

        // A number that is off by an odd number of rows puts the row on the other side as well: that was told.
        var wrong = Sized.Where(context.Sizes, i => !piece.Builders[i].RowsInDoubt && piece.Builders[i].NextIsRightSide != side.RightSide && int.IsEvenInteger(piece.NumbersOff[i]));
        if (wrong.Length > 0) context.Findings.Add(RowSide.At(context, side.Span, piece, wrong, side.RightSide));
    }
}
