namespace Turnrow.Fabric.Places;

/// <summary>
/// Takes into a repeat what stands beside it and is one more of it. A row that is worked a little to the side of the repeats below would else peel
/// one off at each end, and so would the next, until the row was as long as it is wide.
/// </summary>
internal static class RepeatJoiner
{
    /// <summary>Joins repeats with what is beside them.</summary>
    public static void Join(List<PlaceSegment> segments)
    {
        for (var i = 0; i < segments.Count; i++)
        {
            if (segments[i] is not { Times: > 1, Unit.Count: > 1 }) continue;
            while (i + 1 < segments.Count && TakesNext(segments, i))
            {
            }

            while (i > 0 && TakesLast(segments, i, out var isGone))
            {
                if (isGone) i--;
            }
        }
    }

    private static bool TakesNext(List<PlaceSegment> segments, int at)
    {
        var (unit, next) = (segments[at].Unit, segments[at + 1]);
        if (next.Times > 1) return JoinsNext(segments, at);
        if (next.Unit.Count < unit.Count) return false;
        for (var i = 0; i < unit.Count; i++)
        {
            var (one, other) = (unit[i], next.Unit[i]);
            if (one.Place != other.Place || (i < unit.Count - 1 ? one.Count != other.Count : one.Count > other.Count)) return false;
        }

        var rest = new List<PlaceRun>(next.Unit.Skip(unit.Count));
        var over = next.Unit[unit.Count - 1].Count - unit[^1].Count;
        if (over > 0) rest.Insert(0, new PlaceRun(unit[^1].Place, over));
        segments[at] = new PlaceSegment(unit, segments[at].Times + 1);
        Replace(segments, at + 1, rest);
        return true;
    }

    private static bool TakesLast(List<PlaceSegment> segments, int at, out bool isGone)
    {
        isGone = false;
        var (unit, last) = (segments[at].Unit, segments[at - 1]);
        if (last.Times > 1 || last.Unit.Count < unit.Count) return false;
        var from = last.Unit.Count - unit.Count;
        for (var i = 0; i < unit.Count; i++)
        {
            var (one, other) = (unit[i], last.Unit[from + i]);
            if (one.Place != other.Place || (i > 0 ? one.Count != other.Count : one.Count > other.Count)) return false;
        }

        var rest = new List<PlaceRun>(last.Unit.Take(from));
        var over = last.Unit[from].Count - unit[0].Count;
        if (over > 0) rest.Add(new PlaceRun(unit[0].Place, over));
        segments[at] = new PlaceSegment(unit, segments[at].Times + 1);
        isGone = rest.Count == 0;
        Replace(segments, at - 1, rest);
        return true;
    }

    private static bool JoinsNext(List<PlaceSegment> segments, int at)
    {
        var next = segments[at + 1];
        if (!next.Unit.SequenceEqual(segments[at].Unit)) return false;
        segments[at] = new PlaceSegment(next.Unit, segments[at].Times + next.Times);
        segments.RemoveAt(at + 1);
        return true;
    }

    private static void Replace(List<PlaceSegment> segments, int at, List<PlaceRun> runs)
    {
        if (runs.Count > 0) segments[at] = new PlaceSegment(runs, 1);
        else segments.RemoveAt(at);
    }
}
