namespace Turnrow.Compiler.Tests.Naive;

/// <summary>A piece with its mirrors written out: hands exchanged, and whether its words are met from their end.</summary>
public sealed record ResolvedPiece(Start Start, IReadOnlyList<Statement> Statements, bool IsMirrored);

/// <summary>A mirror exchanges right and left in everything that is said; right-side rows stay right-side.</summary>
public static class Mirror
{
    public static ResolvedPiece Resolve(NaivePattern pattern, NaivePiece piece)
    {
        if (piece.Start is not MirrorOf mirror)
            return new ResolvedPiece(piece.Start, piece.Statements, false);
        var source = Resolve(pattern, pattern.Pieces.First(p => p.Name == mirror.Piece));
        return new ResolvedPiece(
            Swap(pattern, source.Start),
            source.Statements.Select(Swap).Concat(piece.Statements).ToList(),
            !source.IsMirrored);
    }

    private static Start Swap(NaivePattern pattern, Start start) => start switch
    {
        PartOf part => part with { Piece = Counterpart(pattern, part.Piece), Edge = Frame.Opposite(part.Edge) },
        PickedUp up => up with
        {
            Piece = Counterpart(pattern, up.Piece),
            OnSameBase = Counterpart(pattern, up.Piece) == up.Piece,
            Hand = up.Hand is { } hand ? Frame.Opposite(hand) : null,
        },
        PickedUpInside up => up with
        {
            Piece = Counterpart(pattern, up.Piece),
            OnSameBase = Counterpart(pattern, up.Piece) == up.Piece,
            Names = [.. up.Names.Reverse()],
        },
        PickedUpLoops up => up with { Piece = Counterpart(pattern, up.Piece) },
        PickedUpRim up => up with
        {
            Piece = Counterpart(pattern, up.Piece),
            OnSameBase = Counterpart(pattern, up.Piece) == up.Piece,
            Edges = [.. up.Edges.Reverse().Select(TurnedOver)],
            FromOtherEnd = !up.FromOtherEnd,
        },
        AcrossOf across => new AcrossOf([.. across.Pieces.Reverse().Select(piece => Counterpart(pattern, piece))]),
        _ => start,
    };

    public static RimEdge TurnedOver(RimEdge edge) => edge switch
    {
        RimEdge.Right => RimEdge.Left,
        RimEdge.Left => RimEdge.Right,
        _ => edge,
    };

    /// <summary>A mirrored piece stands on the mirror of what its model stands on, or on the same if that has none.</summary>
    private static string Counterpart(NaivePattern pattern, string name)
    {
        // One of several has no mirror image of its own.
        if (pattern.Pieces.FirstOrDefault(p => p.Name == name) is not { } piece)
            return name;
        if (piece.Start is MirrorOf mirror)
            return mirror.Piece;
        return pattern.Pieces.FirstOrDefault(p => p.Start is MirrorOf m && m.Piece == name)?.Name ?? name;
    }

    private static Statement Swap(Statement statement) => statement switch
    {
        LeaveAtEdge leave => leave with { Edge = Swap(leave.Edge) },
        LeaveForLater later => later with { Edge = Swap(later.Edge) },
        AddAtEdge add => add with { Edge = Swap(add.Edge) },
        NameEdge name => name with { Edge = Swap(name.Edge) },
        EdgedIn edged => edged with { Schedules = edged.Schedules.Select(s => s with { Edge = Swap(s.Edge) }).ToList() },
        Shape shape => shape with { Schedules = shape.Schedules.Select(s => s with { Edge = Swap(s.Edge) }).ToList() },
        _ => statement,
    };

    private static EdgeRef Swap(EdgeRef edge) => edge.Hand is { } hand ? EdgeRef.Of(Frame.Opposite(hand)) : edge;
}
