using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Which points of the pieces' edges are one point, in one size: because a part goes on from there, a seam ends there, or stitches were picked
/// up from there. A point is how far it is round its piece, from the foundation's right end up the right edge, along the last row, down the
/// left edge; that is the way in which one picks up with the right side facing.
/// </summary>
internal sealed class MeetingPoints(PieceBook book, int size)
{
    private readonly Dictionary<(PieceState, int), (PieceState, int)> _same = [];
    private int _pieces;
    private int _seams;

    /// <summary>True if the second walk begins where the first ends, or if that is not known. All pieces so far must be complete.</summary>
    public bool Meet(BoundWalk first, BoundWalk second, bool rightSide)
    {
        for (; _pieces < book.All.Count; _pieces++) AddBeginning(book.All[_pieces]);
        for (; _seams < book.Seams.Count; _seams++) AddSeam(book.Seams[_seams].First, book.Seams[_seams].Second);
        if (Ends(first) is not { } a || Ends(second) is not { } b) return true;
        return rightSide
            ? Find((first.Piece, a.To)) == Find((second.Piece, b.From))
            : Find((first.Piece, a.From)) == Find((second.Piece, b.To));
    }

    // Two edges that lie side by side run against each other; where one is put together of several, only its two ends are known to meet.
    private void AddSeam(IReadOnlyList<BoundWalk> first, IReadOnlyList<BoundWalk> second)
    {
        if (Ends(first[0]) is { } a && Ends(second[0]) is { } b) Join((first[0].Piece, a.From), (second[0].Piece, b.To));
        if (Ends(first[^1]) is { } c && Ends(second[^1]) is { } d) Join((first[^1].Piece, c.To), (second[^1].Piece, d.From));
    }

    private void AddBeginning(PieceState piece)
    {
        var made = piece.Finished[size];
        var leftEnd = Length(made.Right) + made.LastStitches + Length(made.Left);
        if (made.Start is PartStart part && book.Find(part.Base.Name) is { } from)
        {
            var right = Length(from.Finished[size].Right) + part.FromRight;
            Join((piece, 0), (from, right));
            Join((piece, leftEnd), (from, right + part.Count));
        }
        else if (made.Start is AcrossStart across)
        {
            AddAcross(piece, leftEnd, across);
        }
        else if (made.Start is PickUpStart { RightSide: true, Walk: { Count: > 0 } walk })
        {
            if (PointOf(walk[0]) is { } begins) Join((piece, 0), begins.From);
            if (PointOf(walk[^1]) is { } ends) Join((piece, leftEnd), ends.To);
        }
    }

    // A row over several pieces meets both ends of what it goes over, and joins each to the next.
    private void AddAcross(PieceState piece, int leftEnd, AcrossStart across)
    {
        (PieceState, int)? before = null;
        foreach (var part in across.Parts)
        {
            if (book.Find(part.Base.Name) is not { } from) return;
            var right = Length(from.Finished[size].Right) + part.FromRight;
            if (before is { } end) Join((from, right), end);
            else Join((piece, 0), (from, right));
            before = (from, right + part.Count);
        }

        if (before is { } last) Join((piece, leftEnd), last);
    }

    // A last row or a foundation begins and ends at the edges, however many legs its corners part it into.
    private ((PieceState, int) From, (PieceState, int) To)? PointOf(PickUpLeg leg)
    {
        if (book.Find(leg.Piece.Name) is not { } piece) return null;
        var made = piece.Finished[size];
        var ends = leg switch
        {
            { Hand: { } hand } => Ends(made, hand, [leg.Stretch]),
            { Stretch.Kind: StretchKind.LastRow or StretchKind.Foundation } when !made.EndsInRounds && made.Top is not null => AlongEnd(made, leg.Stretch.Kind),
            _ => null,
        };
        return ends is { } both ? ((piece, both.From), (piece, both.To)) : null;
    }

    private static (int From, int To) AlongEnd(Piece made, StretchKind kind)
    {
        var (right, top) = (Length(made.Right), made.LastStitches);
        return kind == StretchKind.LastRow ? (right, right + top) : (right + top + Length(made.Left), 0);
    }

    private (int From, int To)? Ends(BoundWalk walk)
    {
        if (walk.Piece.EdgesInDoubt || walk.Sides[size] is not { Stretches: [var stretch, ..] } side) return null;
        var piece = walk.Piece.Finished[size];
        if (piece.Top is null) return null;
        if (side.Hand is { } hand) return Ends(piece, hand, side.Stretches);
        var (right, top) = (Length(piece.Right), piece.LastStitches);
        if (stretch.Kind is StretchKind.HeldStitches or StretchKind.BridgeChain or StretchKind.Side or StretchKind.FreeLoops) return null;
        // A part that was divided off lies where it does in the last row; a round has no edge that it could reach.
        if (stretch is { Kind: StretchKind.OpenStitches, Name: not null }) return piece.EndsInRounds ? null : (right + stretch.FromRight, right + stretch.FromRight + stretch.Count);
        if (stretch.Kind is StretchKind.Foundation or StretchKind.LastRow) return AlongEnd(piece, stretch.Kind);
        var (open, shut) = Open(walk.Piece, top);
        return (right + open, right + shut);
    }

    // Between the parts that go on from a last row, or beside them.
    private (int From, int To) Open(PieceState piece, int top)
    {
        var (from, to) = (0, top);
        if (piece.Taken.Count == 0) return (from, to);
        var taken = piece.Taken.OrderBy(part => part.FromRight[size]).ToList();
        foreach (var (_, right, count) in taken)
        {
            if (right[size] <= from) from = Math.Max(from, right[size] + count[size]);
        }

        foreach (var (_, right, count) in Enumerable.Reverse(taken))
        {
            if (right[size] >= from && right[size] + count[size] >= to) to = Math.Min(to, right[size]);
        }

        return (from, to);
    }

    private static (int From, int To)? Ends(Piece piece, Hand hand, IReadOnlyList<Stretch> stretches)
    {
        if (stretches.Count == 0 || Position(piece.At(hand), stretches[0]) is not { } low || Position(piece.At(hand), stretches[^1]) is not { } last) return null;
        var high = last + stretches[^1].Count;
        if (hand == Hand.Right) return (low, high);
        var leftEnd = Length(piece.Right) + piece.LastStitches + Length(piece.Left);
        return (leftEnd - high, leftEnd - low);
    }

    private static int? Position(EdgeWalk edge, Stretch part)
    {
        var passed = 0;
        for (var i = 0; i < edge.Stretches.Count; i++)
        {
            var stretch = edge.Stretches[i];
            if (stretch.Kind == part.Kind && stretch.Name == part.Name && stretch.FirstRow <= part.FirstRow && part.LastRow <= stretch.LastRow)
                return passed + part.FirstRow - stretch.FirstRow;
            passed += stretch.Count;
        }

        return null;
    }

    private static int Length(EdgeWalk edge)
    {
        var length = 0;
        for (var i = 0; i < edge.Stretches.Count; i++) length += edge.Stretches[i].Count;
        return length;
    }

    private void Join((PieceState, int) one, (PieceState, int) other) => _same[Find(one)] = Find(other);

    private (PieceState, int) Find((PieceState, int) point)
    {
        var found = point;
        while (_same.TryGetValue(found, out var next) && next != found) found = next;
        if (found != point) _same[point] = found;
        return found;
    }
}
