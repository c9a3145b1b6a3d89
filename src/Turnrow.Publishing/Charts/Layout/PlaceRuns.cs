using Turnrow.Fabric.Places;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Walks the runs of a row's places from some place on, leaving repeats together.</summary>
internal static class PlaceRuns
{
    /// <summary>The runs from a place to the end, each list with how often it comes.</summary>
    public static IEnumerable<(IReadOnlyList<PlaceRun> Runs, int Times)> From(PlaceSequence places, int start)
    {
        foreach (var segment in places.Segments)
        {
            if (start >= segment.Count)
            {
                start -= segment.Count;
                continue;
            }

            var whole = start / segment.UnitCount;
            var within = start % segment.UnitCount;
            if (within > 0) yield return (RestOf(segment.Unit, within), 1);
            var times = segment.Times - whole - (within > 0 ? 1 : 0);
            if (times > 0) yield return (segment.Unit, times);
            start = 0;
        }
    }

    private static List<PlaceRun> RestOf(IReadOnlyList<PlaceRun> unit, int start)
    {
        var rest = new List<PlaceRun>();
        foreach (var run in unit)
        {
            var passed = Math.Min(start, run.Count);
            start -= passed;
            if (run.Count > passed) rest.Add(run with { Count = run.Count - passed });
        }

        return rest;
    }
}
