using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells one row of one size: what is done before it, what is worked, and what is left.</summary>
internal static class RowTeller
{
    /// <summary>The description of a row.</summary>
    /// <param name="piece">The piece in one size.</param>
    /// <param name="index">The row's place in it, from 0.</param>
    public static RowDescription Tell(Piece piece, int index)
    {
        var row = piece.Rows[index];
        if (row.Work is not { } work) return RowDescription.Unknown;
        if (index == 0 && piece.Start is PickUpStart pickUp) return PickUpTeller.Tell(pickUp, row, work, Joins.IsLeftOpen(piece, 0));
        var place = new RowContext(piece, index, row, BegunSpecials.WrittenOut(work));
        var words = new WordTeller(place);
        var before = new List<Phrase>();
        if (index == 0) AddStart(before, place);
        AddChains(before, place);
        OpeningTeller.Tell(place, words);
        if (place.OnNewChains is { } chained && !words.Phrases.Any(static p => p is GoOver)) before.Add(new OverPart(PartTeller.First(place, chained)));
        AddRest(words, place);
        if (row.IsRound) WordTeller.JoinLastTime(words.Phrases);
        var remarks = RemarksOf(place, words.Phrases);
        if (row.IsRound && row.Way != RoundWay.Spiral && !Joins.IsOpen(place)) words.Phrases.Add(Joins.OfRound(work));
        return new RowDescription(new(before), new([.. words.Phrases]), new(remarks));
    }

    private static void AddStart(List<Phrase> before, RowContext place)
    {
        if (place.Piece.Start is RingStart ring) before.Add(ring.Chains == 0 ? new MakeAdjustableRing() : new MakeChainRing(Sized.Of(ring.Chains)));
        else if (place.Row.Begins == RowBegins.Ring) before.Add(new MakeRing(Sized.Of(place.Work.Below.Count)));
        if (place.Piece.Start is AcrossStart across) AddAcross(before, place, across);
        if (place.Row.Begins is RowBegins.Foundation or RowBegins.BothSides or RowBegins.FoundationStitches) before.Add(new MakeChain(Sized.Of(place.Work.Opening.Chains)));
        if (place.Piece.Start is PartStart part) PartTeller.Begin(before, place, part, part, part.Joined);
    }

    private static void AddAcross(List<Phrase> before, RowContext place, AcrossStart across)
    {
        var rightSide = place.Row.RightSide;
        var parts = rightSide ? across.Parts : [.. across.Parts.Reverse()];
        before.Add(new OverPieces(rightSide, [.. parts.Select(p => (p.Base.Name, LastStitches.OfPart(p, rightSide)))]));
        PartTeller.Begin(before, place, parts[0], parts[^1], across.Joined);
    }

    private static void AddChains(List<Phrase> before, RowContext place)
    {
        var row = place.Row;
        if (row.IsRound && row.Begins == RowBegins.Round && place.Below is { IsRound: false }) before.Add(JoinToRound.After(place.Below));
        if (place.Above is { Way: RoundWay.Spiral } && row.Begins is RowBegins.Round or RowBegins.RoundTurned or RowBegins.RoundBack) before.Add(new SpiralEnds());
        if (row.Start is { Adds: true } start && row.Begins is RowBegins.Turned or RowBegins.Back)
            before.Add(new ChainOn(Sized.Of(place.Work.Opening.Chains), start.Edge, row.StartsAt));
        if (row.End is not { Adds: true } end || place.IsOnLastRow) return;
        before.Add(new SeparateChain(Sized.Of(end.Count), end.Edge, place.EdgeName(row.StartsAt), row.EndsAt, OutermostAtEnd(place, end)));
    }

    // The stitch at the edge where the row ends: the first that the row made which last began there.
    private static Where OutermostAtEnd(RowContext place, Step end)
    {
        var last = place.Work.Below.Count - end.Count - 1;
        if (last >= 0 && place.Places.TopAt(last) is { } top) return top;
        if (place.Above is not { } above) return new LastPlaces(Sized.Of(1), PlaceName.AnyStitch);
        // What short rows left at the edge was made by the row before the first of them.
        var number = place.Row.Short.Over is [.., { LeftBy: > 1 and var by }] ? by - 1 : above.Number;
        return new FirstOfRow(Sized.Of(number), place.Piece.Rows[number - 1].IsRound);
    }

