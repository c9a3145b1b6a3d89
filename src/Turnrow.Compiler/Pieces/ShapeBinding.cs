using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>shape 30 rows: dec 1 at both edges every 4 rows</c>, given or solved.</summary>
internal static class ShapeBinding
{
    public static void Bind(Context context, PieceState piece, ShapeStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        if (EdgedBinding.IsFor(piece, statement.Rows?.Pattern, statement.Rows?.EdgeStitch))
        {
            Edged(context, piece, statement);
            return;
        }

        RowsOrRounds.Check(context, piece, statement.RowsWord);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var onward = Onwards.Of(context, piece, statement.Span, "shape", statement.Rows?.Pattern, statement.RowsWord);
        if (Array.Find(onward, static o => o.Pattern is not null)?.Pattern is { } pattern) context.Findings.Add(PatternShape.NoRule(statement.Span, pattern));
        var stitches = onward.Select(static o => o.Plain);
        var counts = PlainCheck.NothingToGoOnWith(piece, onward) ? Sized.Same<int?>(context.Sizes, null)
            : statement.Rows is { } rows ? new RowsWanted(context, piece, rows).Count(onward)
            : statement.First is null ? Sized.Same<int?>(context.Sizes, null)
            : RowBinding.CountRows(context, piece, statement.First, statement.Last);
        counts = RowWorking.Bounded(context, piece, statement.Span, counts);
        var plans = statement.Solve is { } solve
            ? new SolvedShaping(context, piece, solve).Plans(counts)
            : new GivenShaping(context, piece, statement.Shapings).Plans(counts);
        Work(context, piece, statement, stitches, counts, plans);
        DoubtTurns(context, piece, statement, plans);
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    private static void Edged(Context context, PieceState piece, ShapeStatement statement)
    {
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var edged = new EdgedBinding(context, piece, statement, statement.Rows?.Pattern, statement.Rows?.EdgeStitch);
        var onward = edged.Find();
        RowsOrRounds.Check(context, piece, statement.RowsWord);
        var counts = statement.Rows is { } rows ? new RowsWanted(context, piece, rows).Count(onward)
            : statement.First is null ? Sized.Same<int?>(context.Sizes, null)
            : RowBinding.CountRows(context, piece, statement.First, statement.Last);
        counts = RowWorking.Bounded(context, piece, statement.Span, counts);
        var changes = statement.Solve is { } solve
            ? new SolvedShaping(context, piece, solve).Plans(counts)
            : new GivenShaping(context, piece, statement.Shapings).Plans(counts);
        EdgedWorking.Work(context, piece, statement, edged, counts, i => changes[i]);
        new ClaimBinder(context).CheckRow(piece, claim);
    }

    // Which rows turned is not known where the schedule is not; the next two rows work over all.
    private static void DoubtTurns(Context context, PieceState piece, ShapeStatement statement, EdgeChanges?[] plans)
    {
        if (!statement.Shapings.Any(static shaping => shaping.Stages.Any(static stage => stage.Kind == StageKind.LeaveForLater))) return;
        for (var i = 0; i < plans.Length; i++)
        {
            if (plans[i] is null && context.Here.Has(i)) piece.Builders[i].DoubtTurns(2);
        }
    }

    private static void Work(
        Context context, PieceState piece, ShapeStatement statement, Stitch?[] stitches, int?[] counts, EdgeChanges?[] plans)
    {
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (counts[i] is not { } count)
            {
                piece.Builders[i].Doubt(true);
                continue;
            }

            // One plan object for all rows that are shaped alike, so that each is worked once.
            var known = new Dictionary<(EdgeChange, EdgeChange, SpreadChange), ShapedPlan>();
            var (stitch, changes) = (stitches[i], plans[i]);
            var plain = stitch is null ? null : ShapedPlan.Plain(stitch);
            for (var ordinal = 0; ordinal < count && context.Here.Has(i); ordinal++)
            {
                if (stitch is null || changes is null)
                {
                    working.One(i, null, ordinal);
                    continue;
                }

                // Most rows of a slope are plain.
                if (!changes.Any(ordinal + 1))
                {
                    working.One(i, plain, ordinal);
                    continue;
                }

                var (right, left) = changes.Of(ordinal + 1);
                Step(context, piece, statement, i, Hand.Right, right.Step);
                Step(context, piece, statement, i, Hand.Left, left.Step);
                var key = (right.Change, left.Change, changes.EvenlyOf(ordinal + 1));
                if (!known.TryGetValue(key, out var plan))
                    known[key] = plan = new ShapedPlan(stitch, right.Change, left.Change) { Evenly = changes.EvenlyOf(ordinal + 1) };
                working.One(i, plan, ordinal);
            }
        }

        working.Finish();
    }

    private static void Step(Context context, PieceState piece, ShapeStatement statement, int size, Hand hand, EdgeStep? said)
    {
        if (said is not { } step) return;
        var builder = piece.Builders[size];
        if (step.ForLater)
        {
            builder.LeaveForLater(hand, step.Count, new Origin(statement));
            return;
        }

        if (builder.PendingStep(hand) is { } pending && pending.Adds != step.Adds)
        {
            context.Findings.Add(StepsMeet.At(context, statement.Span, [size], step.Adds));
            builder.Doubt(false);
        }
        else
        {
            builder.AddStep(hand, step.Adds, step.Count, new Origin(statement));
        }
    }
}

/// <summary>What is done at the edges of some rows, by the row's number among them, from 1.</summary>
internal sealed class EdgeChanges
{
    private readonly Dictionary<int, EdgeWork> _right = [];
    private readonly Dictionary<int, EdgeWork> _left = [];
    private readonly SortedDictionary<int, SpreadChange> _evenly = [];

    /// <summary>True if anything is done in a row.</summary>
    public bool Any(int row) => _right.ContainsKey(row) || _left.ContainsKey(row) || _evenly.ContainsKey(row);

    /// <summary>True if anything is spread over rows.</summary>
    public bool IsSpread => _evenly.Count > 0;

    /// <summary>What is spread over a row.</summary>
    public SpreadChange EvenlyOf(int row) => _evenly.GetValueOrDefault(row);

    /// <summary>Adds what is spread over a row, the rows in order; false if something is already.</summary>
    /// <param name="row">The row.</param>
    /// <param name="change">Increases (above 0) or decreases.</param>
    /// <param name="staggered">True if every second one lies half a gap further on than the one before it.</param>
    public bool AddEvenly(int row, int change, bool staggered) =>
        _evenly.TryAdd(row, new SpreadChange(change, staggered && _evenly.Count % 2 != 0));

    public (EdgeWork Right, EdgeWork Left) Of(int row) => (_right.GetValueOrDefault(row), _left.GetValueOrDefault(row));

    /// <summary>The same with right and left exchanged, of rows over which nothing is spread.</summary>
    public EdgeChanges Mirrored()
    {
        var mirrored = new EdgeChanges();
        foreach (var (row, work) in _right) mirrored._left.Add(row, work);
        foreach (var (row, work) in _left) mirrored._right.Add(row, work);
        return mirrored;
    }

    /// <summary>True if stitches are left or chains added in any of so many rows.</summary>
    public bool HasSteps(int rows)
    {
        for (var row = 1; row <= rows; row++)
        {
            if (_right.GetValueOrDefault(row).Step is not null || _left.GetValueOrDefault(row).Step is not null) return true;
        }

        return false;
    }

    /// <summary>Adds what is done; false if the row already has something at that edge.</summary>
    public bool Add(Hand hand, int row, EdgeWork work) => (hand == Hand.Right ? _right : _left).TryAdd(row, work);
}
