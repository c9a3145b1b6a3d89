namespace Turnrow.Fabric.Places;

/// <summary>Where the hook is along the row below.</summary>
public struct PlaceCursor
{
    private readonly PlaceSequence _places;
    private int _segment;
    private int _repeat;
    private int _run;
    private int _offset;

    /// <summary>Before the first place.</summary>
    /// <param name="places">The row's places in working order.</param>
    public PlaceCursor(PlaceSequence places)
    {
        _places = places;
        Remaining = places.Count;
    }

    /// <summary>Places not yet reached.</summary>
    public int Remaining { get; private set; }

    /// <summary>The place ahead; there must be one.</summary>
    public readonly Place Next => _places.Segments[_segment].Unit[_run].Place;

    /// <summary>The like places ahead, at most so many.</summary>
    public readonly PlaceRun CurrentRun(int atMost)
    {
        var run = _places.Segments[_segment].Unit[_run];
        return new PlaceRun(run.Place, Math.Min(atMost, run.Count - _offset));
    }

    /// <summary>
    /// If the cursor stands at the beginning of a unit that comes more than once, that unit and how often it is still to come.
    /// </summary>
    public readonly bool AtRepeat(out PlaceSegment segment, out int times)
    {
        segment = _segment < _places.Segments.Count ? _places.Segments[_segment] : null!;
        times = segment is null ? 0 : segment.Times - _repeat;
        return segment is not null && _run == 0 && _offset == 0 && times > 1;
    }

    /// <summary>Goes on by so many places; they must be there.</summary>
    public void Pass(int count)
    {
        Remaining -= count;
        while (count > 0)
        {
            var segment = _places.Segments[_segment];
            if (_run == 0 && _offset == 0 && count >= segment.UnitCount)
            {
                var units = Math.Min(count / segment.UnitCount, segment.Times - _repeat);
                count -= units * segment.UnitCount;
                _repeat += units;
                if (_repeat == segment.Times) ToNextSegment();
                continue;
            }

            var here = Math.Min(count, segment.Unit[_run].Count - _offset);
            count -= here;
            _offset += here;
            if (_offset == segment.Unit[_run].Count) ToNextRun(segment);
        }
    }

    /// <summary>
    /// How many more times a step like the one from <paramref name="before"/> to here can be taken and meet exactly the same places.
    /// </summary>
    public readonly int LikeStepsAhead(PlaceCursor before)
    {
        if (_segment != before._segment || Remaining == before.Remaining) return 0;
        var segment = _places.Segments[_segment];
        if (_repeat == before._repeat && _run == before._run)
        {
            return (segment.Unit[_run].Count - _offset) / (_offset - before._offset);
        }

        var units = _repeat - before._repeat;
        if (_run != before._run || _offset != before._offset) return 0;
        // From the middle of a unit the last one can only be begun, not passed.
        return (segment.Times - _repeat - (_run == 0 && _offset == 0 ? 0 : 1)) / units;
    }

    /// <summary>
    /// The same, at most so many times and wherever the places are written, for a step that looks at so many places behind it. The chain that stands
    /// for a stitch is met as that stitch.
    /// </summary>
    public readonly int LikeStepsAhead(PlaceCursor before, int looksAhead, int atMost)
    {
        var took = before.Remaining - Remaining;
        if (took <= 0) return 0;
        var most = ((long)atMost * took) + looksAhead;
        var (first, again) = (before, this);
        var alike = 0L;
        while (alike < most && again.Remaining > 0)
        {
            if (SameRepeats(first, again) is > 0 and var repeats)
            {
                first.Pass(repeats);
                again.Pass(repeats);
                alike += repeats;
                continue;
            }

            var (one, other) = (first.CurrentRun(int.MaxValue), again.CurrentRun(int.MaxValue));
            if (AsStitch(one.Place) != AsStitch(other.Place)) break;
            var both = Math.Min(one.Count, other.Count);
            first.Pass(both);
            again.Pass(both);
            alike += both;
        }

        return (int)(Math.Max(0, Math.Min(alike, most) - looksAhead) / took);
    }

    private static int SameRepeats(PlaceCursor one, PlaceCursor other) =>
        one.AtRepeat(out var here, out var times) && other.AtRepeat(out var there, out var others) && here.HasSameUnit(there) ? Math.Min(times, others) * here.UnitCount : 0;

    private static Place AsStitch(Place place) => place.Kind == PlaceKind.TurningChain ? place with { Kind = PlaceKind.Stitch } : place;

    /// <summary>How many places there are before the next corner; below 0 if there is none ahead.</summary>
    public readonly int ToCorner()
    {
        if (!_places.HasCorners) return -1;
        var ahead = this;
        while (ahead.Remaining > 0)
        {
            if (ahead.AtRepeat(out var segment, out var times) && !segment.HasCorner)
            {
                ahead.Pass(times * segment.UnitCount);
                continue;
            }

            var run = ahead.CurrentRun(int.MaxValue);
            if (run.Place.IsCorner) return Remaining - ahead.Remaining;
            ahead.Pass(run.Count);
        }

        return -1;
    }

    private void ToNextRun(PlaceSegment segment)
    {
        _offset = 0;
        if (++_run < segment.Unit.Count) return;
        _run = 0;
        if (++_repeat == segment.Times) ToNextSegment();
    }

    // Only from the beginning of a unit.
    private void ToNextSegment()
    {
        _segment++;
        _repeat = 0;
    }
}
