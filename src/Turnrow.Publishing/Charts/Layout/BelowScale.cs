namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// The columns of what a row is worked over, in the row's working order: chains added at its start, the row before (turned, so met from its
/// other end; of rounds from its beginning) without what is left, chains added at its end.
/// </summary>
internal sealed class BelowScale
{
    private readonly Strip? _before;
    private readonly Func<double, double>? _along;
    private readonly bool _turned;
    private readonly int _added;
    private readonly int _left;
    private readonly int _ofBefore;
    private readonly int _begunAt;

    private BelowScale(Strip? before, Func<double, double>? along, bool turned, int added, int left, int ofBefore, int addedAtEnd, int begunAt = 0)
    {
        _before = before;
        _along = along;
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
    public static BelowScale Even(int count) => new(null, null, true, 0, 0, count, 0);

    /// <summary>Places of the row before, with what the steps leave and add.</summary>
    public static BelowScale Over(RowLayout before, bool turned, int added, int left, int leftAtEnd, int addedAtEnd) =>
        new(before.Strip!, before.TopColumn, turned, added, left, before.Strip!.Tops - left - leftAtEnd, addedAtEnd);

    /// <summary>Places of the round before, all round from one of them on.</summary>
    public static BelowScale Around(Strip before, bool turned, int begunAt) => new(before, null, turned, 0, 0, before.Tops, 0, begunAt);

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
    public double Middle(int place)
    {
        var inBefore = place - _added;
        if (_before is null || _begunAt > 0 || inBefore < 0 || inBefore >= _ofBefore) return (Edge(place) + Edge(place + 1)) / 2.0;
        var met = _left + inBefore;
        var top = _turned ? _before.Tops - 1 - met : met;
        return _added + Met((_before.EdgeOfTop(top) + _before.EdgeOfTop(top + 1)) / 2.0) - LeftColumns;
    }

    private double Around(int places) => places <= _ofBefore ? Met(places) : Met(_ofBefore) + Met(places - _ofBefore);

    // Columns of so many places of the row before, those that are met first.
    private double Met(int places) => Met((double)_before!.EdgeOfTop(_turned ? _before.Tops - places : places));

    // How far a column of the row before is from where it is met first.
    private double Met(double column)
    {
        var from = _turned ? _before!.Columns : 0;
        return _along is null ? Math.Abs(column - from) : Math.Abs(_along(column) - _along(from));
    }
}
