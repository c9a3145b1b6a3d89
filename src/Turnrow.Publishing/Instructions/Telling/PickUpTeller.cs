using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells a row that is picked up along edges: where it begins, which side faces, and how many go into each row-end.</summary>
internal static class PickUpTeller
{
    private const int Square = 4;

    /// <summary>The row's description.</summary>
    /// <param name="start">Where it is picked up.</param>
    /// <param name="row">The row.</param>
    /// <param name="work">How it is worked.</param>
    /// <param name="open">True of a round whose end is left open.</param>
    public static RowDescription Tell(PickUpStart start, Row row, RowWork work, bool open)
    {
        if (start.Walk.Count == 0 || work.Opening.Stitch is not { } chained) return RowDescription.Unknown;
        // The chain stands for a basic stitch; what is picked up may be made of several, and has its own name.
        var stitch = Leading.First(work.Words) is Work worked ? worked.Stitch : chained;
        var stretches = Stretches(start.Walk);
        var first = StretchOf(stretches[0]);
        Phrase before = start.Joined ? new JoinAtEdge(start.RightSide, first) : new GoOnAlong(start.RightSide, first);
        var phrases = new List<Phrase>();
        if (work.Opening.Chains > 0) phrases.Add(new PickUpChain(chained, work.Opening.Chains, work.Opening.Counts));
        var rounds = new Rounds(phrases, stitch, work.Opening.Counts, start.Around);
        foreach (var legs in stretches)
        {
            if (legs != stretches[0]) phrases.Add(new ThenAlong(StretchOf(legs)));
            if (legs.Exists(static l => l.IsEven)) rounds.Evenly(legs);
            else rounds.Along(legs);
        }

        // The chain that stands for a corner's only stitch gets its marker when the row is done, as in any row.
        if (rounds.MarkOfFirst is { } mark) phrases.Add(mark);
        var told = Rounded(phrases);
        Phrase? unjoined = !start.Around ? null : row.Way == RoundWay.Spiral ? new SpiralBegins() : open ? new DoNotJoin() : null;
        if (start.Around && unjoined is null) told.Add(Joins.OfRound(work));
        return new RowDescription(new([before]), new(told), unjoined is null ? PhraseList.None : new([unjoined]));
    }

    // A customary rate makes a pair of the same numbers each time that the rows' stitches come round: pairs that follow each other are one repeat. So are the
    // corners of a rim that goes in and out, one or two at a time; the four of a square are told one by one, since its sides are as long as they are.
    private static List<Phrase> Rounded(List<Phrase> phrases)
    {
        var rounded = new List<Phrase>();
        var corners = phrases.Count(IsNextCorner) > Square;
        for (var at = 0; at < phrases.Count;)
        {
            var (period, times) = (2, TimesFrom(phrases, at, 2, corners));
            if (corners && TimesFrom(phrases, at, 4, corners) is > 1 and var twos && twos * 4 > times * 2) (period, times) = (4, twos);
            if (times < 2)
            {
                rounded.Add(phrases[at++]);
                continue;
            }

            rounded.Add(new Repeated(new([.. phrases.Skip(at).Take(period)]), Sized.Of(times)));
            at += period * times;
        }

        return rounded;
    }

    // How often so many phrases come one time after the other.
    private static int TimesFrom(List<Phrase> phrases, int at, int period, bool corners)
    {
        for (var i = at; i < phrases.Count; i++)
        {
            if (!IsNext(phrases[i], corners) || (i >= at + period && !phrases[i].Equals(phrases[i - period]))) return (i - at) / period;
        }

        return (phrases.Count - at) / period;
    }

    private static bool IsNext(Phrase phrase, bool corners) => phrase is StitchesIn { Where: NextPlaces } || (corners && IsNextCorner(phrase));

    private static bool IsNextCorner(Phrase phrase) => phrase is GroupIn { Where: NextPlaces };

    // Row-ends of one edge that follow each other are one stretch to the maker, whatever the rows' stitch is.
    private static List<List<PickUpLeg>> Stretches(IReadOnlyList<PickUpLeg> walk)
    {
        var stretches = new List<List<PickUpLeg>>();
        foreach (var leg in walk)
        {
            if (stretches.Count == 0 || !GoesOn(stretches[^1][^1], leg)) stretches.Add([leg]);
            else if (Together(stretches[^1][^1], leg) is { } together) stretches[^1][^1] = together;
            else stretches[^1].Add(leg);
        }

        return stretches;
    }

    // Both as one, if so many are worked in both alike.
    private static PickUpLeg? Together(PickUpLeg before, PickUpLeg leg)
    {
        if ((before.Rate, before.Per) != (leg.Rate, leg.Per) || before.IsCorner || leg.IsCorner || before.IsEven != leg.IsEven) return null;
        return before.With(leg);
    }

