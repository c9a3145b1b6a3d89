using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>A pick-up in one size: where it begins, and how many stitches it gives (null if the rate does not come out).</summary>
internal sealed record SizedPickUp(PickUpStart Start, int? Stitches);

/// <summary>A pick-up in all sizes.</summary>
internal sealed record BoundPickUp(Stitch Stitch, SizedPickUp?[] InSizes);

/// <summary>Reads <c>picked up along right-front neck, last 3 rows: 2 dc in each row</c>.</summary>
internal sealed class PickUpBinder(Context context, PieceBook book, PieceState piece)
{
    /// <summary>The pick-up; null, and reported, if it can't be understood.</summary>
    public BoundPickUp? Bind(PickUpOriginSyntax pickUp)
    {
        var copies = piece.Copies.Count;
        var walks = pickUp.Walks.Select(w => new WalkBinder(context, book) { OfEach = copies > 0 }.Bind(w)).ToList();
        var rates = new RateBinder(context).Bind(pickUp.Rates);
        var word = pickUp.Stitch ?? (pickUp.Rates.Count > 0 ? pickUp.Rates[0].Stitch : null);
        if (walks.Contains(null) || rates is null || word is null || context.StitchOf(word) is not { } stitch)
        {
            book.JoinsInDoubt = true;
            return null;
        }

        if (stitch.Making == StitchMaking.Reversed)
        {
            context.Findings.Add(WorkedBack.PickedUp(context, word.Span, word.Text));
            book.JoinsInDoubt = true;
            return null;
        }

        // Of several, each is picked up along its own of as many.
        if (walks.Find(w => w!.Piece.Copies.Count != copies) is { } other && !walks.Exists(static w => w!.Piece.Unread))
            context.Findings.Add(other.Piece.Copies.Count > 0 ? MadeSeveral.Which(other.Span, other.Piece.Name, other.Piece.Copies.Count) : MadeSeveral.Begun(other.Span, piece.Name));
        if (pickUp.Rates.Any(static r => r.InAll)) return Evenly(pickUp, walks!, rates);
        var shares = PickUpShares.AreSaid(pickUp) ? new PickUpShares(context, book, pickUp, rates) : null;
        if (shares?.Check(walks!) == false)
        {
            book.JoinsInDoubt = true;
            return null;
        }

        var sizes = new SizedPickUp?[context.Sizes];
        var uneven = new List<(int Size, PickUpLeg Leg)>();
        var unsaid = Sized.Each(context.Sizes, static _ => new Dictionary<Place, int>());
        for (var i = 0; i < sizes.Length; i++) sizes[i] = InSize(i, pickUp, walks!, rates, stitch, uneven, shares, unsaid[i]);
        if (walks.Exists(w => w!.Piece.EdgesInDoubt))
        {
            // How long the edges are is not certain, so neither is how many stitches they give; a claim may say it.
            uneven.Clear();
            unsaid = Sized.Each(context.Sizes, static _ => new Dictionary<Place, int>());
            sizes = sizes.Select(s => s is null ? null : s with { Stitches = null });
        }

        var nothing = Sized.Where(context.Sizes, i => walks.TrueForAll(w => w!.Sides[i] is { RowEnds: 0, Stitches: 0 } side && IsKnown(w, side, i, rates)));
        if (nothing.Length > 0 && !walks.Exists(w => w!.Piece.EdgesInDoubt)) context.Findings.Add(PickUpNothing.At(context, pickUp.Walks[0].Span, nothing));
        else CheckCorners(pickUp, walks!, rates, sizes);
        CheckPlaces(pickUp, sizes, unsaid, word.Text);
        if (!walks.Exists(static w => w!.Piece.EdgesInDoubt)) shares?.CheckFlat();
        if (uneven.Count > 0) context.Findings.Add(PickUpRemainder.At(context, pickUp.Rates.Count > 0 ? pickUp.Rates[0].Span : word.Span, uneven));
        Noted(pickUp, walks!);
        return new BoundPickUp(stitch, sizes);
    }

    private BoundPickUp Evenly(PickUpOriginSyntax pickUp, List<BoundWalk> walks, IReadOnlyList<BoundRate> rates)
    {
        var inAll = rates[pickUp.Rates.TakeWhile(static r => !r.Evenly).Count()];
        var bound = new EvenPickUp(context, book).Bind(pickUp, Noted(pickUp, walks), inAll, rates.FirstOrDefault(static r => r.OfCorners));
        CheckCorners(pickUp, walks, rates, bound.InSizes);
        return bound;
    }

