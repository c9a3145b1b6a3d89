using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Rows from one to another, a size.</summary>
internal sealed record RowSpan(Sized<int> First, Sized<int> Last)
{
    public RowSpan And(RowSpan other) => new(First.And(other.First), Last.And(other.Last));

    /// <summary>True if it is a single row in every size.</summary>
    public bool IsOne => First.Equals(Last);

    /// <summary><c>Row 1</c>, <c>each row from Row 1 to Row 4</c>.</summary>
    public string Each() => IsOne ? ToString() : $"each row from Row {First.Written()} to Row {Last.Written()}";

    public override string ToString() =>
        IsOne ? $"Row {First.Written()}" : $"Rows {First.WrittenTo(Last)}";
}

/// <summary>One edge of a seam.</summary>
internal sealed record SeamSide(string Piece, string? Edge, Hand? Hand, StretchKind Kind, RowSpan? Rows, RowSpan? OpenBefore, RowSpan? OpenBehind, bool HasSteps)
{
    /// <summary>True if short rows among its rows do not reach the edge.</summary>
    public bool HasTurns { get; init; }

    /// <summary>True if there are rounds among its rows: they have no ends.</summary>
    public bool HasRounds { get; init; }

    /// <summary>True if the last row is a round.</summary>
    public bool IsRound { get; init; }

    /// <summary>Of a part of the last row that has a name, which stitches it is; else null.</summary>
    public LastStitches? Stitches { get; init; }

    /// <summary>Of free loops the row that they are of; else null.</summary>
    public Sized<int>? LoopsOf { get; init; }

    /// <summary>Of pieces that are made several times, their common name where each of them is meant; else null.</summary>
    public string? OfEach { get; init; }

    public string PieceName => OfEach is null ? Names.Title(Piece) : $"each {Names.Title(OfEach)}";

    public string EdgeTitle(Wording words) => Hand is { } hand ? words.Edge(hand, Edge) : Kind switch
    {
        StretchKind.Foundation => "beginning edge",
        StretchKind.BridgeChain => $"other side of the chain for {Names.Words(Edge!)}",
        StretchKind.HeldStitches => $"stitches held for {Names.Words(Edge!)}",
        StretchKind.Side => words.MotifSide(Edge),
        StretchKind.OpenStitches when Stitches is { } part => $"{part.Numbered} ({Names.Words(Edge!)})",
        StretchKind.FreeLoops => $"free loops of {(IsRound ? "Round" : "Row")} {LoopsOf!.Written()}",
        _ => IsRound ? "last round" : "last row",
    };

    /// <summary>True if both are stretches of rows of the same edge.</summary>
    public bool IsOfEdgeOf(SeamSide other) => Piece == other.Piece && Hand == other.Hand && Rows is not null && other.Rows is not null;

    public static SeamSide Of(JoinSide side)
    {
        var ends = side.Stretches.Where(static s => s.Kind == StretchKind.RowEnds).ToList();
        var name = side.Stretches.Select(static s => s.Name).FirstOrDefault(static n => n is not null);
        var kind = side.Stretches.Count > 0 ? side.Stretches[0].Kind : StretchKind.RowEnds;
        if (side.Hand is not { } hand || ends.Count == 0)
        {
            return new SeamSide(side.Piece.Name, name, side.Hand, kind, null, null, null, false)
            {
                IsRound = kind is StretchKind.LastRow or StretchKind.OpenStitches && side.Piece.EndsInRounds || kind is StretchKind.FreeLoops && side.Piece.Rows[side.Stretches[0].FirstRow - 1].IsRound,
                LoopsOf = kind == StretchKind.FreeLoops ? Sized.Of(side.Stretches[0].FirstRow) : null,
                OfEach = side.OfEach,
                Stitches = name is null || kind == StretchKind.Side ? null : LastStitches.OfStretch(side.Piece, side.Stretches[0]),
            };
        }

        var rows = Span(ends[0].FirstRow, ends[^1].LastRow);
        // Rows of the same name that are not in the seam stay open.
        var named = side.Piece.At(hand).Stretches.Where(s => s.Kind == StretchKind.RowEnds && s.Name == name).ToList();
        var before = named.Count > 0 && named[0].FirstRow < ends[0].FirstRow ? Span(named[0].FirstRow, named.Max(s => Math.Min(s.LastRow, ends[0].FirstRow - 1))) : null;
        var behind = named.Count > 0 && named[^1].LastRow > ends[^1].LastRow ? Span(named.Where(s => s.LastRow > ends[^1].LastRow).Min(s => Math.Max(s.FirstRow, ends[^1].LastRow + 1)), named[^1].LastRow) : null;
        return new SeamSide(side.Piece.Name, name, hand, StretchKind.RowEnds, rows, before, behind, ends.Count < side.Stretches.Count)
        {
            OfEach = side.OfEach,
            HasTurns = Among(side.Piece, [.. named, .. ends]).Any(row => !row.IsRound && !row.Reaches(hand)),
            HasRounds = Among(side.Piece, [.. named, .. ends]).Any(static row => row.IsRound),
        };
    }

    // The rows from the first to the last that end at an edge.
    private static IEnumerable<Row> Among(Piece piece, IReadOnlyList<Stretch> ends) =>
        piece.Rows.Where(row => row.Number >= ends.Min(static s => s.FirstRow) && row.Number <= ends.Max(static s => s.LastRow));

    public SeamSide? And(SeamSide other)
    {
        var alike = Piece == other.Piece && Edge == other.Edge && Hand == other.Hand && Kind == other.Kind && IsRound == other.IsRound
            && Stitches?.IsRound == other.Stitches?.IsRound && HasSteps == other.HasSteps && HasTurns == other.HasTurns && HasRounds == other.HasRounds && Rows is null == other.Rows is null && OpenBefore is null == other.OpenBefore is null
            && OpenBehind is null == other.OpenBehind is null;
        return alike
            ? this with
            {
                Stitches = Stitches?.And(other.Stitches!),
                LoopsOf = LoopsOf?.And(other.LoopsOf!),
                Rows = Rows?.And(other.Rows!),
                OpenBefore = OpenBefore?.And(other.OpenBefore!),
                OpenBehind = OpenBehind?.And(other.OpenBehind!),
            }
            : null;
    }

    /// <summary>The same, where another part of the same edge begins behind it: open is what lies between.</summary>
    public SeamSide UpTo(SeamSide next)
    {
        var (from, to) = (Rows!.Last.First + 1, next.Rows!.First.First - 1);
        return this with { OpenBehind = from <= to ? Span(from, to) : null };
    }

    public string? Open() => Open([OpenBefore, OpenBehind], PieceName);

    /// <summary>Rows of a piece that stay open, in words; null for none.</summary>
    public static string? Open(IEnumerable<RowSpan?> spans, string pieceName)
    {
        var open = spans.OfType<RowSpan>().Select(static r => r.ToString()).ToList();
        return open.Count == 0 ? null : $"{Wording.List(open)} of {pieceName}";
    }

    private static RowSpan Span(int first, int last) => new(Sized.Of(first), Sized.Of(last));
}
