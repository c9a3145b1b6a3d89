using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Gives each place of a last row, or of a motif's side, the rate that is said of its kind: like places side by side become a leg of their own.
/// </summary>
internal static class PickUpKinds
{
    /// <summary>The legs, each of one rate; what nothing is said of goes to <paramref name="unsaid"/>, place by place as often as it is met.</summary>
    /// <param name="legs">The legs as they are walked, corners cut out.</param>
    /// <param name="rates">What is said.</param>
    /// <param name="size">The size.</param>
    /// <param name="unsaid">Where places are kept that no rate is said of.</param>
    public static List<PickUpLeg> CutOut(IReadOnlyList<PickUpLeg> legs, IReadOnlyList<BoundRate> rates, int size, IDictionary<Place, int> unsaid)
    {
        var result = new List<PickUpLeg>();
        var passed = 0;
        for (var i = 0; i < legs.Count; i++)
        {
            var leg = legs[i];
            passed = i > 0 && leg.Part > 0 && leg.Part == legs[i - 1].Part ? passed : 0;
            if (leg.IsCorner || leg.IsEven || PickUpPlaces.Of(leg) is not { } places || !AreTold(places, rates))
                result.Add(leg);
            else
                Cut(result, leg.Part > 0 ? leg : leg with { Part = legs.Count + i + 1 }, places.Slice(passed, leg.Stretch.Count), rates, size, unsaid);
            passed += leg.Stretch.Count;
        }

        return result;
    }

    /// <summary>What is said of a place; null if nothing is.</summary>
    public static BoundRate? RateOf(Place place, IReadOnlyList<BoundRate> rates)
    {
        BoundRate? found = null;
        foreach (var rate in rates)
        {
            if (rate.IsOf(place) && (found is null || (rate.IsNarrow && !found.IsNarrow))) found = rate;
        }

        return found;
    }

    private static bool AreTold(PlaceSequence places, IReadOnlyList<BoundRate> rates) =>
        rates.Any(static r => r.IsNarrow) || places.Kinds().Any(static k => k.Place.Kind == PlaceKind.Space);

    // Stitches have a customary rate while nothing is said of any kind.
    private static bool IsUnsaid(Place place, IReadOnlyList<BoundRate> rates) =>
        place.Kind == PlaceKind.Space || rates.Any(static r => r.Kinds.Count > 0);

    private static void Cut(List<PickUpLeg> result, PickUpLeg leg, PlaceSequence places, IReadOnlyList<BoundRate> rates, int size, IDictionary<Place, int> unsaid)
    {
        var cursor = new PlaceCursor(places);
        var (from, done) = (0, 0);
        BoundRate? rate = null;
        while (cursor.Remaining > 0)
        {
            var run = cursor.CurrentRun(int.MaxValue);
            var here = RateOf(run.Place, rates);
            if (here is null && IsUnsaid(run.Place, rates)) unsaid[run.Place] = unsaid.TryGetValue(run.Place, out var before) ? before + run.Count : run.Count;
            if (here != rate && done > from)
            {
                Add(result, leg.Slice(from, done - from), rate, size);
                from = done;
            }

            rate = here;
            cursor.Pass(run.Count);
            done += run.Count;
        }

        if (done > from) Add(result, leg.Slice(from, done - from), rate, size);
    }

    private static void Add(List<PickUpLeg> result, PickUpLeg leg, BoundRate? rate, int size) =>
        result.Add(rate is null ? leg : leg with { Rate = rate.Count[size] ?? 1, Per = rate.Per[size] ?? 1 });
}