    // The edges are used now, and have to meet.
    private List<BoundWalk> Noted(PickUpOriginSyntax pickUp, List<BoundWalk> walks)
    {
        CheckMeeting(pickUp, walks);
        foreach (var walk in walks)
        {
            walk.Piece.Joined = true;
            book.Uses.Add(walk, context);
        }

        return walks;
    }

    // What is worked into each corner has a middle, and there is a corner.
    private void CheckCorners(PickUpOriginSyntax pickUp, List<BoundWalk> walks, IReadOnlyList<BoundRate> rates, SizedPickUp?[] sizes)
    {
        for (var at = 0; at < rates.Count; at++)
        {
            var (rate, said) = (rates[at], pickUp.Rates[at]);
            if (!rate.OfCorners || walks.Exists(w => w.Piece.EdgesInDoubt)) continue;
            var even = Sized.Where(context.Sizes, i => rate.Count[i] is { } n && n % 2 == 0);
            if (even.Length > 0) context.Findings.Add(PickUpCorner.Even(context, said.Span, even, i => rate.Count[i]!.Value, context.Word(rate.Stitch)));
            var none = Sized.Where(context.Sizes, i => sizes[i] is { Stitches: not null } start && !start.Start.Walk.Any(static l => l.IsCorner));
            if (none.Length > 0) context.Findings.Add(PickUpCorner.None(context, said.Span, none));
        }
    }

    // Spaces are asked for, and what is said of some kinds only leaves the others in doubt; yarn is joined where something is worked.
    private void CheckPlaces(PickUpOriginSyntax pickUp, SizedPickUp?[] sizes, Dictionary<Place, int>[] unsaid, string stitch)
    {
        var span = pickUp.Rates.Count > 0 ? pickUp.Rates[0].Span.To(pickUp.Rates[^1].Span) : pickUp.Stitch!.Span;
        var spaces = Sized.Where(context.Sizes, i => unsaid[i].Count > 0);
        if (spaces.Length > 0)
        {
            context.Findings.Add(PickUpUnsaid.At(context, span, spaces, unsaid[spaces[0]], stitch));
            foreach (var i in spaces) sizes[i] = sizes[i]! with { Stitches = null };
        }

        var passed = Sized.Where(context.Sizes, i => sizes[i] is { Start.Walk: [{ Rate: 0, IsEven: false }, ..] });
        if (passed.Length > 0) context.Findings.Add(PickUpUnsaid.FirstSkipped(context, span, passed));
    }

    // A row picked up over several last rows joins them, as a yoke does; along row-ends it goes round what is joined already.
    private void CheckMeeting(PickUpOriginSyntax pickUp, List<BoundWalk> walks)
    {
        if (walks.Count < 2 || book.InDoubt || book.JoinsInDoubt || walks.Exists(w => w.Piece.EdgesInDoubt)) return;
        for (var at = 1; at < walks.Count; at++)
        {
            var (first, second) = (walks[at - 1], walks[at]);
            if (!OfRowEnds(first) && !OfRowEnds(second)) continue;
            var apart = Sized.Where(context.Sizes, i => !book.MeetingPoints[i].Meet(first, second, pickUp.Side?.RightSide ?? true));
            if (apart.Length > 0) context.Findings.Add(PickUpApart.At(context, second.Span, apart, Words(pickUp.Walks[at - 1]), Words(pickUp.Walks[at])));
        }

        if (!pickUp.Around || (!OfRowEnds(walks[0]) && !OfRowEnds(walks[^1]))) return;
        var open = Sized.Where(context.Sizes, i => !book.MeetingPoints[i].Meet(walks[^1], walks[0], pickUp.Side?.RightSide ?? true));
        if (open.Length > 0) context.Findings.Add(PickUpApart.Open(context, pickUp.Span, open, Words(pickUp.Walks[0]), Words(pickUp.Walks[^1])));
    }

    /// <summary>The legs of a walk, each stretch at the rate that is customary along it.</summary>
    public static List<PickUpLeg> CustomaryLegs(IReadOnlyList<JoinSide> sides, bool rightSide, int size, Stitch stitch)
    {
        var legs = new List<PickUpLeg>();
        foreach (var side in sides) AddLegs(legs, side, rightSide, size, [], stitch);
        return legs;
    }

    private static bool OfRowEnds(BoundWalk walk) => Array.Exists(walk.Sides, s => s?.Hand is not null);

    /// <summary>An edge as it is written.</summary>
    public static string Words(WalkSyntax walk) => $"`{string.Join(' ', walk.Words.Select(w => w.Text))}`";

