namespace Turnrow.Publishing.Tests.Reader;

/// <summary>One thing that a row tells the maker to do; what stands in parentheses behind it are its remarks.</summary>
internal abstract record Step
{
    public IReadOnlyList<string> Remarks { get; init; } = [];
}

internal sealed record Turn : Step;

/// <summary>`do not turn`.</summary>
internal sealed record StayOnSide : Step;

/// <summary>`ch 3`.</summary>
internal sealed record MakeChains(int Count) : Step;

/// <summary>`skip first dc`, `skip next 2 ch`.</summary>
internal sealed record SkipPlaces(PlaceWords Places) : Step;

/// <summary>`skip the 4 ch (they count as 1 dc)`, at the beginning of a row worked into chains.</summary>
internal sealed record SkipBeginning(int Chains) : Step;

/// <summary>`2 dc in next dc`, `dc in each dc across`.</summary>
internal sealed record WorkInto(int Each, string Stitch, PlaceWords Places) : Step
{
    /// <summary>The special stitch that it is; null for none.</summary>
    public SpecialStitch? Special { get; init; }
}

/// <summary>`39 fsc`: each in the chain at the foot of the one before.</summary>
internal sealed record WorkOnOwnChain(int Count, string Stitch) : Step;

/// <summary>`crossed dc over next 2 dc`, `[cable over next 4 sts] 2 times`: a special stitch over several places.</summary>
internal sealed record WorkOver(SpecialStitch Special, PlaceWords Places) : Step;

/// <summary>`picot`: it stands on the stitch before it.</summary>
internal sealed record WorkNothing : Step;

/// <summary>`dc2tog over next 2 dc`; in a row worked into chains perhaps `beginning in 4th ch from hook`.</summary>
internal sealed record WorkTogether(string Stitch, int Over, IReadOnlyList<PlaceWords> Places, int FromHook) : Step;

/// <summary>`(2 dc, ch 2, 2 dc) in next sp`: stitches and chains, each with how many.</summary>
internal sealed record WorkGroup(IReadOnlyList<(int Count, string? Stitch)> Parts, PlaceWords Places) : Step
{
    /// <summary>Parts that are special stitches, by their number.</summary>
    public IReadOnlyDictionary<int, SpecialStitch> Specials { get; init; } = new Dictionary<int, SpecialStitch>();

    /// <summary>Stitches into other pieces among them.</summary>
    public IReadOnlyList<JoinBeside> Joins { get; init; } = [];

    /// <summary>True if its first chains stand behind a stitch into another piece, so that they go on with the space before it.</summary>
    public bool GoesOnSpace { get; init; }

    /// <summary>Behind which part a marker is put; -1 for none.</summary>
    public int MarkerBehind { get; init; } = -1;
}

/// <summary>`place a marker in the dc just made`, `in the first st of this row`.</summary>
internal sealed record PutMarker(PlaceName Name, bool InFirst) : Step;

/// <summary>`move the marker to the middle one of these 3 dc`, `to this ch-2 sp`, `to the top of this ch` (no name).</summary>
internal sealed record ShiftMarker(int MiddleOf, PlaceName? Name) : Step
{
    /// <summary>Which of them, from 1; 0 for the middle one.</summary>
    public int Nth { get; init; }
}

/// <summary>`take the markers out`, `take the marker at the edge out`.</summary>
internal sealed record DropMarkers(bool AtEdge) : Step;

/// <summary>`with navy`: what follows is worked with it.</summary>
internal sealed record WithYarn(string Yarn) : Step;

/// <summary>`change to cream in the last yarn over`, `… in the sl st that joins`: the next row begins with it.</summary>
internal sealed record ChangeAtEnd(string Yarn, bool AtJoin) : Step;

/// <summary>`cut navy`, `carry navy up the side`, `do not cut navy`.</summary>
internal sealed record RestYarn(string Yarn, string Rest) : Step;

/// <summary>`[…] 6 times`.</summary>
internal sealed record RepeatSteps(IReadOnlyList<Step> Steps, int Times) : Step
{
    /// <summary>True of slip stitches in two kinds of places, one after the other.</summary>
    public bool IsSlipping { get; init; }
}

/// <summary>`leave these unworked` (no number), `leave the other 50 sts unworked`, `leave the sl sts unworked`.</summary>
internal sealed record LeaveUnworked(int? Count, bool SlipStitches) : Step;

/// <summary>`leave these unworked for now`, `leave the other 6 sts unworked for now`: a later row works over them.</summary>
/// <param name="Count">How many; null where `to last 4 sts` said it.</param>
/// <param name="Which">`these`, `last`, `other`, or `before` for those that earlier rows left.</param>
/// <param name="Beside">True if those that earlier rows left are left with them.</param>
internal sealed record LeaveForNow(int? Count, string Which, bool Beside) : Step;

