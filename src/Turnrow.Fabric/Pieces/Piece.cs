using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>What a piece begins from.</summary>
public abstract record PieceStart
{
    /// <summary>True if it makes the first row too, before anything can be said of the piece.</summary>
    public virtual bool MakesFirstRow => false;
}

/// <summary>A foundation chain.</summary>
/// <param name="Chains">Chains to be made; 0 if that is not known because of an error.</param>
/// <param name="GivenAsChains">True if the designer gave the chains rather than the stitches.</param>
public sealed record FoundationStart(int Chains, bool GivenAsChains) : PieceStart
{
    /// <summary>The stitch of the first row, if that makes its own foundation; null for a chain that is made before it.</summary>
    public Stitch? AtOnce { get; init; }

    /// <inheritdoc/>
    public override bool MakesFirstRow => AtOnce is not null;
}

/// <summary>A ring, which the first row is worked into.</summary>
/// <param name="Chains">The chains that are joined to it; 0 for a ring of yarn that is drawn together.</param>
public sealed record RingStart(int Chains) : PieceStart;

/// <summary>A foundation chain of which the first round is worked into both sides.</summary>
/// <param name="Chains">Chains to be made; 0 if that is not known because of an error.</param>
/// <param name="Stitches">How many of them it is worked into, those at its ends included.</param>
public sealed record BothSidesStart(int Chains, int Stitches) : PieceStart;

/// <summary>Nothing: it is put together of motifs, and its one row is the rim of them all.</summary>
public sealed record AssembledStart : PieceStart;

/// <summary>Part of an earlier piece's last row.</summary>
/// <param name="Base">The earlier piece.</param>
/// <param name="FromRight">Stitches between the right edge and the part.</param>
/// <param name="Count">Stitches of the part.</param>
/// <param name="Joined">True if yarn is joined anew, false if the earlier piece's yarn goes on.</param>
public sealed record PartStart(Piece Base, int FromRight, int Count, bool Joined) : PieceStart
{
    /// <summary>Stitches between the part and the left edge.</summary>
    public int FromLeft => Base.LastStitches - FromRight - Count;

    /// <summary>
    /// The places that it begins on, from the right edge; null if they are not known. Where it is cut off at a corner, it has an edge: one side
    /// is gone, and with it the corner.
    /// </summary>
    public PlaceSequence? PlacesFromRight()
    {
        var places = Base.TopFromRight?.Slice(FromRight, Count);
        if (places is not { HasCorners: true }) return places;
        if (FromRight > 0) places = places.WithCornerAt(0, false);
        return FromLeft > 0 ? places.WithCornerAt(places.Count - 1, false) : places;
    }
}

/// <summary>The last rows of earlier pieces, over which one row goes.</summary>
/// <param name="Parts">What it goes over, from its right edge to its left.</param>
/// <param name="Joined">True if yarn is joined anew, false if the yarn of the piece where it starts goes on.</param>
public sealed record AcrossStart(IReadOnlyList<PartStart> Parts, bool Joined) : PieceStart
{
    /// <summary>The part that a row from an edge is worked over first.</summary>
    public PartStart First(Hand startsAt) => startsAt == Hand.Right ? Parts[0] : Parts[^1];

    /// <summary>The places of all parts, from the right edge; null if any is not known.</summary>
    public PlaceSequence? PlacesFromRight()
    {
        PlaceSequence? all = null;
        foreach (var part in Parts)
        {
            if (part.PlacesFromRight() is not { } places) return null;
            all = all is null ? places : all.Then(places);
        }

        return all;
    }
}

/// <summary>Stitches picked up along edges.</summary>
/// <param name="Walk">The edges in the order in which they are walked.</param>
/// <param name="RightSide">True if the right side faces while picking up.</param>
/// <param name="Joined">True if yarn is joined anew.</param>
public sealed record PickUpStart(IReadOnlyList<PickUpLeg> Walk, bool RightSide, bool Joined) : PieceStart
{
    /// <inheritdoc/>
    public override bool MakesFirstRow => true;

    /// <summary>True if the row is joined to a round.</summary>
    public bool Around { get; init; }

    /// <summary>The stretches as they are walked, those that lie in parts put together again.</summary>
    public IEnumerable<PickUpLeg> WholeStretches()
    {
        PickUpLeg? whole = null;
        foreach (var leg in Walk)
        {
            if (whole is not null && leg.Part > 0 && leg.Part == whole.Part)
            {
                whole = whole.With(leg);
                continue;
            }

            if (whole is not null) yield return whole;
            whole = leg;
        }

        if (whole is not null) yield return whole;
    }

