using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Finds the edges that a row is joined to while it is worked, and looks at the end whether all of each was.</summary>
internal sealed class JoinBinder(Context context, PieceBook book)
{
    /// <summary>The edge, a size; null, and reported, if there is none that can be joined to.</summary>
    public JoinedEdge?[]? Bind(PieceState piece, JoinItem item)
    {
        var words = string.Join(' ', item.Walk.Words.Select(static w => w.Text)).ToUpperInvariant();
        if (piece.JoinedTo.TryGetValue(words, out var known)) return known;
        var edges = Find(piece, item);
        if (edges is null) book.JoinsInDoubt = true;
        piece.JoinedTo[words] = edges;
        return edges;
    }

    /// <summary>Tells of places that are left along edges which a finished piece is joined to.</summary>
    public static void CheckRest(Context context, PieceState piece)
    {
        if (piece.MirrorOf is not null || piece.EdgesInDoubt) return;
        foreach (var edge in piece.Finished.SelectMany(static p => p.JoinedTo).Select(EdgeOf).Distinct().ToList())
        {
            var along = piece.Finished.Select(p => p.JoinedTo.FirstOrDefault(j => EdgeOf(j) == edge));
            var left = Sized.Where(context.Sizes, i => along[i] is { Rest.Count: > 0 });
            if (left.Length > 0) context.Findings.Add(JoinRest.At(context, piece, left, i => along[i]!));
        }
    }

    // An edge may be of nothing: it is told elsewhere that it is.
    private static string EdgeOf(JoinedAlong join) => $"{join.Edge.Side.Piece.Name} {(join.Edge.Side.Stretches is [var first, ..] ? first : null)}";

    private JoinedEdge?[]? Find(PieceState piece, JoinItem item)
    {
        if (piece.Copies.Count > 0)
        {
            context.Findings.Add(MadeSeveral.Joins(item.Span, piece.Name));
            return null;
        }

        if (new WalkBinder(context, book).Bind(item.Walk) is not { } walk) return null;
        if (walk.Piece == piece)
        {
            context.Findings.Add(JoinHere.Itself(item.Walk.Span, piece.Name));
            return null;
        }

        if (walk.Piece.Copies.Count > 0)
        {
            context.Findings.Add(MadeSeveral.Which(walk.Span, walk.Piece.Name, walk.Piece.Copies.Count));
            return null;
        }

        if (Array.Exists(walk.Sides, static s => s is not null && !JoinedEdge.IsPossible(s)))
        {
            context.Findings.Add(JoinHere.Edge(item.Walk.Span));
            return null;
        }

        walk.Piece.Joined = piece.Joined = true;
        book.Uses.Add(walk, context);
        book.JoinedAsTheyGo.Add((piece, walk.Piece));
        var counted = !walk.Piece.EdgesInDoubt;
        return Sized.Each(context.Sizes, i => counted && walk.Sides[i] is { } side ? new JoinedEdge(side) : null);
    }
}
