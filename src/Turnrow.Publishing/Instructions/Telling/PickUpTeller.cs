using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells a row that is picked up along edges: where it begins, which side faces, and how many go into each row-end.</summary>
internal static class PickUpTeller
{
    /// <summary>The row's description.</summary>
    public static RowDescription Tell(PickUpStart start, RowWork work)
    {
        if (start.Walk.Count == 0 || work.Opening.Stitch is not { } stitch) return RowDescription.Unknown;
        var first = StretchOf(start.Walk[0]);
        Phrase before = start.Joined ? new JoinAtEdge(start.RightSide, first) : new GoOnAlong(start.RightSide, first);
        var phrases = new List<Phrase>();
        if (work.Opening.Chains > 0) phrases.Add(new PickUpChain(stitch, work.Opening.Chains, work.Opening.Counts));
        var phases = new Dictionary<(int, int), int>();
        for (var i = 0; i < start.Walk.Count; i++)
        {
            if (i > 0) phrases.Add(new ThenAlong(StretchOf(start.Walk[i])));
            Along(phrases, start.Walk[i], stitch, phases, i == 0, i == 0 && work.Opening.Counts);
        }

        return new RowDescription(new([before]), new(phrases), PhraseList.None);
    }

    private static EdgeStretch StretchOf(PickUpLeg leg)
    {
        var stretch = leg.Stretch;
        var (first, last) = leg.Upwards ? (stretch.FirstRow, stretch.LastRow) : (stretch.LastRow, stretch.FirstRow);
        return new EdgeStretch(
            leg.Piece.Name, stretch.Name, leg.Hand, stretch.Kind, Sized.Of(first), Sized.Of(last), Sized.Of(leg.Piece.Rows.Count), leg.Upwards);
    }

    // Stitches a place, in rounds of as many places as the rate is given for; the larger numbers come first. A round begun along one edge is
    // ended along the next.
    private static void Along(
        List<Phrase> phrases, PickUpLeg leg, Stitch stitch, Dictionary<(int, int), int> phases, bool isFirst, bool chainCounts)
    {
        var (rate, per) = Lowest(leg.Rate, leg.Per);
        var phase = phases.GetValueOrDefault((rate, per));
        phases[(rate, per)] = (phase + leg.Stretch.Count) % per;
        var name = NameOf(leg.Stretch.Kind);
        var places = leg.Stretch.Count;
        var done = 0;
        if (isFirst && places > 0)
        {
            // Rounds begin with the larger number, so the first place has a stitch at least.
            var here = InPlace(rate, per, 0) - (chainCounts ? 1 : 0);
            if (here > 0) phrases.Add(new StitchesIn(stitch, HookInto.BothLoops, Sized.Of(here), new SamePlace(name)));
            done = 1;
        }

        while (done < places && ((phase + done) % per != 0 || places - done < per))
        {
            Add(phrases, stitch, InPlace(rate, per, (phase + done) % per), 1, name);
            done++;
        }

        var rounds = (places - done) / per;
        if (rounds == 0) return;
        if (per == 1)
        {
            Add(phrases, stitch, rate, rounds, name);
            return;
        }

        var round = new List<Phrase>();
        for (var i = 0; i < per; i++) Add(round, stitch, InPlace(rate, per, i), 1, name);
        if (rounds == 1) phrases.AddRange(round);
        else phrases.Add(new Repeated(new(round), Sized.Of(rounds)));
        for (var i = 0; i < (places - done) % per; i++) Add(phrases, stitch, InPlace(rate, per, i), 1, name);
    }

    private static int InPlace(int rate, int per, int place) => (rate / per) + (place < rate % per ? 1 : 0);

    private static void Add(List<Phrase> phrases, Stitch stitch, int each, int places, PlaceName name) => phrases.Add(each == 0
        ? new SkipPlaces(Sized.Of(places), name, false)
        : new StitchesIn(stitch, HookInto.BothLoops, Sized.Of(each), new NextPlaces(Sized.Of(places), name, false)));

    private static (int Rate, int Per) Lowest(int rate, int per)
    {
        var (a, b) = (rate, per);
        while (b != 0) (a, b) = (b, a % b);
        return a == 0 ? (rate, Math.Max(1, per)) : (rate / a, per / a);
    }

    private static PlaceName NameOf(StretchKind kind) => kind switch
    {
        StretchKind.RowEnds => PlaceName.RowEnd,
        StretchKind.Foundation or StretchKind.AddedChain => PlaceName.Chain,
        _ => PlaceName.AnyStitch,
    };
}
