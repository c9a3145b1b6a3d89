using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Shaping;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Schedules that the compiler works out: <c>shape 60 rows evenly to 73, at both edges</c>.</summary>
internal sealed class SolvedShaping(Context context, PieceState piece, SolveSyntax solve)
{
    /// <summary>The changes, a size; null in a size where they are not known or do not fit.</summary>
    public EdgeChanges?[] Plans(int?[] rows)
    {
        var plans = new EdgeChanges?[context.Sizes];
        var targets = context.Evaluate.Counts(solve.To, 1);
        if (solve.Edge.Word == EdgeWord.Evenly) return Around(rows, targets);
        if (EdgeBinder.Bind(context, piece, solve.Edge) is not { } hands) return plans;
        var differences = new int?[context.Sizes];
        for (var i = 0; i < differences.Length; i++) differences[i] = targets[i] - piece.Builders[i].Ahead?.Count;
        var odd = Sized.Where(context.Sizes, i => differences[i] is { } d && d % hands.Length != 0);
        if (odd.Length > 0) context.Findings.Add(TaperOdd.At(context, solve.To, odd, differences, targets));
        var tapers = TapersOf(rows, differences, hands.Length);
        var manners = MannerBinding.Of(context, piece, Said(SolveOption.StitchesIn)?.Count, Said(SolveOption.Decreasing)?.Decreasing);
        var refused = new List<int>();
        for (var i = 0; i < plans.Length; i++)
        {
            if (tapers[i] is not { } taper || Array.IndexOf(odd, i) >= 0) continue;
            if (TaperSolver.Solve(taper) is not { } schedule) refused.Add(i);
            else plans[i] = PlanOf(schedule, taper, hands, manners[i].Of(Math.Sign(differences[i]!.Value)));
        }

        if (refused.Count > 0) context.Findings.Add(TaperTooSteep.At(context, solve.Span, [.. refused], i => tapers[i]!, hands.Length, differences));
        return plans;
    }

    // Each round has what a straight slope has there, to the nearest stitch.
    private EdgeChanges?[] Around(int?[] rows, int?[] targets)
    {
        var plans = new EdgeChanges?[context.Sizes];
        foreach (var option in solve.Options)
        {
            context.Findings.Add(ShapeManner.EvenlyEdge(option.Span));
            return plans;
        }

        var steep = new List<int>();
        for (var i = 0; i < plans.Length; i++)
        {
            if (rows[i] is not { } count || targets[i] is not { } target || piece.Builders[i].Ahead is not { } there) continue;
            if (Slope(there.Count, target, count) is { } plan) plans[i] = plan;
            else steep.Add(i);
        }

        if (steep.Count > 0) context.Findings.Add(TaperTooSteep.Around(context, solve.Span, [.. steep], i => (piece.Builders[i].Ahead!.Count, targets[i]!.Value, rows[i]!.Value)));
        return plans;
    }

    private static EdgeChanges? Slope(int from, int to, int rows)
    {
        var plan = new EdgeChanges();
        var before = from;
        for (var row = 1; row <= rows; row++)
        {
            var here = from + (int)Math.Floor((((long)(to - from) * row * 2) + rows) / (2.0 * rows));
            if (here > 2 * before || 2 * here < before) return null;
            if (here != before) plan.AddEvenly(row, here - before, false);
            before = here;
        }

        return before == to ? plan : null;
    }

    private static EdgeChanges PlanOf(Schedule schedule, Taper taper, Hand[] hands, EdgeWork work)
    {
        var plan = new EdgeChanges();
        foreach (var row in schedule.RowsWithin(taper.Rows))
        {
            foreach (var hand in hands) plan.Add(hand, row, work);
        }

        return plan;
    }

    private Taper?[] TapersOf(int?[] rows, int?[] differences, int edges)
    {
        var first = OptionOf(SolveOption.FirstRowsPlain) ?? Sized.Same<int?>(context.Sizes, 0);
        var last = OptionOf(SolveOption.LastRowsPlain) ?? Sized.Same<int?>(context.Sizes, 0);
        var tapers = new Taper?[context.Sizes];
        for (var i = 0; i < tapers.Length; i++)
        {
            if (rows[i] is not { } there || differences[i] is not { } difference || first[i] is not { } before || last[i] is not { } after) continue;
            tapers[i] = new Taper(
                Math.Abs(difference) / edges, there, before, after, Has(SolveOption.LongerFirst), Has(SolveOption.ByTurns),
                Has(SolveOption.RightSideRows), piece.Builders[i].NextIsRightSide);
        }

        return tapers;
    }

    private bool Has(SolveOption option) => solve.Options.Any(o => o.Option == option);

    private SolveOptionSyntax? Said(SolveOption option) => solve.Options.FirstOrDefault(o => o.Option == option);

    private int?[]? OptionOf(SolveOption option) => Said(option)?.Count is { } count ? context.Evaluate.Counts(count) : null;
}
