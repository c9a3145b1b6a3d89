using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Values;
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
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        var stitches = PlainCheck.Stitches(context, piece, statement.Span, "shape");
        var counts = PlainCheck.NothingToGoOnWith(piece, stitches) ? Sized.Same<int?>(context.Sizes, null)
            : statement.Rows is { } rows ? context.Evaluate.Counts(rows)
            : statement.First is null ? Sized.Same<int?>(context.Sizes, null)
            : RowBinding.CountRows(context, piece, statement.First, statement.Last);
        counts = RowWorking.Bounded(context, piece, statement.Span, counts);
        var plans = statement.Solve is { } solve
            ? new SolvedShaping(context, piece, solve).Plans(counts)
            : new GivenShaping(context, piece, statement.Shapings).Plans(counts);
        Work(context, piece, statement, stitches, counts, plans);
        new ClaimBinder(context).CheckRow(piece, claim);
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
            var known = new Dictionary<(EdgeChange, EdgeChange), ShapedPlan>();
            var (stitch, changes) = (stitches[i], plans[i]);
            working.Rows(i, count, ordinal =>
            {
                if (stitch is null || changes is null) return null;
                var (right, left) = changes.Of(ordinal + 1);
                if (!known.TryGetValue((right, left), out var plan)) known[(right, left)] = plan = new ShapedPlan(stitch, right, left);
                return plan;
            });
        }

        working.Finish();
    }
}

/// <summary>What changes at the edges of some rows, by the row's number among them, from 1.</summary>
internal sealed class EdgeChanges
{
    private readonly Dictionary<int, EdgeChange> _right = [];
    private readonly Dictionary<int, EdgeChange> _left = [];

    public (EdgeChange Right, EdgeChange Left) Of(int row) => (_right.GetValueOrDefault(row), _left.GetValueOrDefault(row));

    /// <summary>Adds a change; false if the row already has one at that edge.</summary>
    public bool Add(Hand hand, int row, EdgeChange change) => (hand == Hand.Right ? _right : _left).TryAdd(row, change);
}