    private static bool GoesOn(PickUpLeg before, PickUpLeg leg) =>
        (before.Part > 0 && before.Part == leg.Part) || (before.Piece == leg.Piece && before.Hand == leg.Hand && before.Stretch.Name == leg.Stretch.Name
        && before.Stretch.Kind == StretchKind.RowEnds && leg.Stretch.Kind == StretchKind.RowEnds
        && (leg.Upwards ? leg.Stretch.FirstRow == before.Stretch.LastRow + 1 : leg.Stretch.LastRow == before.Stretch.FirstRow - 1));

    private static EdgeStretch StretchOf(List<PickUpLeg> legs)
    {
        var leg = legs[0];
        var (first, last) = leg.Upwards
            ? (leg.Stretch.FirstRow, legs[^1].Stretch.LastRow)
            : (leg.Stretch.LastRow, legs[^1].Stretch.FirstRow);
        return new EdgeStretch(
            leg.Piece.Name, leg.Stretch.Name, leg.Hand, leg.Stretch.Kind, Sized.Of(first), Sized.Of(last), Sized.Of(leg.Piece.Rows.Count), leg.Upwards, IsSlipped(leg))
        {
            Stitches = leg.Stretch is { Kind: StretchKind.OpenStitches, Name: not null } ? LastStitches.OfStretch(leg.Piece, leg.Stretch) : null,
            IsRim = leg.Piece.Start is AssembledStart,
            IsRound = leg.Stretch.Kind switch
            {
                StretchKind.Foundation => leg.Piece.Rows is [{ Begins: RowBegins.Ring }, ..],
                StretchKind.LastRow or StretchKind.OpenStitches => leg.Piece.EndsInRounds,
                StretchKind.FreeLoops => leg.Piece.Rows[leg.Stretch.FirstRow - 1].IsRound,
                _ => false,
            },
            OnRightSide = leg.Stretch.Kind == StretchKind.FreeLoops && FreeLoops.LieOnRightSide(leg.Piece, leg.Stretch.FirstRow),
            AtRow = IsOneOfSeveral(leg) ? Sized.Of(leg.Stretch.FirstRow + 1) : null,
        };
    }

    // An edge that goes in or out in several steps: which of them it is has to be said.
    private static bool IsOneOfSeveral(PickUpLeg leg) =>
        leg.Stretch.Kind is StretchKind.LeftStitches or StretchKind.AddedChain && leg.Hand is { } hand
        && leg.Piece.At(hand).Stretches.Count(s => s.Kind == leg.Stretch.Kind) > 1;

    // The row behind the step begins where the step is: then it got past the stitches by slip stitches.
    private static bool IsSlipped(PickUpLeg leg) =>
        leg.Stretch.Kind == StretchKind.LeftStitches && leg.Stretch.FirstRow < leg.Piece.Rows.Count
        && leg.Piece.Rows[leg.Stretch.FirstRow] is { Begins: RowBegins.Turned } row && row.StartsAt == leg.Hand;

    // Stitches a place, in rounds of as many places as the rate is given for; the larger numbers come first. What is said of several
    // stretches together goes on from one to the next in the middle of a round.
    private sealed class Rounds(List<Phrase> phrases, Stitch stitch, bool chainCounts, bool around)
    {
        private readonly Dictionary<PlacesRate, int> _done = [];
        private bool _begun;

        /// <summary>The marker of what the chain stands for, if that is a corner by itself.</summary>
        public PlaceMarker? MarkOfFirst { get; private set; }

        public void Along(List<PickUpLeg> legs)
        {
            var passed = 0;
            foreach (var leg in legs)
            {
                foreach (var part in Nameable(leg, passed))
                {
                    Along(part, NameOf(part, passed));
                    passed += part.Stretch.Count;
                }
            }
        }

        // Stitches and spaces have one name for several of them; the first place of all, and each that has its own number, is told by itself.
        private IEnumerable<PickUpLeg> Nameable(PickUpLeg leg, int passed)
        {
            var count = leg.Stretch.Count;
            if (count < 2 || NameOf(leg, passed).Kind != PlaceNameKind.StitchAndSpace) return [leg];
            if (leg.Rate % leg.Per != 0) return Enumerable.Range(0, count).Select(at => leg.Slice(at, 1));
            return _begun ? [leg] : [leg.Slice(0, 1), leg.Slice(1, count - 1)];
        }

        private void Along(PickUpLeg leg, PlaceName name)
        {
            var rate = PlacesRate.Of(leg.Rate, leg.Per);
            var per = rate.Places;
            if (leg.IsCorner)
            {
                InCorner(rate.Stitches, name);
                return;
            }

            var at = _done.GetValueOrDefault(rate);
            var end = at + leg.Stretch.Count;
            _done[rate] = end % per;
            if (!_begun && at < end) Begin(rate.In(at++), name);
            while (at < end && at % per != 0) Add(rate.In(at++ % per), 1, name);
            var rounds = (end - at) / per;
            if (per == 1) Add(rate.Stitches, rounds, name);
            else if (rounds > 0) AddRounds(rate, rounds, name);
            for (at += rounds * per; at < end; at++) Add(rate.In(at % per), 1, name);
        }