/// <summary>`the last 6 sts worked over are those left before`.</summary>
internal sealed record OverThoseLeft(int Count) : Step;

/// <summary>`28 sc evenly over these 42 row-ends`, `over first 18 sts`, `over next 18 sts` (parts of them), `sc in this row-end`.</summary>
internal sealed record SpreadOver(int Count, string Stitch, int Places, PlaceName Name, string? Part) : Step
{
    /// <summary>Of `21 sts and sps` the spaces; null if there are none.</summary>
    public PlaceName? Spaces { get; init; }
}

/// <summary>`ch 6 for left underarm`, `ch 6 over the gap`.</summary>
internal sealed record BridgeOver(int Count, string? Name) : Step;

/// <summary>`join with sl st in top of ch-3`, `in first dc`, `in the ch-1 sp at its beginning`; `do not join` (no place).</summary>
internal sealed record JoinRound(string? Place) : Step;

/// <summary>`do not join this round or the next ones, keep a marker in the first st of each`.</summary>
internal sealed record GoOnInSpiral : Step;

/// <summary>`end the round here, the marker moves to the next st`.</summary>
internal sealed record EndRoundHere : Step;

/// <summary>`pull the yarn end to close the ring`.</summary>
internal sealed record CloseRing : Step;

/// <summary>`close these sts to a ring with the next st`.</summary>
internal sealed record CloseToRing : Step;

/// <summary>`working along the opposite side of the foundation chain`.</summary>
internal sealed record OtherSide : Step;

/// <summary>`place a marker in the middle one of these 3 sc`.</summary>
internal sealed record PutMarkerInMiddle(int Of) : Step;

/// <summary>`then along the armhole edge of Back from Row 9 up to its last row`.</summary>
internal sealed record GoAlong(string Edge) : Step;

/// <summary>`with RS of Yoke facing, beginning with the 33rd st of its last row, counted from its right edge`: from new chains on to it.</summary>
internal sealed record GoOverPart(StitchOfLast First) : Step
{
    /// <summary>With what its remark says of a bridge.</summary>
    public StitchOfLast Stitch => First with { Bridged = Remarks.Contains("each bridging ch counts as a st here") };
}

/// <summary>How a row says where its stitches go.</summary>
internal enum Where
{
    First,
    Next,
    Last,
    Same,
    The,
    Across,
    ToLast,
    ToNext,
    ToMarked,
    ToTurn,
    LeftBefore,
    Marked,
    NextMarked,
    TopOf,
    ChainOf,
    FromHook,
    Ring,
}

/// <summary>Places, in words.</summary>
/// <param name="Where">Which of them.</param>
/// <param name="Count">How many; of `to last 4 sts` how many are kept; of a chain which one.</param>
/// <param name="Names">What they are called: a stitch, ch, st, sp, row-end.</param>
internal sealed record PlaceWords(Where Where, int Count, IReadOnlyList<PlaceName> Names)
{
    /// <summary>`3rd dc of next SH`: the special stitch that it is a place of; null for none.</summary>
    public string? Of { get; init; }

    /// <summary>Which of its kind in that; 0 for its centre, below 0 for the only one of its kind.</summary>
    public int Nth { get; init; }

    /// <summary>The one loop that they go through, <c>back</c> or <c>front</c>; empty for both.</summary>
    public string Loop { get; init; } = "";

    /// <summary>Of sts left before: true if they are all of them.</summary>
    public bool IsAll { get; init; }
}

/// <summary>What one place is called.</summary>
/// <param name="Word">US word of a stitch, or ch, st, sp, row-end, turning, beginning.</param>
/// <param name="Chains">Chains of `ch-2 sp` and of `turning ch-5`; 0 if unsaid.</param>
internal sealed record PlaceName(string Word, int Chains = 0)
{
    public bool Fits(Place place) => Word switch
    {
        "st" => place.Seen is Seen.Stitch or Seen.Chain or Seen.BridgeChain or Seen.AddedChain or Seen.ChainAndStitch,
        "ch" => place.Seen is Seen.Chain or Seen.BridgeChain or Seen.AddedChain,
        "sp" => place.Seen == Seen.Space && (Chains == 0 || Chains == place.Chains),
        "row-end" => place.Seen == Seen.RowEnd,
        "turning" => place is { Seen: Seen.TurningChain, OfRound: false },
        "round" => place is { Seen: Seen.TurningChain, OfRound: true },
        "beginning" => place.Seen == Seen.BeginningChain,
        _ => place.Seen is Seen.Stitch or Seen.ChainAndStitch && place.Stitch == Word,
    };
}