    private static void AddRest(WordTeller words, RowContext place)
    {
        if (place.Row.End is { Adds: false } left)
        {
            var named = words.Phrases.Count > 0
                && words.Phrases[^1] is StitchesIn { Where: EachToLast { Last: var last } } && last.First == left.Count;
            words.Phrases.Add(new LeaveLast(Sized.Of(left.Count), named));
        }

        if (ShortRowTeller.Left(place, words.Phrases) is { } now) words.Phrases.Add(now);
        if (place.Index > 0 || place.Piece.Start is not PartStart part) return;
        var others = place.Row.StartsAt == Hand.Right ? part.FromLeft : part.FromRight;
        if (others > 0) words.Phrases.Add(new LeaveOthers(Sized.Of(others)));
    }

    private static List<Phrase> RemarksOf(RowContext place, IReadOnlyList<Phrase> told)
    {
        var remarks = new List<Phrase>();
        if (place.Piece.Start is RingStart { Chains: 0 } && place.Index == 0) remarks.Add(new CloseRing());
        // A part of a row lies open until the next stitch joins its end to its beginning.
        if (place.Row is { IsRound: true, Way: RoundWay.Spiral } && place.Index == 0 && place.Piece.Start is PartStart cut && cut.Count < cut.Base.LastStitches) remarks.Add(new CloseToRing());
        if (place.Row is { IsRound: true, Way: RoundWay.Spiral, Begins: not RowBegins.Spiral }) remarks.Add(new SpiralBegins());
        else if (place.Row is { IsRound: true, Way: not RoundWay.Spiral } && Joins.IsOpen(place)) remarks.Add(new DoNotJoin());
        if (place.Row.Unworked is not null) remarks.Add(new RoundEndsHere());
        if (ShortRowTeller.Remark(place, told) is { } over) remarks.Add(over);
        if (EndsAtSlipStitches(place)) remarks.Add(new LeaveSlipStitches());
        if (place.Work.Below.HasCorners && place.Work.Words.Any(static w => w is RemoveCorners)) remarks.Add(new TakeMarkersOut(false) { IsOne = place.Work.Below.CountWhere(static p => p.IsCorner) == 1 });
        else if (place.Index == 0 && place.Piece.Start is PartStart part && IsCutAtCorner(part)) remarks.Add(new TakeMarkersOut(true));
        return remarks;
    }

    private static bool IsCutAtCorner(PartStart part) =>
        part.Base.TopFromRight is { HasCorners: true } top
        && ((part.FromRight > 0 && top.Slice(part.FromRight, 1).First.IsCorner)
            || (part.FromLeft > 0 && top.Slice(part.FromRight + part.Count - 1, 1).First.IsCorner));

    // The row below began with slip stitches, and this one comes back to them. A round that goes on does not: the row was joined beside them.
    private static bool EndsAtSlipStitches(RowContext place)
    {
        // A round that goes on ends beside the last stitch of the row below: its slip stitches lie outside.
        if (place.GoesOn || (!place.Row.Short.IsNone && !place.Row.Reaches(place.Row.EndsAt))) return false;
        if (place.Index > 0) return place.Above is { Start.Adds: false, Begins: RowBegins.Turned or RowBegins.Back };
        if (place.Piece.Start is not PartStart { Base.Rows: { Count: > 0 } rows } part) return false;
        var reached = place.Row.EndsAt == Hand.Left ? part.FromLeft == 0 : part.FromRight == 0;
        return reached && rows[^1] is { Start.Adds: false, Begins: RowBegins.Turned } below && below.StartsAt == place.Row.EndsAt;
    }
}

/// <summary>A row and what has to be known to tell it.</summary>
internal sealed class RowContext(Piece piece, int index, Row row, RowWork work)
{
    public Piece Piece { get; } = piece;

    public int Index { get; } = index;

    public Row Row { get; } = row;

    public RowWork Work { get; } = work;