        // A share of a number that is spread over the whole walk: the maker spreads it over the stretch, and is told about how.
        public void Evenly(List<PickUpLeg> legs)
        {
            var hasCorners = legs.Exists(static l => l.IsCorner);
            var (places, stitches, passed) = (0, 0, 0);
            PlaceName? name = null;
            foreach (var leg in legs)
            {
                var here = NameOf(leg, passed);
                passed += leg.Stretch.Count;
                if (!leg.IsCorner)
                {
                    places += leg.Stretch.Count;
                    stitches += (int)((long)leg.Stretch.Count * leg.Rate / leg.Per);
                    name = name?.With(here) ?? here;
                    continue;
                }

                Spread(places, stitches, name ?? here, hasCorners);
                InCorner(leg.Rate, here);
                (places, stitches, name) = (0, 0, null);
            }

            if (name is { } last) Spread(places, stitches, last, hasCorners);
        }

        private void Spread(int places, int stitches, PlaceName name, bool isPart)
        {
            if (places == 0) return;
            var part = !isPart ? EvenPart.Whole : _begun ? EvenPart.Next : EvenPart.First;
            var first = !_begun && chainCounts;
            _begun = true;
            // A short stretch may get none; the chain may stand for the only one of the first.
            var chained = first ? 1 : 0;
            if (stitches > chained) phrases.Add(EvenOver.Of(stitch, stitches, places, name, first) with { Part = part });
            else if (places > chained) phrases.Add(new SkipPlaces(Sized.Of(places - chained), name, false));
        }

        // The middle one is marked, since the next row asks for it. Where the walk begins in a corner, its stitches go where the yarn is
        // joined, and the chain may stand for the first of them.
        private void InCorner(int each, PlaceName name)
        {
            var made = new PlaceName(PlaceNameKind.Stitch, stitch);
            var (first, chained) = (!_begun, !_begun && chainCounts ? 1 : 0);
            _begun = true;
            if (each == chained)
            {
                MarkOfFirst = new PlaceMarker(made, true) { OfRound = around };
                return;
            }

            var inside = new List<Phrase> { new BareStitches(stitch, HookInto.BothLoops, Sized.Of((each / 2) + 1 - chained)), new PlaceMarker(made, false) };
            if (each > 1) inside.Add(new BareStitches(stitch, HookInto.BothLoops, Sized.Of(each / 2)));
            phrases.Add(new GroupIn(new(inside), first ? new SamePlace(name) : new NextPlaces(Sized.Of(1), name, false)));
        }

        // Rounds begin with the larger number, so the first place has a stitch at least; the chain may stand for it.
        private void Begin(int each, PlaceName name)
        {
            _begun = true;
            var here = each - (chainCounts ? 1 : 0);
            if (here > 0) phrases.Add(new StitchesIn(stitch, HookInto.BothLoops, Sized.Of(here), new SamePlace(name)));
        }

        private void AddRounds(PlacesRate rate, int rounds, PlaceName name)
        {
            var round = new Rounds([], stitch, false, around);
            for (var i = 0; i < rate.Places; i++) round.Add(rate.In(i), 1, name);
            if (rounds == 1) phrases.AddRange(round.Told);
            else phrases.Add(new Repeated(new(round.Told), Sized.Of(rounds)));
        }

        private List<Phrase> Told => phrases;

        // Like numbers side by side are said at once.
        private void Add(int each, int places, PlaceName name)
        {
            if (places == 0) return;
            if (each == 0)
            {
                phrases.Add(new SkipPlaces(Sized.Of(places), name, false));
                return;
            }

            if (phrases.Count > 0 && phrases[^1] is StitchesIn { Where: NextPlaces next } before && before.Each.First == each && next.Place == name)
            {
                places += next.Count.First;
                phrases.RemoveAt(phrases.Count - 1);
            }

            phrases.Add(new StitchesIn(stitch, HookInto.BothLoops, Sized.Of(each), new NextPlaces(Sized.Of(places), name, false)));
        }
    }

    // Where a last row has spaces, the maker is told of them; else she sees what stitches they are.
    private static PlaceName NameOf(PickUpLeg leg, int passed)
    {
        var name = NameOf(leg.Stretch.Kind);
        if (PickUpPlaces.Of(leg) is not { } all) return name;
        var places = all.Slice(passed, leg.Stretch.Count);
        var spaces = places.Kinds().Where(static kind => kind.Place.Kind == PlaceKind.Space).Select(static kind => PlaceName.Of(kind.Place)).ToList();
        if (spaces.Count == 0) return name;
        var only = spaces.Aggregate(static (all, next) => all.With(next));
        return places.Kinds().Any(static kind => kind.Place.Kind != PlaceKind.Space) ? only.With(name) : only;
    }

    private static PlaceName NameOf(StretchKind kind) => kind switch
    {
        StretchKind.RowEnds => PlaceName.RowEnd,
        StretchKind.Foundation or StretchKind.AddedChain or StretchKind.BridgeChain => PlaceName.Chain,
        _ => PlaceName.AnyStitch,
    };
}
