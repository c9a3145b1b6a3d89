using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>repeat rows 3 to 6, 9 more times</c></summary>
internal static class RepeatBinding
{
    public static void Bind(Context context, PieceState piece, RepeatStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var (first, last) = RowsOf(context, piece, statement.Rows);
        var times = context.Evaluate.Counts(statement.Times, statement.Counting == RepeatCounting.InAll ? 1 : 0);
        if (statement.Counting == RepeatCounting.Unsaid)
        {
            // Which of the two is meant decides every number that follows; it was told when the line was read.
            piece.Doubt(true);
            return;
        }

        var missing = Sized.Where(context.Sizes, i => first[i] is { } a && last[i] is { } b && !piece.Builders[i].RowsInDoubt
            && (a < 1 || a > b || b > piece.Builders[i].RowCount));
        // Where the rows' numbers are off, so are those of the repeat, and that was told.
        var told = Array.Exists(missing, i => piece.NumbersOff[i] != 0);
        if (missing.Length > 0 && !told) context.Findings.Add(RepeatRows.At(context, statement.Rows, piece, missing, first, last));
        if (missing.Length == 0) RepeatedLines.Check(context, piece, statement.Rows, first, last);
        Work(context, piece, statement, first, last, times, missing);
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    // The numbers of the first and the last of the rows.
    private static (int?[] First, int?[] Last) RowsOf(Context context, PieceState piece, RepeatedRowsSyntax rows)
    {
        var first = context.Evaluate.Counts(rows.First, 1);
        if (!rows.AreLast) return (first, rows.Last is { } last ? context.Evaluate.Counts(last, 1) : first);
        var so = piece.Builders.Select(static builder => (int?)builder.RowCount).ToArray();
        return ([.. so.Zip(first, static (all, last) => all - last + 1)], so);
    }

    private static void Work(
        Context context, PieceState piece, RepeatStatement statement, int?[] first, int?[] last, int?[] times, int[] missing)
    {
        var more = new int?[context.Sizes];
        for (var i = 0; i < more.Length; i++)
        {
            if (first[i] is { } a && last[i] is { } b && times[i] is { } t && Array.IndexOf(missing, i) < 0)
            {
                var rows = (long)(b - a + 1) * (statement.Counting == RepeatCounting.InAll ? t - 1 : t);
                more[i] = (int)Math.Min(rows, int.MaxValue);
            }
        }

        more = RowWorking.Bounded(context, piece, statement.Times.Span, more);
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < more.Length; i++)
        {
            var builder = piece.Builders[i];
            if (more[i] is not { } rows || builder.RowsInDoubt)
            {
                builder.Doubt(true);
                continue;
            }

            Again(working, builder, i, first[i]!.Value, last[i]!.Value, rows);
        }

        working.Finish();
    }

    private static void Again(RowWorking working, PieceBuilder builder, int size, int first, int last, int rows)
    {
        // Rows that change yarns take their changes along; those of one yarn go on with the one in the hand.
        var changes = !builder.IsInStripes && builder.ChangesYarn(first, last);
        for (var ordinal = 0; ordinal < rows; ordinal++)
        {
            var index = first - 1 + (ordinal % (last - first + 1));
            var row = builder.Rows[index];
            builder.TurnAs(index);
            if (changes) builder.TakeAlong(row);
            builder.WorkInRounds(row.IsRound);
            builder.BeginOnSide(row.RightSide);
            foreach (var hand in (ReadOnlySpan<Hand>)[Hand.Right, Hand.Left])
            {
                // An edge stays the edge that it is, whichever end of the row it now is; what words say goes by the row's ends.
                if (row.StepAt(hand) is { } step && !SaidByWords(row.Plan, hand == row.StartsAt)) builder.AddStep(hand, step.Adds, step.Count, step.Origin);
            }

            if (row.Short.Said > 0) builder.LeaveForLater(row.EndsAt, row.Short.Said, row.Origin);
            working.One(size, row.Work is null ? null : row.Plan, ordinal, index + 1);
        }
    }

    private static bool SaidByWords(RowPlan plan, bool atStart) =>
        plan is WordsPlan { Words: var words } && words.Count > 0 && (atStart ? words[0] is SlipOver : words[^1] is Leave { ForLater: false });
}
