namespace Turnrow.Fabric.Places;

/// <summary>
/// The places of a row in the order in which they were made, as runs and repeats of runs: as long as what was written,
/// not as the row is wide.
/// </summary>
public sealed class PlaceSequence : IEquatable<PlaceSequence>
{
    private PlaceSequence? _reversed;
    private int? _hash;
    private IReadOnlyList<PlaceRun>? _kinds;

    internal PlaceSequence(IReadOnlyList<PlaceSegment> segments)
    {
        Segments = segments;
        for (var i = 0; i < segments.Count; i++)
        {
            Count += segments[i].Count;
            HasCorners |= segments[i].HasCorner;
            HasParts |= segments[i].HasPart;
        }
    }

    /// <summary>No places.</summary>
    public static PlaceSequence Empty { get; } = new([]);

    /// <summary>The segments in order.</summary>
    public IReadOnlyList<PlaceSegment> Segments { get; }

    /// <summary>Number of places.</summary>
    public int Count { get; }

    /// <summary>True if any of the places is a corner.</summary>
    public bool HasCorners { get; }

    /// <summary>True if any of the places belongs to a special stitch.</summary>
    public bool HasParts { get; }

    /// <summary>One run.</summary>
    public static PlaceSequence Of(Place place, int count) =>
        count <= 0 ? Empty : new([new PlaceSegment([new PlaceRun(place, count)], 1)]);

    /// <summary>The same places met from the other end, as after a turn.</summary>
    public PlaceSequence Reversed()
    {
        if (_reversed is not null) return _reversed;
        var segments = new PlaceSegment[Segments.Count];
        for (var i = 0; i < segments.Length; i++)
        {
            var segment = Segments[segments.Length - 1 - i];
            segments[i] = segment.Unit is [{ Place.Part: null }] ? segment : new PlaceSegment(Turned(segment.Unit), segment.Times);
        }

        _reversed = new PlaceSequence(segments) { _reversed = this };
        return _reversed;
    }

    /// <summary>These places and then those.</summary>
    public PlaceSequence Then(PlaceSequence other)
    {
        if (other.Count == 0) return this;
        if (Count == 0) return other;
        var builder = new PlaceSequenceBuilder(long.MaxValue);
        builder.Add(this);
        builder.Add(other);
        return builder.Build();
    }

    /// <summary>The places from <paramref name="start"/>, so many; both must lie within.</summary>
    public PlaceSequence Slice(int start, int count)
    {
        if (start == 0 && count == Count) return this;
        var cursor = new PlaceCursor(this);
        cursor.Pass(start);
        return Ahead(cursor, count);
    }

    /// <summary>The places of a round that begins so many places later: those before come last.</summary>
    public PlaceSequence BegunAt(int start) => start <= 0 || start >= Count ? this : Slice(start, Count - start).Then(Slice(0, start));

    /// <summary>So many places ahead of a cursor; they must be there.</summary>
    public static PlaceSequence Ahead(PlaceCursor cursor, int count)
    {
        if (count <= 0) return Empty;
        var run = cursor.CurrentRun(count);
        if (run.Count == count) return Of(run.Place, count);
        var builder = new PlaceSequenceBuilder();
        builder.AddAhead(ref cursor, count);
        return builder.Build();
    }

    /// <summary>The same places, one of them a corner, or no corner any more.</summary>
    public PlaceSequence WithCornerAt(int index, bool corner)
    {
        var cursor = new PlaceCursor(this);
        cursor.Pass(index);
        var here = cursor.Next;
        if (here.IsCorner == corner) return this;
        cursor = new PlaceCursor(this);
        var builder = new PlaceSequenceBuilder(long.MaxValue);
        builder.AddAhead(ref cursor, index);
        builder.Add(here with { IsCorner = corner }, 1);
        cursor.Pass(1);
        builder.AddAhead(ref cursor, Count - index - 1);
        return builder.Build();
    }

    /// <summary>The first place; the sequence must not be empty.</summary>
    public Place First => Segments[0].Unit[0].Place;

    /// <summary>The last place; the sequence must not be empty.</summary>
    public Place Last => Segments[^1].Unit[^1].Place;

    /// <summary>How many places satisfy a condition.</summary>
    public int CountWhere(Func<Place, bool> condition)
    {
        var count = 0;
        for (var i = 0; i < Segments.Count; i++)
        {
            var segment = Segments[i];
            for (var j = 0; j < segment.Unit.Count; j++)
            {
                if (condition(segment.Unit[j].Place)) count += segment.Unit[j].Count * segment.Times;
            }
        }

        return count;
    }

    /// <summary>The kinds of place there are, in order of first appearance, each with its number.</summary>
    public IReadOnlyList<PlaceRun> Kinds() => _kinds ??= FindKinds();

    /// <summary>True if both hold the same places in the same order and are written down the same way.</summary>
    public bool Equals(PlaceSequence? other)
    {
        if (ReferenceEquals(this, other)) return true;
        if (other is null || Count != other.Count || Segments.Count != other.Segments.Count) return false;
        for (var i = 0; i < Segments.Count; i++)
        {
            var (a, b) = (Segments[i], other.Segments[i]);
            if (a.Times != b.Times || !a.HasSameUnit(b)) return false;
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PlaceSequence);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash ??= Hash();

    private static PlaceRun[] Turned(IReadOnlyList<PlaceRun> unit)
    {
        var turned = new PlaceRun[unit.Count];
        for (var i = 0; i < turned.Length; i++)
        {
            var run = unit[turned.Length - 1 - i];
            turned[i] = run.Place.Part is { } part ? run with { Place = run.Place with { Part = part.FromOtherEnd } } : run;
        }

        return turned;
    }

    private int Hash()
    {
        var hash = new HashCode();
        for (var i = 0; i < Segments.Count; i++)
        {
            var segment = Segments[i];
            hash.Add(segment.Times);
            for (var j = 0; j < segment.Unit.Count; j++) hash.Add(segment.Unit[j]);
        }

        return hash.ToHashCode();
    }

    private List<PlaceRun> FindKinds()
    {
        var kinds = new List<PlaceRun>();
        for (var i = 0; i < Segments.Count; i++)
        {
            var segment = Segments[i];
            for (var j = 0; j < segment.Unit.Count; j++)
            {
                // Neither a marker nor what it is part of makes another kind of stitch.
                var place = segment.Unit[j].Place with { IsCorner = false, Part = null };
                var at = IndexOf(kinds, place);
                var count = segment.Unit[j].Count * segment.Times;
                if (at < 0) kinds.Add(new PlaceRun(place, count));
                else kinds[at] = new PlaceRun(place, kinds[at].Count + count);
            }
        }

        return kinds;
    }

    private static int IndexOf(List<PlaceRun> kinds, Place place)
    {
        for (var i = 0; i < kinds.Count; i++)
        {
            if (kinds[i].Place == place) return i;
        }

        return -1;
    }
}
