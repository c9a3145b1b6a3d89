namespace Turnrow.Fabric.Places;

/// <summary>Puts a row's places together, run by run, joining what is alike.</summary>
/// <param name="most">How many places there may be; how long a row may become where it is worked.</param>
internal sealed class PlaceSequenceBuilder(long most = PlaceSequenceBuilder.MostPlaces)
{
    // A list that is full goes into the sequence as it is, and what comes after it begins one of its own: a copy of each would cost more
    // than working the row.
    private List<PlaceSegment>? _segments;
    private List<PlaceRun>? _open;

    // Places that come once and were whole elsewhere, taken as they are; they are copied when something joins them.
    private PlaceSegment? _whole;

    /// <summary>The most runs that a repeated unit may hold; beyond that a row is refused, not laid out.</summary>
    public const int LongestUnit = 20_000;

    /// <summary>The most places that a row may have.</summary>
    public const int MostPlaces = 10_000_000;

    private long _count;

    /// <summary>True once the row has become longer than can be laid out; the result is then of no use.</summary>
    public bool TooLong { get; private set; }

    public void Add(Place place, int count)
    {
        if (count <= 0 || !Grow((long)count * Math.Max(1, place.Chains))) return;
        OpenWhole();
        _open ??= [];
        if (_open.Count > 0 && _open[^1].Place == place) _open[^1] = new PlaceRun(place, _open[^1].Count + count);
        else _open.Add(new PlaceRun(place, count));
    }

    public void Add(PlaceSegment segment)
    {
        if (segment.Times == 1 && _whole is null && _open is null)
        {
            if (Grow(segment.LengthOfUnit())) _whole = segment;
            return;
        }

        if (segment.Times == 1)
        {
            for (var i = 0; i < segment.Unit.Count; i++) Add(segment.Unit[i].Place, segment.Unit[i].Count);
            return;
        }

        if (!Grow(segment.LengthOfUnit() * segment.Times)) return;
        Close();
        _segments ??= [];
        if (_segments.Count > 0 && _segments[^1].HasSameUnit(segment))
        {
            _segments[^1] = new PlaceSegment(segment.Unit, _segments[^1].Times + segment.Times);
            return;
        }

        _segments.Add(segment);
    }

    /// <summary>Adds so many places ahead of a cursor, which passes them; they must be there. Repeats that lie within stay repeats.</summary>
    public void AddAhead(ref PlaceCursor cursor, int count)
    {
        while (count > 0)
        {
            if (cursor.AtRepeat(out var segment, out var times) && segment.UnitCount <= count)
            {
                var units = Math.Min(times, count / segment.UnitCount);
                Add(units == segment.Times ? segment : new PlaceSegment(segment.Unit, units));
                cursor.Pass(units * segment.UnitCount);
                count -= units * segment.UnitCount;
                continue;
            }

            var run = cursor.CurrentRun(count);
            Add(run.Place, run.Count);
            cursor.Pass(run.Count);
            count -= run.Count;
        }
    }

    public void Add(PlaceSequence sequence)
    {
        for (var i = 0; i < sequence.Segments.Count; i++) Add(sequence.Segments[i]);
    }

    /// <summary>Adds a sequence so many times over.</summary>
    public void AddTimes(PlaceSequence sequence, int times)
    {
        if (times <= 0 || sequence.Count == 0) return;
        if (times == 1)
        {
            Add(sequence);
        }
        else if (sequence.Segments is [{ Unit: [var only] } segment])
        {
            if ((long)only.Count * segment.Times * times > most) TooLong = true;
            else Add(only.Place, only.Count * segment.Times * times);
        }
        else
        {
            AddRepeats(sequence, times);
        }
    }

    // A unit holds runs only, so a repeat within a repeat is laid out flat, or the outer one is: whichever is the shorter to write. The sides of a
    // square stay the four that they are, however wide they grow, and the scallops of an edging stay one unit.
    private void AddRepeats(PlaceSequence sequence, int times)
    {
        var (flat, apart) = (FlatLength(sequence), RunsOf(sequence) * times);
        if (Math.Min(flat, apart) > LongestUnit)
        {
            TooLong = true;
        }
        else if (flat <= apart)
        {
            Add(new PlaceSegment(Flatten(sequence), times));
        }
        else
        {
            for (var i = 0; i < times && !TooLong; i++) Add(sequence);
        }
    }

    /// <summary>Makes a corner of the place added last; false if there is none.</summary>
    public bool MarkLast()
    {
        OpenLast();
        if (_open is not { Count: > 0 }) return false;
        var last = _open[^1];
        if (last.Place.IsCorner) return true;
        _open.RemoveAt(_open.Count - 1);
        if (last.Count > 1) _open.Add(new PlaceRun(last.Place, last.Count - 1));
        _open.Add(new PlaceRun(last.Place with { IsCorner = true }, 1));
        return true;
    }

    /// <summary>Adds chains to the space added last; there must be one.</summary>
    public void WidenLast(int chains)
    {
        OpenLast();
        if (_open is not { Count: > 0 } || !Grow(chains)) return;
        var last = _open[^1];
        _open.RemoveAt(_open.Count - 1);
        if (last.Count > 1) _open.Add(new PlaceRun(last.Place, last.Count - 1));
        _open.Add(new PlaceRun(last.Place with { Chains = last.Place.Chains + chains }, 1));
    }

    public PlaceSequence Build()
    {
        Close();
        if (_segments is not { Count: > 0 }) return PlaceSequence.Empty;
        if (_segments.Count > 1) RepeatJoiner.Join(_segments);
        var built = new PlaceSequence(_segments);
        _segments = null;
        return built;
    }

    private static long FlatLength(PlaceSequence sequence)
    {
        long length = 0;
        for (var i = 0; i < sequence.Segments.Count; i++) length += (long)sequence.Segments[i].Unit.Count * sequence.Segments[i].Times;
        return length;
    }

    private static long RunsOf(PlaceSequence sequence)
    {
        long runs = 0;
        for (var i = 0; i < sequence.Segments.Count; i++) runs += sequence.Segments[i].Unit.Count;
        return runs;
    }

    private static List<PlaceRun> Flatten(PlaceSequence sequence)
    {
        var runs = new List<PlaceRun>((int)FlatLength(sequence));
        for (var i = 0; i < sequence.Segments.Count; i++)
        {
            for (var time = 0; time < sequence.Segments[i].Times; time++) runs.AddRange(sequence.Segments[i].Unit);
        }

        return runs;
    }

    private bool Grow(long count)
    {
        _count += count;
        if (_count > most) TooLong = true;
        return !TooLong;
    }

    // The last time of a repeat stands by itself, so that its last place can be another one.
    private void OpenLast()
    {
        OpenWhole();
        if (_open is { Count: > 0 } || _segments is not { Count: > 0 }) return;
        var last = _segments[^1];
        _segments.RemoveAt(_segments.Count - 1);
        if (last.Times > 1) _segments.Add(new PlaceSegment(last.Unit, last.Times - 1));
        _open = [.. last.Unit];
    }

    private void OpenWhole()
    {
        if (_whole is not { } whole) return;
        _open = [.. whole.Unit];
        _whole = null;
    }

    private void Close()
    {
        if (_whole is { } whole)
        {
            (_segments ??= []).Add(whole);
            _whole = null;
        }

        if (_open is not { Count: > 0 }) return;
        (_segments ??= []).Add(new PlaceSegment(_open, 1));
        _open = null;
    }
}
