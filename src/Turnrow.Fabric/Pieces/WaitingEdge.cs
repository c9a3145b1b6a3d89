using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// What waits at one edge: stitches that rows have left for later. They lie behind what the last row made, in the order in which a row that
/// goes to this edge meets them.
/// </summary>
internal sealed class WaitingEdge
{
    private readonly List<WaitingStitches> _parts = [];
    private PlaceSequence? _places;

    /// <summary>The waiting places in working order; null for none.</summary>
    public PlaceSequence? Places => _places is { Count: > 0 } ? _places : null;

    /// <summary>How many wait.</summary>
    public int Count => _places?.Count ?? 0;

    /// <summary>The line of the row that left the outermost of them.</summary>
    public Origin Origin { get; private set; }

    /// <summary>The row that left the outermost of them.</summary>
    public int LeftBy => _parts.Count > 0 ? _parts[^1].LeftBy : 0;

    /// <summary>Stitches to be left at this edge, as statements said, by the next row that goes there.</summary>
    public int Asked { get; set; }

    /// <summary>The last line that asked for it.</summary>
    public Origin AskedBy { get; set; }

    /// <summary>Nothing waits, and nothing is asked for.</summary>
    public void Clear()
    {
        _parts.Clear();
        _places = null;
        Asked = 0;
    }

    /// <summary>
    /// A row has been worked over its own places and the first of those that wait: the first are taken, what it leaves goes before the others.
    /// </summary>
    /// <param name="row">The row's number.</param>
    /// <param name="taken">How many of the waiting places it takes.</param>
    /// <param name="left">What it leaves; null for nothing.</param>
    /// <param name="origin">The line that made it.</param>
    /// <returns>The waiting stitches that it takes.</returns>
    public IReadOnlyList<WaitingStitches> Work(int row, int taken, PlaceSequence? left, Origin origin)
    {
        var over = Take(taken);
        if (left is not { Count: > 0 }) return over;
        if (_parts.Count == 0) Origin = origin;
        _parts.Insert(0, new WaitingStitches(row, 0, left.Count));
        _places = _places is null ? left : left.Then(_places);
        return over;
    }

    private List<WaitingStitches> Take(int count)
    {
        var over = new List<WaitingStitches>();
        if (count == 0) return over;
        _places = count == Count ? null : _places!.Slice(count, Count - count);
        while (count > 0)
        {
            var part = _parts[0];
            var taken = Math.Min(count, part.Count);
            over.Add(part with { Count = taken });
            _parts.RemoveAt(0);
            if (taken < part.Count) _parts.Insert(0, part with { From = part.From + taken, Count = part.Count - taken });
            count -= taken;
        }

        return over;
    }
}
