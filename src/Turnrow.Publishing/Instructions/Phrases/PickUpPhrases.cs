using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>What part of a piece stitches are picked up from, and in which direction.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Edge">The edge's name; null if it has none.</param>
/// <param name="Hand">Which edge; null for foundation and last row.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="First">Of row-ends, the row in whose end it begins; else 0.</param>
/// <param name="Last">Of row-ends, the row in whose end it stops; else 0.</param>
/// <param name="PieceRows">Rows of the piece.</param>
/// <param name="Forwards">True from the first row to the last (of a last row or foundation: from the right edge to the left).</param>
/// <param name="Slipped">True of stitches left at a step if slip stitches lie over them: a maker would look in vain for unworked ones.</param>
internal sealed record EdgeStretch(
    string Piece, string? Edge, Hand? Hand, Fabric.Pieces.StretchKind Kind, Sized<int> First, Sized<int> Last, Sized<int> PieceRows, bool Forwards, bool Slipped)
{
    /// <summary>Of a step, the row that it is made at, where the edge has several such; else null.</summary>
    public Sized<int>? AtRow { get; init; }

    /// <summary>Of a part of a last row that has a name, which stitches it is; else null.</summary>
    public LastStitches? Stitches { get; init; }

    /// <summary>True of a beginning edge that is a ring, and of a last row that is a round: there it has no right and left edge.</summary>
    public bool IsRound { get; init; }

    /// <summary>True of free loops that lie on the right side of the fabric.</summary>
    public bool OnRightSide { get; init; }

    /// <summary>True of the rim of motifs that are joined to a blanket.</summary>
    public bool IsRim { get; init; }

    public EdgeStretch? And(EdgeStretch other) =>
        Piece == other.Piece && Edge == other.Edge && Hand == other.Hand && Kind == other.Kind && Forwards == other.Forwards && Slipped == other.Slipped && IsRound == other.IsRound && OnRightSide == other.OnRightSide
        && AtRow is null == other.AtRow is null && Stitches?.IsRound == other.Stitches?.IsRound
            ? this with { First = First.And(other.First), Last = Last.And(other.Last), PieceRows = PieceRows.And(other.PieceRows), Stitches = Stitches?.And(other.Stitches!), AtRow = AtRow?.And(other.AtRow!) }
            : null;

    /// <summary><c>the left edge (neck) of Right front</c>.</summary>
    public string Whole(Wording words) => Kind switch
    {
        Fabric.Pieces.StretchKind.LastRow when IsRim => $"the rim of {Names.Title(Piece)}",
        Fabric.Pieces.StretchKind.LastRow => $"the last {(IsRound ? "round" : "row")} of {Names.Title(Piece)}",
        Fabric.Pieces.StretchKind.OpenStitches when Edge is not null => $"{Stitches!.Numbered} of {Names.Title(Piece)} ({Names.Words(Edge)})",
        Fabric.Pieces.StretchKind.OpenStitches => $"the {words.Sts} left unworked in the last {(IsRound ? "round" : "row")} of {Names.Title(Piece)}",
        Fabric.Pieces.StretchKind.Side => $"the {words.MotifSide(Edge)} of {Names.Title(Piece)}, from corner to corner",
        Fabric.Pieces.StretchKind.Foundation => $"the beginning edge of {Names.Title(Piece)}",
        Fabric.Pieces.StretchKind.LeftStitches when Slipped => $"the slip-stitched {words.Sts}{At("of")} at {Named(words)}",
        Fabric.Pieces.StretchKind.LeftStitches => $"the {words.Sts} left unworked{At("by")} at {Named(words)}",
        Fabric.Pieces.StretchKind.HeldStitches => $"the {words.Sts} of {Names.Title(Piece)} held for {Names.Words(Edge!)}",
        Fabric.Pieces.StretchKind.BridgeChain => $"the other side of the {words.Ch}{(Edge is null ? " over the gap" : $" for {Names.Words(Edge)}")} of {Names.Title(Piece)}",
        Fabric.Pieces.StretchKind.FreeLoops => $"the loops of {Row} {First.Written()} of {Names.Title(Piece)} left free on the {words.Side(OnRightSide)} by {Row} {First.Select(static row => row + 1).Written()}",
        Fabric.Pieces.StretchKind.AddedChain => $"the added {words.Ch}{At("of")} at {Named(words)}",
        _ => Named(words),
    };

    /// <summary>Its first place.</summary>
    public string Start(Wording words)
    {
        var end = Forwards ? Fabric.Rows.Hand.Right : Fabric.Rows.Hand.Left;
        return Kind switch
        {
            Fabric.Pieces.StretchKind.RowEnds => $"the end of {RowIn(First)}",
            Fabric.Pieces.StretchKind.Foundation when IsRound => $"the {words.Ch} where the ring was joined",
            Fabric.Pieces.StretchKind.LastRow when IsRim => "its top left corner",
            Fabric.Pieces.StretchKind.LastRow when IsRound => $"its {(Forwards ? "first" : "last")} {words.St}",
            Fabric.Pieces.StretchKind.OpenStitches or Fabric.Pieces.StretchKind.FreeLoops when IsRound => $"the {(Forwards ? "first" : "last")} of them",
            Fabric.Pieces.StretchKind.LastRow => $"its first {words.St} at the {words.Edge(end)}",
            Fabric.Pieces.StretchKind.Foundation => $"its first {words.Ch} at the {words.Edge(end)}",
            Fabric.Pieces.StretchKind.Side => $"the corner at its {(Forwards ? "beginning" : "end")}",
            Fabric.Pieces.StretchKind.HeldStitches => $"the one at their {Wording.Hand(end)} end",
            Fabric.Pieces.StretchKind.BridgeChain => $"the {words.Ch} at its {Wording.Hand(end)} end",
            Fabric.Pieces.StretchKind.OpenStitches or Fabric.Pieces.StretchKind.FreeLoops => $"the one nearest the {words.Edge(end)}",
            // Up an edge a step inwards is met at its outer end, a step outwards at its inner end; down an edge the other way round.
            Fabric.Pieces.StretchKind.LeftStitches => $"the {(Forwards ? "outermost" : "innermost")} of them",
            _ => $"the {(Forwards ? "innermost" : "outermost")} of them",
        };
    }

    /// <summary><c>from its last row back to Row 34</c>, of one row <c>at Row 34</c>; null where it has no rows.</summary>
    public string? Rows() => Kind != Fabric.Pieces.StretchKind.RowEnds ? null : End() is { } end ? $"from {RowIn(First)} {end}" : $"at {RowIn(First)}";

    /// <summary><c>back to Row 34</c>; null where it has no rows, or one.</summary>
    public string? End() => Kind != Fabric.Pieces.StretchKind.RowEnds || First.Equals(Last)
        ? null
        : $"{(Forwards ? "up" : "back")} to {RowIn(Last)}";

    private string Row => IsRound ? "Round" : "Row";

    // Right or left is always said: both edges may have one name, and a piece's own text need not have shown which has it.
    private string Named(Wording words) => $"the {words.Edge(Hand ?? Fabric.Rows.Hand.Right, Edge)} of {Names.Title(Piece)}";

    private string At(string how) => AtRow is { } row ? $" {how} Row {row.Written()}" : string.Empty;

    private string RowIn(Sized<int> row) => row.Equals(PieceRows) ? "its last row" : $"Row {row.Written()}";
}