    /// <summary>The row worked before this one in the piece; null for its first.</summary>
    public Row? Above { get; } = index > 0 ? piece.Rows[index - 1] : null;

    /// <summary>The row worked after it in the piece; null for its last.</summary>
    public Row? Next { get; } = index + 1 < piece.Rows.Count ? piece.Rows[index + 1] : null;

    /// <summary>The row that this one is worked over, be it another piece's; null if there is none.</summary>
    public Row? Below { get; } = index > 0 ? piece.Rows[index - 1] : piece.Start is PartStart { Base.Rows: [.., var last] } ? last : null;

    /// <summary>True if the row goes on from where the end of the one before was joined to its beginning, or where a ring was.</summary>
    public bool GoesOn => Row.Begins is RowBegins.Round or RowBegins.RoundTurned or RowBegins.RoundBack or RowBegins.Spiral or RowBegins.Ring;

    /// <summary>True if the row has yet to come to the opposite side of the foundation chain.</summary>
    public bool IsBeforeOppositeSide => Row.Begins == RowBegins.BothSides && Places.Passed < Work.Below.Count / 2 + 1;

    /// <summary>True of a round that passes places over before its first stitch: the maker slips over them, and then they lie behind all others.</summary>
    public bool BeginsFurtherOn { get; } = row.IsRound && Beginning.Of(work.Words) is ({ Skipped: > 0 } or { First: Work { Passed: > 0 } or Group { Passed: > 0 } });

    /// <summary>True if it is worked with several yarns.</summary>
    public bool ChangesYarn { get; } = YarnsWorked.In(row).Count > 1;

    /// <summary>Where the hook is.</summary>
    public RowPlaces Places { get; } = new(index == 0 && piece.Start is AcrossStart across ? AcrossPlaces.Of(across, row, work.Below) : work.Below, RowBelow(piece, index)?.Opening, BeginsWithDecrease(RowBelow(piece, index)), row.Short.Taken)
    {
        RowOfWaited = place => ShortRowTeller.RowBelow(piece, row, place),
        IsOverRound = IsOverRound(piece, index),
    };

    /// <summary>True if the row is the first one over a part of an earlier row: then it gives numbers, as more lies beside it.</summary>
    public bool IsFirstOfPart => Index == 0 && Piece.Start is PartStart;

    /// <summary>True if the row is the first one over the last rows of earlier pieces.</summary>
    public bool IsOnLastRow => Index == 0 && Piece.Start is PartStart or AcrossStart;

    /// <summary>How many chains come before the first stitch of those, where the row is begun on chains; 0 if it is not.</summary>
    public int ChainsBefore => IsOnLastRow && Row.Start is { Adds: true } start ? start.Count : 0;

    /// <summary>The part that the row goes over to from chains made with new yarn; null where it does no such thing.</summary>
    public PartStart? OnNewChains => ChainsBefore == 0 ? null : Piece.Start switch
    {
        PartStart { Joined: true } part => part,
        AcrossStart { Joined: true } across => across.First(Row.StartsAt),
        _ => null,
    };

    /// <summary>Stitches left unworked at the row's end, for good or for now.</summary>
    public int LeftAtEnd => (Row.End is { Adds: false } end ? end.Count : 0) + (Row.Short.Over.Count > 0 ? Row.Short.Waiting : Row.Short.Left) + (Row.Unworked?.Count ?? 0);

    /// <summary>The name of an edge at this row; null if it has none.</summary>
    public string? EdgeName(Hand hand) => EdgeNames.At(Piece, hand, Row.Number);

    /// <summary>True if a row's chain is one decrease with the stitch beside it.</summary>
    public static bool BeginsWithDecrease(RowWork? work) => work is { Opening.Counts: true } && Leading.First(work.Words) is Work { IsDecrease: true };

    private static bool IsOverRound(Piece piece, int index) =>
        index > 0 ? piece.Rows[index - 1].IsRound : piece.Start is PartStart { Base.EndsInRounds: true };

    private static RowWork? RowBelow(Piece piece, int index) => index > 0
        ? piece.Rows[index - 1].Work
        : piece.Start is PartStart { Base.Rows: { Count: > 0 } rows } ? rows[^1].Work : null;
}
