using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Joins;

/// <summary>Which row-ends were already joined or picked up along; a second use is likely a slip.</summary>
internal sealed class EdgeUses
{
    private readonly List<(string Piece, Hand Hand, int Size, int First, int Last, TextSpan Span)> _uses = [];

    /// <summary>Notes the use of an edge; warns if rows of it were used before.</summary>
    public void Add(BoundWalk walk, Context context)
    {
        var twice = new List<int>();
        TextSpan? before = null;
        var added = new List<(string, Hand, int, int, int, TextSpan)>();
        for (var i = 0; i < walk.Sides.Length; i++)
        {
            if (walk.Sides[i] is not { Hand: { } hand } side) continue;
            foreach (var stretch in RowEnds(side))
            {
                var use = _uses.FindIndex(u => u.Piece == walk.Piece.Name && u.Hand == hand && u.Size == i && u.First <= stretch.LastRow && stretch.FirstRow <= u.Last);
                if (use >= 0 && !twice.Contains(i)) twice.Add(i);
                if (use >= 0) before ??= _uses[use].Span;
                added.Add((walk.Piece.Name, hand, i, stretch.FirstRow, stretch.LastRow, walk.Span));
            }
        }

        _uses.AddRange(added);
        if (before is { } first) context.Findings.Add(EdgeTwice.At(context, walk.Span, [.. twice], first));
    }

    private static IEnumerable<Stretch> RowEnds(JoinSide side) => side.Stretches.Where(s => s.Kind == StretchKind.RowEnds);
}