/// <summary>Yarn is joined at an edge to pick up along it.</summary>
internal sealed record JoinAtEdge(bool RightSide, EdgeStretch Stretch) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is JoinAtEdge join && join.RightSide == RightSide && Stretch.And(join.Stretch) is { } stretch
            ? this with { Stretch = stretch }
            : null;

    protected override string Text(Wording words)
    {
        var rows = Stretch.End() is { } end ? $"; work along the edge from there {end}" : string.Empty;
        return $"with {words.Side(RightSide)} facing, join yarn with {words.SlipStitch} at {Stretch.Whole(words)}, in {Stretch.Start(words)}{rows}";
    }
}

/// <summary>The yarn that is there goes on along an edge.</summary>
internal sealed record GoOnAlong(bool RightSide, EdgeStretch Stretch) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is GoOnAlong go && go.RightSide == RightSide && Stretch.And(go.Stretch) is { } stretch ? this with { Stretch = stretch } : null;

    protected override string Text(Wording words)
    {
        var rows = Stretch.Rows() is { } along ? $" {along}" : string.Empty;
        return $"{words.LoopOf(Stretch.Piece)}with the same yarn and {words.Side(RightSide)} facing, go on along {Stretch.Whole(words)}{rows}";
    }
}

/// <summary>A pick-up goes on along another edge.</summary>
internal sealed record ThenAlong(EdgeStretch Stretch) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is ThenAlong then && Stretch.And(then.Stretch) is { } stretch ? new ThenAlong(stretch) : null;

    protected override string Text(Wording words)
    {
        var rows = Stretch.Rows() is { } along ? $" {along}" : string.Empty;
        return $"then along {Stretch.Whole(words)}{rows}";
    }
}

/// <summary>The chain that opens a picked-up row stands for its first stitch.</summary>
internal sealed record PickUpChain(Fabric.Stitches.Stitch? Stitch, int Chains, bool Counts) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words)
    {
        var chain = $"{words.Ch} {Numbers.Plain(Chains)}";
        return Counts ? $"{chain} (counts as 1 {words.Stitch(Stitch!)})" : $"{chain} (does not count as a {words.St})";
    }
}
