using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Joins;

/// <summary>The four edges of a piece, and those inside a row.</summary>
internal enum EdgeOfPiece
{
    Right,
    Left,
    Foundation,
    LastRow,

    /// <summary>What has a name of its own inside a row: stitches held, the other side of a bridge, a part that was divided off; and the sides of a motif.</summary>
    Named,

    /// <summary>Loops of rows in the middle that the rows above left free.</summary>
    Loops,
}

/// <summary>What was already joined or picked up along; a second use is likely a slip.</summary>
internal sealed class EdgeUses
{
    private readonly Dictionary<(PieceState Piece, EdgeOfPiece Edge, int Size), List<(int First, int Last, TextSpan Span)>> _uses = [];
    private readonly Dictionary<string, int> _names = new(StringComparer.OrdinalIgnoreCase);

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
            if (walk.Sides[i] is not { } side) continue;
            var parts = PartsOf(side).ToList();
            foreach (var part in parts)
            {
                if (FirstUse(UsesOf(walk.Piece, part.Edge, i), part.First, part.Last) is not { } earlier) continue;
                if (twice.Count == 0 || twice[^1] != i) twice.Add(i);
                before ??= earlier;
                edge ??= part.Edge;
            }

            foreach (var part in parts) UsesOf(walk.Piece, part.Edge, i).Add((part.First, part.Last, walk.Span));
        }

        if (before is { } there) context.Findings.Add(EdgeTwice.At(context, walk.Span, [.. twice], there, walk.Piece.Name, edge!.Value));
    }

    /// <summary>Notes the edges along which a mirrored piece is picked up.</summary>
    public void AddMirrored(PickUpStart?[] starts, Func<string, PieceState?> find, TextSpan span, Context context)
    {
        var known = starts.OfType<PickUpStart>().SelectMany(s => s.WholeStretches()).Select(l => (l.Piece.Name, l.Hand, Sort: Sort(l))).Distinct().ToList();
        foreach (var (name, hand, sort) in known)
        {
            if (find(name) is not { } piece) continue;
            var sides = new JoinSide?[starts.Length];
            for (var i = 0; i < sides.Length; i++)
            {
                if (starts[i] is { } start)
                    sides[i] = new JoinSide(piece.Finished[i], hand, [.. start.WholeStretches().Where(l => l.Piece.Name == name && l.Hand == hand && Sort(l) == sort).Select(l => l.Stretch)]);
            }

            Add(new BoundWalk(piece, sides, span), context);
        }
    }

    // Stretches of one sort lie along one edge.
    private static EdgeOfPiece? Sort(PickUpLeg leg) => EdgeOf(new JoinSide(leg.Piece, leg.Hand, [leg.Stretch]));

    /// <summary>Where rows of an edge with a name are used first; null if none of them is.</summary>
    public TextSpan? UseOf(PieceState piece, Hand hand, int size, string name)
    {
        if (!_uses.TryGetValue((piece, hand == Hand.Right ? EdgeOfPiece.Right : EdgeOfPiece.Left, size), out var uses)) return null;
        var stretches = piece.Finished[size].At(hand).Stretches;
        for (var i = 0; i < stretches.Count; i++)
        {
            if (stretches[i].Kind == StretchKind.RowEnds && string.Equals(stretches[i].Name, name, StringComparison.OrdinalIgnoreCase)
                && FirstUse(uses, stretches[i].FirstRow, stretches[i].LastRow) is { } use) return use;
        }

        return null;
    }

    private static EdgeOfPiece? EdgeOf(JoinSide side) => side.Hand switch
    {
        Hand.Right => EdgeOfPiece.Right,
        Hand.Left => EdgeOfPiece.Left,
        _ => side.Stretches.Count == 0 ? null : side.Stretches[0].Kind switch
        {
            StretchKind.Foundation => EdgeOfPiece.Foundation,
            StretchKind.FreeLoops => EdgeOfPiece.Loops,
            StretchKind.HeldStitches or StretchKind.BridgeChain or StretchKind.Side => EdgeOfPiece.Named,
            StretchKind.OpenStitches when side.Stretches[0].Name is not null => EdgeOfPiece.Named,
            _ => EdgeOfPiece.LastRow,
        },
    };

    /// <summary>True if anything is joined to an edge inside a row, or picked up along it.</summary>
    public bool IsUsed(PieceState piece, int size, string name) =>
        _uses.TryGetValue((piece, EdgeOfPiece.Named, size), out var uses) && NumberOf(name) is var number && uses.Exists(u => u.First == number);

    // What goes by its name has no rows that could be told apart.
    private int NumberOf(string name)
    {
        if (!_names.TryGetValue(name, out var number)) _names[name] = number = _names.Count;
        return number;
    }

    private List<(int First, int Last, TextSpan Span)> UsesOf(PieceState piece, EdgeOfPiece edge, int size)
    {
        if (!_uses.TryGetValue((piece, edge, size), out var uses)) _uses[(piece, edge, size)] = uses = [];
        return uses;
    }

    // What it takes of an edge. A part that was divided off has a name, and its stitches are the last row's all the same.
    private IEnumerable<(EdgeOfPiece Edge, int First, int Last)> PartsOf(JoinSide side)
    {
        if (EdgeOf(side) is not { } edge) yield break;
        for (var at = 0; at < side.Stretches.Count; at++)
        {
            if (PartOf(side, at) is { } part) yield return (edge, part.First, part.Last);
            if (side.Stretches[at] is { Kind: StretchKind.OpenStitches, Name: not null, Count: > 0 } divided)
                yield return (EdgeOfPiece.LastRow, divided.FromRight + 1, divided.FromRight + divided.Count);
        }
    }

    private static TextSpan? FirstUse(List<(int First, int Last, TextSpan Span)> uses, int first, int last)
    {
        foreach (var use in uses)
        {
            if (use.First <= last && first <= use.Last) return use.Span;
        }

        return null;
    }

    // The rows of a stretch; null if it has none. Of a foundation no part can be named, so it is used as a whole; a last row is all of its stitches, from
    // 1, and 0 stands for those that no part is of.
    private (int First, int Last)? PartOf(JoinSide side, int at)
    {
        var stretch = side.Stretches[at];
        if (EdgeOf(side) is EdgeOfPiece.Loops) return (stretch.FirstRow, stretch.FirstRow);
        if (EdgeOf(side) is EdgeOfPiece.Named) return stretch.Name is { } name ? (NumberOf(name), NumberOf(name)) : null;
        if (side.Hand is null) return at == 0 && side.Stitches > 0 ? (0, stretch.Kind == StretchKind.LastRow ? stretch.Count : 0) : null;
        return stretch.Kind == StretchKind.RowEnds ? (stretch.FirstRow, stretch.LastRow) : null;
    }
}
