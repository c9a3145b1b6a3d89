using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Shaping;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Schedules as they are given: <c>dec 1 at both edges every 6 rows 3 times, then every 4 rows 5 times</c>.</summary>
internal sealed class GivenShaping(Context context, PieceState piece, IReadOnlyList<ShapingSyntax> shapings)
{
    /// <summary>The changes, a size; null in a size where they are not known.</summary>
    public EdgeChanges?[] Plans(int?[] rows)
    {
        var plans = new EdgeChanges?[context.Sizes];
        for (var i = 0; i < plans.Length; i++) plans[i] = rows[i] is null ? null : new EdgeChanges();
        foreach (var shaping in shapings) Add(shaping, rows, plans);
        return plans;
    }

    private void Add(ShapingSyntax shaping, int?[] rows, EdgeChanges?[] plans)
    {
        var counts = context.Evaluate.Counts(shaping.Count);
        var within = shaping.StitchesIn is { } s ? context.Evaluate.Counts(s) : Sized.Same<int?>(context.Sizes, 0);
        var schedules = SchedulesOf(shaping);
        if (EdgeBinder.Bind(context, piece, shaping.Edge) is not { } hands)
        {
            Array.Fill(plans, null);
            return;
        }

        var sign = shaping.Change.Change == Change.Increase ? 1 : -1;
        for (var i = 0; i < plans.Length; i++)
        {
            if (plans[i] is not { } plan || counts[i] is not { } count || within[i] is not { } inside || schedules[i] is not { } schedule)
            {
                plans[i] = null;
                continue;
            }

            if (count == 0) continue;
            foreach (var row in schedule.RowsWithin(rows[i]!.Value))
            {
                foreach (var hand in hands)
                {
                    if (!plan.Add(hand, row, new EdgeChange(sign * count, inside))) context.Findings.Add(ShapingsMeet.At(context, shaping.Span, i, row, piece.Builders[i].NameOf(hand), hand));
                }
            }
        }

        CheckFits(shaping, rows, schedules, plans);
    }

    // A schedule with all its times given that needs more rows than there are would lose changes without a word. Whether rows or changes
    // are meant is not known, so neither is the count.
    private void CheckFits(ShapingSyntax shaping, int?[] rows, Schedule?[] schedules, EdgeChanges?[] plans)
    {
        var long_ = Sized.Where(context.Sizes, i => rows[i] is { } there && schedules[i]?.RowsNeeded() is { } needed && needed > there);
        if (long_.Length > 0) context.Findings.Add(ScheduleTooLong.At(context, shaping.Span, long_, i => schedules[i]!.RowsNeeded()!.Value, i => rows[i]!.Value));
        foreach (var i in long_) plans[i] = null;
    }

    private Schedule?[] SchedulesOf(ShapingSyntax shaping)
    {
        var after = shaping.After is { } a ? context.Evaluate.Counts(a) : Sized.Same<int?>(context.Sizes, 0);
        var frequencies = new List<Frequency>?[context.Sizes];
        for (var i = 0; i < frequencies.Length; i++) frequencies[i] = [];
        foreach (var frequency in shaping.Frequencies)
        {
            var interval = frequency.Interval is { } every ? context.Evaluate.Counts(every, 1) : Sized.Same<int?>(context.Sizes, 1);
            var second = frequency.ByTurns is { } turns ? context.Evaluate.Counts(turns, 1) : Sized.Same<int?>(context.Sizes, 0);
            var times = frequency.Times is { } t ? context.Evaluate.Counts(t) : Sized.Same<int?>(context.Sizes, -1);
            for (var i = 0; i < frequencies.Length; i++)
            {
                if (interval[i] is { } x && second[i] is { } y && times[i] is { } z) frequencies[i]?.Add(new Frequency(x, y, z));
                else frequencies[i] = null;
            }
        }

        var schedules = new Schedule?[context.Sizes];
        for (var i = 0; i < schedules.Length; i++)
        {
            if (after[i] is not { } plain || frequencies[i] is not { } list) continue;
            schedules[i] = new Schedule(plain, list.Count == 0 ? [new Frequency(1, 0, -1)] : list);
        }

        return schedules;
    }
}
