using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Joins;

/// <summary>Which row-ends were already joined or picked up along; a second use is likely a slip.</summary>
internal sealed class EdgeUses
{
    private readonly Dictionary<(PieceState Piece, Hand Hand, int Size), List<(int First, int Last, TextSpan Span)>> _uses = [];

    /// <summary>Notes the use of an edge; warns if rows of it were used before.</summary>
    public void Add(BoundWalk walk, Context context)
    {
        if (walk.Piece.EdgesInDoubt) return;
        var twice = new List<int>();
        TextSpan? before = null;
        for (var i = 0; i < walk.Sides.Length; i++)
        {
            if (walk.Sides[i] is not { Hand: { } hand } side) continue;
            if (!_uses.TryGetValue((walk.Piece, hand, i), out var uses)) _uses[(walk.Piece, hand, i)] = uses = [];
            if (FirstUse(uses, side) is { } earlier)
            {
                twice.Add(i);
                before ??= earlier;
            }

            foreach (var stretch in RowEnds(side)) uses.Add((stretch.FirstRow, stretch.LastRow, walk.Span));
        }

        if (before is { } first) context.Findings.Add(EdgeTwice.At(context, walk.Span, [.. twice], first));
    }

    private static TextSpan? FirstUse(List<(int First, int Last, TextSpan Span)> uses, JoinSide side)
    {
        foreach (var stretch in RowEnds(side))
        {
            foreach (var use in uses)
            {
                if (use.First <= stretch.LastRow && stretch.FirstRow <= use.Last) return use.Span;
            }
        }

        return null;
    }

    private static IEnumerable<Stretch> RowEnds(JoinSide side) => side.Stretches.Where(s => s.Kind == StretchKind.RowEnds);
}
