using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Joins;

/// <summary>The four edges of a piece.</summary>
internal enum EdgeOfPiece
{
    Right,
    Left,
    Foundation,
    LastRow,
}

/// <summary>What was already joined or picked up along; a second use is likely a slip.</summary>
internal sealed class EdgeUses
{
    private readonly Dictionary<(PieceState Piece, EdgeOfPiece Edge, int Size), List<(int First, int Last, TextSpan Span)>> _uses = [];

    /// <summary>Notes the use of an edge; warns if rows or stitches of it were used before.</summary>
    public void Add(BoundWalk walk, Context context)
    {
        foreach (var copy in walk.Piece.Copies) Add(walk with { Piece = copy }, context);
        if (walk.Piece.EdgesInDoubt || walk.Piece.Copies.Count > 0) return;
        var twice = new List<int>();
        TextSpan? before = null;
        EdgeOfPiece? edge = null;
        for (var i = 0; i < walk.Sides.Length; i++)
        {
            if (walk.Sides[i] is not { } side || EdgeOf(side) is not { } used) continue;
            if (!_uses.TryGetValue((walk.Piece, used, i), out var uses)) _uses[(walk.Piece, used, i)] = uses = [];
            if (FirstUse(uses, side) is { } earlier)
            {
                twice.Add(i);
                before ??= earlier;
                edge = used;
            }

            foreach (var (first, last) in Parts(side)) uses.Add((first, last, walk.Span));
        }

        if (before is { } there) context.Findings.Add(EdgeTwice.At(context, walk.Span, [.. twice], there, walk.Piece.Name, edge!.Value));
    }

    /// <summary>Notes the edges along which a mirrored piece is picked up.</summary>
    public void AddMirrored(PickUpStart?[] starts, Func<string, PieceState?> find, TextSpan span, Context context)
    {
        var known = starts.OfType<PickUpStart>().SelectMany(s => s.WholeStretches()).Select(l => (l.Piece.Name, l.Hand, Foundation: l.Stretch.Kind == StretchKind.Foundation)).Distinct().ToList();
        foreach (var (name, hand, foundation) in known)
        {
            if (find(name) is not { } piece) continue;
            var sides = starts.Select(s => s is null ? null : new JoinSide(piece.Finished[0], hand,
                [.. s.WholeStretches().Where(l => l.Piece.Name == name && l.Hand == hand && l.Stretch.Kind == StretchKind.Foundation == foundation).Select(l => l.Stretch)]));
            Add(new BoundWalk(piece, sides, span), context);
        }
    }

    /// <summary>Where rows of an edge with a name are used first; null if none of them is.</summary>
    public TextSpan? UseOf(PieceState piece, Hand hand, int size, string name) =>
        _uses.TryGetValue((piece, hand == Hand.Right ? EdgeOfPiece.Right : EdgeOfPiece.Left, size), out var uses)
            ? FirstUse(uses, EdgeSelection.ByName(piece.Finished[size], hand, name))
            : null;

    private static EdgeOfPiece? EdgeOf(JoinSide side) => side.Hand switch
    {
        Hand.Right => EdgeOfPiece.Right,
        Hand.Left => EdgeOfPiece.Left,
        _ => side.Stretches.Count == 0 ? null : side.Stretches[0].Kind == StretchKind.Foundation ? EdgeOfPiece.Foundation : EdgeOfPiece.LastRow,
    };

    private static TextSpan? FirstUse(List<(int First, int Last, TextSpan Span)> uses, JoinSide side)
    {
        foreach (var (first, last) in Parts(side))
        {
            foreach (var use in uses)
            {
                if (use.First <= last && first <= use.Last) return use.Span;
            }
        }

        return null;
    }

    // Of a foundation or a last row no part can be named, so it is used as a whole.
    private static IEnumerable<(int First, int Last)> Parts(JoinSide side) => side.Hand is null
        ? side.Stitches > 0 ? [(0, 0)] : []
        : side.Stretches.Where(s => s.Kind == StretchKind.RowEnds).Select(s => (s.FirstRow, s.LastRow));
}