    /// <summary>The places that the row of stitches makes in corners: of each the middle one, in working order.</summary>
    internal IReadOnlyList<int> CornersMade()
    {
        var corners = new List<int>();
        // What is said of several legs together goes on from one to the next, as a maker works it.
        var done = new Dictionary<PlacesRate, long>();
        var made = 0L;
        foreach (var leg in Walk)
        {
            if (leg.IsCorner) corners.Add((int)made + (leg.Rate / 2));
            var (rate, before) = (PlacesRate.Of(leg.Rate, leg.Per), 0L);
            if (!leg.IsCorner) before = done.GetValueOrDefault(rate);
            var after = before + leg.Stretch.Count;
            if (!leg.IsCorner) done[rate] = after;
            made += rate.UpTo(after) - rate.UpTo(before);
        }

        return corners;
    }
}

/// <summary>One stretch of a pick-up, in the direction in which it is walked.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Hand">The edge; null for foundation and last row.</param>
/// <param name="Stretch">The part of the edge; of row-ends only the rows taken.</param>
/// <param name="Upwards">True if it is walked from the first row to the last (or from the right edge to the left).</param>
/// <param name="Rate">So many stitches …</param>
/// <param name="Per">… in so many rows or stitches.</param>
public sealed record PickUpLeg(Piece Piece, Hand? Hand, Stretch Stretch, bool Upwards, int Rate, int Per)
{
    /// <summary>True if it is one place, the corner between two edges of the piece.</summary>
    public bool IsCorner { get; init; }

    /// <summary>True if its rate is a share of a number that is spread by the lengths of stretches.</summary>
    public bool IsEven { get; init; }

    /// <summary>Legs that are parts of one stretch have the same number above 0.</summary>
    public int Part { get; init; }

    /// <summary>The same with the leg that follows it on the same stretch, at this one's rate.</summary>
    public PickUpLeg With(PickUpLeg next)
    {
        var lower = Upwards ? Stretch : next.Stretch;
        return this with { Stretch = lower with { Count = Stretch.Count + next.Stretch.Count } };
    }

    /// <summary>Its first so many places, or those behind them.</summary>
    /// <param name="from">Places before them, as it is walked.</param>
    /// <param name="count">How many.</param>
    public PickUpLeg Slice(int from, int count)
    {
        var first = Stretch.Kind != StretchKind.RowEnds ? Stretch.FirstRow
            : Upwards ? Stretch.FirstRow + from
            : Stretch.LastRow - from - count + 1;
        return this with { Stretch = Stretch with { FirstRow = first, Count = count } };
    }
}

/// <summary>One piece in one size: its rows and edges.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Start">What it begins from; null if that is not known because of an error.</param>
/// <param name="Rows">Its rows, first row first.</param>
/// <param name="Right">Its right edge.</param>
/// <param name="Left">Its left edge.</param>
/// <param name="FastenedOff">True if the yarn is cut after the last row because the piece says so.</param>
public sealed record Piece(
    string Name, PieceStart? Start, IReadOnlyList<Row> Rows, EdgeWalk Right, EdgeWalk Left, bool FastenedOff)
{
    /// <summary>The places of the last row in working order; null if not known.</summary>
    public PlaceSequence? Top { get; init; }

    /// <summary>True if an error leaves the number of rows in doubt.</summary>
    public bool RowsInDoubt { get; init; }

    /// <summary>True if an error leaves it in doubt which places of the last row are corners.</summary>
    public bool CornersInDoubt { get; init; }

    /// <summary>Edges inside it, row by row: stitches held, and the other sides of bridges.</summary>
    public IReadOnlyList<Stretch> Inner { get; init; } = [];

    /// <summary>The edges of other pieces that it was joined to while it was worked.</summary>
    public IReadOnlyList<JoinedAlong> JoinedTo { get; init; } = [];

    /// <summary>What was done to make it, for whatever is made like it.</summary>
    internal IReadOnlyList<PieceEvent> Events { get; init; } = [];

    /// <summary>Stitches and spaces of the last row; 0 if not known.</summary>
    public int LastStitches => Top?.Count ?? 0;

    /// <summary>True if the last row is a right-side row; false if there is none yet.</summary>
    public bool EndsOnRightSide => Rows.Count > 0 && Rows[^1].RightSide;

    /// <summary>Where the hook is after the last row.</summary>
    public Hand HookAt => Rows.Count == 0 ? Hand.Right : Rows[^1].IsRound ? Rows[^1].StartsAt : Rows[^1].EndsAt;

    /// <summary>The yarn in the hand at its end; null where the pattern names none.</summary>
    public string? YarnAfter => Rows.Count > 0 ? Rows[^1].YarnAfter : null;

    /// <summary>True if the last row is a round; false if there is none yet.</summary>
    public bool EndsInRounds => Rows.Count > 0 && Rows[^1].IsRound;

    /// <summary>The walk along an edge.</summary>
    public EdgeWalk At(Hand hand) => hand == Hand.Right ? Right : Left;

    /// <summary>The places of the last row, read from the right edge.</summary>
    public PlaceSequence? TopFromRight => Rows.Count > 0 && Rows[^1].StartsAt == Hand.Right ? Top : Top?.Reversed();
}
