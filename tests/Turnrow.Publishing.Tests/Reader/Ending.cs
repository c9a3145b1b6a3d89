namespace Turnrow.Publishing.Tests.Reader;

/// <summary>`As Row 2, ending in top of beginning ch`, `ending in 3rd ch of turning ch-5`.</summary>
internal static class Ending
{
    public static List<Step> In(string top, (int Nth, int Of)? chain, List<Step> steps)
    {
        for (var i = steps.Count - 1; i >= 0; i--)
        {
            var changed = steps[i] switch
            {
                WorkInto { Places.Where: Where.TopOf or Where.ChainOf } work => work with { Places = Renamed(top, chain) },
                WorkGroup { Places.Where: Where.TopOf or Where.ChainOf } group => group with { Places = Renamed(top, chain) },
                WorkTogether { Places: [.., { Where: Where.TopOf or Where.ChainOf }] } work => work with { Places = [.. work.Places.SkipLast(1), Renamed(top, chain)] },
                _ => steps[i],
            };
            if (ReferenceEquals(changed, steps[i])) continue;
            return [.. steps[..i], changed, .. steps[(i + 1)..]];
        }

        throw new Misread($"the row that it is like does not end in a ch");
    }

    private static PlaceWords Renamed(string top, (int Nth, int Of)? chain) => chain is { } nth
        ? new PlaceWords(Where.ChainOf, nth.Nth, [new PlaceName(top, nth.Of)])
        : new PlaceWords(Where.TopOf, 1, [new PlaceName(top)]);
}
