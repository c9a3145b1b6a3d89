namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// The columns of what a row is worked over, in the row's working order: chains added at its start, the row before (turned, so met from its
/// other end; of rounds from its beginning) without what is left, chains added at its end.
/// </summary>
internal sealed class BelowScale
{
    private readonly Strip? _before;
    private readonly double _pitch;
    private readonly bool _turned;
    private readonly int _added;
    private readonly int _left;
    private readonly int _ofBefore;
    private readonly int _begunAt;

    private BelowScale(Strip? before, double pitch, bool turned, int added, int left, int ofBefore, int addedAtEnd, int begunAt = 0)
    {
        _before = before;
        _pitch = pitch;
        _turned = turned;
        _added = added;
        _left = left;
        _ofBefore = ofBefore;
        Count = added + ofBefore + addedAtEnd;
        _begunAt = begunAt;
        BegunColumns = begunAt == 0 ? 0 : Met(begunAt);
        LeftColumns = before is null ? left : Met(left);
        Columns = Edge(Count);
    }

    /// <summary>Number of places.</summary>
    public int Count { get; }

    /// <summary>Columns of all of them.</summary>
    public double Columns { get; }

    /// <summary>Columns of the places left at the start, which lie before column 0.</summary>
    public double LeftColumns { get; }

    /// <summary>Of a round, columns of the places that are met last because it begins behind them.</summary>
    public double BegunColumns { get; }

    /// <summary>Places as wide as one stitch each: a foundation, an edge, the row of an earlier piece.</summary>
    public static BelowScale Even(int count) => new(null, 1, true, 0, 0, count, 0);

    /// <summary>Places of the row before, with what the steps leave and add.</summary>
    public static BelowScale Over(Strip before, double pitch, bool turned, int added, int left, int leftAtEnd, int addedAtEnd) =>
        new(before, pitch, turned, added, left, before.Tops - left - leftAtEnd, addedAtEnd);

    /// <summary>Places of the round before, all round from one of them on.</summary>
    public static BelowScale Around(Strip before, bool turned, int begunAt) => new(before, 1, turned, 0, 0, before.Tops, 0, begunAt);

    /// <summary>The column where a place starts; of the number of places, where the last one ends.</summary>
    public double Edge(int place)
    {
        if (place <= _added) return place;
        if (_begunAt > 0) return Around(_begunAt + Math.Min(place, Count)) - BegunColumns;
        var inBefore = Math.Min(place - _added, _ofBefore);
        var end = _before is null ? inBefore : Met(_left + inBefore) - LeftColumns;
        return _added + end + (place - _added - inBefore);
    }

    /// <summary>The middle of a place.</summary>
    public double Middle(int place) => (Edge(place) + Edge(place + 1)) / 2.0;

    private double Around(int places) => places <= _ofBefore ? Met(places) : Met(_ofBefore) + Met(places - _ofBefore);

    // Columns of so many places of the row before, those that are met first.
    private double Met(int places) =>
        (_turned ? _before!.Columns - _before.EdgeOfTop(_before.Tops - places) : _before!.EdgeOfTop(places)) * _pitch;
}