    private SizedPickUp? InSize(
        int size, PickUpOriginSyntax pickUp, List<BoundWalk> walks, IReadOnlyList<BoundRate> rates, Stitch stitch, List<(int, PickUpLeg)> uneven, PickUpShares? shares, Dictionary<Place, int> unsaid)
    {
        var rightSide = pickUp.Side?.RightSide ?? true;
        var legs = new List<PickUpLeg>();
        var known = true;
        foreach (var walk in walks)
        {
            if (walk.Sides[size] is not { } side) return null;
            AddLegs(legs, side, rightSide, size, rates, stitch);
            known &= IsKnown(walk, side, size, rates);
        }

        if (legs.Count == 0) return null;
        if (rates.FirstOrDefault(r => r.OfCorners)?.Count[size] is { } inCorner) legs = PickUpCorners.CutOut(legs, inCorner, pickUp.Around);
        known &= shares?.IsKnown(size) != false;
        if (shares is not null && known) legs = shares.Of(legs, size);
        if (known) legs = PickUpKinds.CutOut(legs, rates, size, unsaid);
        var total = 0L;
        var whole = known;
        // A rate holds for all that it is said of together: 2 in 3 rows does not begin anew where the rows' stitch changes.
        foreach (var alike in legs.Where(static l => !l.IsEven).GroupBy(l => (l.Rate, l.Per)))
        {
            var along = alike.Sum(l => (long)l.Stretch.Count) * alike.Key.Rate;
            if (known && along % alike.Key.Per != 0)
            {
                uneven.Add((size, alike.First() with { Stretch = alike.First().Stretch with { Count = alike.Sum(l => l.Stretch.Count) } }));
                whole = false;
            }

            total += along / alike.Key.Per;
        }

        total += legs.Sum(static l => l.IsEven ? (long)l.Rate : 0);

        return new SizedPickUp(PickUpYarn.Find(legs, rightSide, l => book.Find(l.Piece.Name) is { } source && source.YarnTaken[size]) with { Around = pickUp.Around }, whole && total is > 0 and <= Evaluator.LargestCount ? (int)total : null);
    }

    /// <summary>True if it is known how many places a walk has.</summary>
    public static bool IsCounted(BoundWalk walk, JoinSide side, int size) =>
        side.Hand is not null || (walk.Piece.Builders[size].LastWork is not null && walk.Piece.Builders[size].Rows[0].Work is not null);

    // How many a row that could not be counted gives is not known, nor what is customary along the end of a row of no known stitch.
    private static bool IsKnown(BoundWalk walk, JoinSide side, int size, IReadOnlyList<BoundRate> rates)
    {
        if (side.Hand is null) return IsCounted(walk, side, size);
        return rates.Any(r => !r.OfStitches || r.Evenly) || !side.Stretches.Any(s => s.Kind == StretchKind.RowEnds && s.Stitch is null);
    }

    // Right side facing, a maker works from right to left along an edge that she holds on top: up the right edge, down the left one,
    // the last row from right to left, the foundation from left to right.
    private static void AddLegs(List<PickUpLeg> legs, JoinSide side, bool rightSide, int size, IReadOnlyList<BoundRate> rates, Stitch stitch)
    {
        var upwards = side.Hand is { } hand ? (hand == Hand.Right) == rightSide
            : side.Stretches[0].Kind is not (StretchKind.Foundation or StretchKind.BridgeChain) == rightSide;
        var stretches = upwards ? side.Stretches : [.. side.Stretches.Reverse()];
        foreach (var stretch in stretches)
        {
            var (count, per) = RateFor(stretch, rates, stitch, size);
            legs.Add(new PickUpLeg(side.Piece, side.Hand, stretch, upwards, count, per));
        }
    }

    private static (int Count, int Per) RateFor(Stretch stretch, IReadOnlyList<BoundRate> rates, Stitch stitch, int size)
    {
        var ofStitches = stretch.Kind != StretchKind.RowEnds;
        foreach (var rate in rates)
        {
            if (rate.OfCorners || rate.Evenly || rate.OfStitches != ofStitches) continue;
            if (!ofStitches || rate.Kinds.Any(static k => k.Kind is not (PlaceFilterKind.AnySpace or PlaceFilterKind.SpaceOf))) return (rate.Count[size] ?? 1, rate.Per[size] ?? 1);
        }

        // Unsaid: one in each stitch and chain, and along row-ends what the rows' own height asks for.
        if (ofStitches) return (1, 1);
        var custom = (stretch.Stitch ?? stitch).PickUp;
        return (custom.Stitches, custom.Rows);
    }
}
