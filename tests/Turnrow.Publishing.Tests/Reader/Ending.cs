namespace Turnrow.Publishing.Tests.Reader;

/// <summary>`As Row 2, ending in top of beginning ch`.</summary>
internal static class Ending
{
    public static List<Step> In(string top, List<Step> steps)
    {
        for (var i = steps.Count - 1; i >= 0; i--)
        {
            var changed = steps[i] switch
            {
                WorkInto { Places.Where: Where.TopOf } work => work with { Places = Renamed(work.Places, top) },
                WorkTogether { Places: [.., { Where: Where.TopOf }] } work => work with { Places = [.. work.Places.SkipLast(1), Renamed(work.Places[^1], top)] },
                _ => steps[i],
            };
            if (ReferenceEquals(changed, steps[i])) continue;
            return [.. steps[..i], changed, .. steps[(i + 1)..]];
        }

        throw new Misread($"the row that it is like does not end in a ch");
    }

    private static PlaceWords Renamed(PlaceWords words, string top) => words with { Names = [new PlaceName(top)] };
}
