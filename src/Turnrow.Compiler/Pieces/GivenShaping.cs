using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
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
        var counts = new List<int?[]>();
        foreach (var stage in shaping.Stages) counts.Add(context.Evaluate.Counts(stage.Count));
        var manners = MannerBinding.Of(context, piece, shaping.StitchesIn, shaping.Decreasing);
        var schedules = SchedulesOf(shaping);
        var evenly = shaping.Edge.Word == EdgeWord.Evenly;
        if ((evenly ? CheckEvenly(shaping) ? [] : null : EdgeBinder.Bind(context, piece, shaping.Edge)) is not { } hands)
        {
            Array.Fill(plans, null);
            return;
        }

        for (var i = 0; i < plans.Length; i++)
        {
            if (plans[i] is not { } plan || schedules[i] is not { } schedule || !counts.TrueForAll(c => c[i] is not null))
            {
                plans[i] = null;
                continue;
            }

            foreach (var (row, frequency) in schedule.Schedule.ChangesWithin(rows[i]!.Value))
            {
                var stage = schedule.Stages[frequency];
                if (counts[stage][i]!.Value is not (> 0 and var count)) continue;
                var work = WorkOf(shaping.Stages[stage].Kind, count, manners[i]);
                if (evenly)
                {
                    var change = shaping.Stages[stage].Kind == StageKind.Increase ? count : -count;
                    if (!plan.AddEvenly(row, change, shaping.Stacking is { Staggered: true })) context.Findings.Add(ShapingsMeet.Evenly(context, shaping.Span, piece, i, row));
                    continue;
                }

                var from = shaping.Stages[stage].Kind == StageKind.LeaveForLater ? RowToTurnFrom(row, schedule.Schedule.Frequencies[frequency]) : row;
                foreach (var hand in hands)
                {
                    if (!plan.Add(hand, from, work)) context.Findings.Add(ShapingsMeet.At(context, shaping.Span, piece, i, row, hand));
                }
            }
        }

        CheckFits(shaping, rows, schedules, plans);
        CheckTurns(shaping, schedules, plans);
    }

    // What is spread lies nowhere in particular.
    private bool CheckEvenly(ShapingSyntax shaping)
    {
        foreach (var stage in shaping.Stages)
        {
            if (stage.Kind is StageKind.Increase or StageKind.Decrease) continue;
            context.Findings.Add(ShapeManner.EvenlyStep(stage.Span));
            return false;
        }

        if ((shaping.StitchesIn?.Span ?? shaping.Decreasing?.Span) is not { } edge) return true;
        context.Findings.Add(ShapeManner.EvenlyEdge(edge));
        return false;
    }

    private static EdgeWork WorkOf(StageKind kind, int count, ShapingManner manner) => kind switch
    {
        StageKind.Increase => manner.Of(count),
        StageKind.Decrease => manner.Of(-count),
        _ => new EdgeWork(default, new EdgeStep(kind == StageKind.Add, count) { ForLater = kind == StageKind.LeaveForLater }),
    };

    // Of the rows of an interval, the last that goes to the edge turns before it: one of the last two. Which, the hook says; so a mirrored piece
    // turns in the row beside it.
    private static int RowToTurnFrom(int row, Frequency frequency) => frequency.Interval > 1 ? row - 1 : row;

    // A schedule with all its times given that needs more rows than there are would lose changes without a word. Whether rows or changes
    // are meant is not known, so neither is the count.
    private void CheckFits(ShapingSyntax shaping, int?[] rows, (Schedule Schedule, List<int> Stages)?[] schedules, EdgeChanges?[] plans)
    {
        var long_ = Sized.Where(context.Sizes, i => rows[i] is { } there && schedules[i]?.Schedule.RowsNeeded() is { } needed && needed > there);
        if (long_.Length > 0) context.Findings.Add(ScheduleTooLong.At(context, shaping.Span, long_, i => schedules[i]!.Value.Schedule.RowsNeeded()!.Value, i => rows[i]!.Value));
        foreach (var i in long_) plans[i] = null;
    }

    // Before one edge only every second row can turn.
    private void CheckTurns(ShapingSyntax shaping, (Schedule Schedule, List<int> Stages)?[] schedules, EdgeChanges?[] plans)
    {
        var often = Sized.Where(context.Sizes, i => schedules[i] is { } known && known.Schedule.Frequencies.Where(
            (frequency, f) => shaping.Stages[known.Stages[f]].Kind == StageKind.LeaveForLater && IsEveryRow(frequency)).Any());
        if (often.Length > 0) context.Findings.Add(ShortRowEvery.At(context, shaping.Span, often));
        foreach (var i in often) plans[i] = null;
    }

    private static bool IsEveryRow(Frequency frequency) =>
        frequency.Times is < 0 or > 1 && (frequency.Interval < 2 || frequency.SecondInterval == 1);

    // One schedule of all stages; beside it, the stage that each of its frequencies belongs to.
    private (Schedule Schedule, List<int> Stages)?[] SchedulesOf(ShapingSyntax shaping)
    {
        var after = shaping.After is { } a ? context.Evaluate.Counts(a) : Sized.Same<int?>(context.Sizes, 0);
        var frequencies = new List<Frequency>?[context.Sizes];
        var stages = new List<int>();
        for (var i = 0; i < frequencies.Length; i++) frequencies[i] = [];
        for (var stage = 0; stage < shaping.Stages.Count; stage++)
        {
            if (shaping.Stages[stage].Frequencies.Count == 0) Once(frequencies, stages, stage);
            foreach (var frequency in shaping.Stages[stage].Frequencies)
            {
                Add(frequency, frequencies);
                stages.Add(stage);
            }
        }

        var schedules = new (Schedule, List<int>)?[context.Sizes];
        for (var i = 0; i < schedules.Length; i++)
        {
            if (after[i] is { } plain && frequencies[i] is { } list) schedules[i] = (new Schedule(plain, list), stages);
        }

        return schedules;
    }

    // A step without a frequency is done once, in the next row.
    private static void Once(List<Frequency>?[] frequencies, List<int> stages, int stage)
    {
        foreach (var list in frequencies) list?.Add(new Frequency(1, 0, 1));
        stages.Add(stage);
    }

    private void Add(FrequencySyntax frequency, List<Frequency>?[] frequencies)
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
}
