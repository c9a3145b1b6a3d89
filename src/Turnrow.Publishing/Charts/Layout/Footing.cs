namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// Sets the stitches of a row over what they are worked into: each straight over it where there is room, those that crowd side by side, in the
/// middle over all that they are worked into. Chains arch from one stitch to the next, whatever they lead over.
/// </summary>
internal sealed class Footing
{
    /// <summary>Of more columns, stitches are not set one by one.</summary>
    public const int MostColumns = 1000;

    private const double ClosestChain = 0.3;
    private const double NarrowestArch = 0.8;

    private readonly List<Footed> _stitches = [];
    private readonly double _leading;
    private readonly double _trailing;
    private readonly int _columns;

    private Footing(Strip strip, Func<PlacedCell, double?> footOf)
    {
        _columns = strip.Columns;
        var (before, arch) = (0.0, 0.0);
        strip.Visit(0, strip.Columns, cell =>
        {
            if (cell.Cell.Columns == 0) return;
            if (cell.Cell.Stitch is null || footOf(cell) is not { } foot)
            {
                arch += Math.Max(NarrowestArch, cell.Cell.Chains * ClosestChain);
                return;
            }

            var half = cell.Cell.Columns / 2.0;
            _stitches.Add(new Footed(cell.Column, cell.Cell.Columns, foot, cell.Cell.Feet, before + arch + half));
            (before, arch) = (half, 0);
        });
        _leading = _stitches.Count == 0 ? 0 : _stitches[0].Column;
        _trailing = arch;
        if (_stitches.Count > 0) _stitches[0] = _stitches[0] with { Room = 0 };
    }

    /// <summary>Columns that the row needs where it stands closest: its chains arch as steeply as can be read.</summary>
    private double Needed => _stitches.Count == 0 ? 0 : _leading + _stitches.Sum(static stitch => stitch.Room) + ((_stitches[0].Columns + _stitches[^1].Columns) / 2.0) + _trailing;

    /// <summary>Sets a row.</summary>
    /// <param name="strip">The row in columns.</param>
    /// <param name="footOf">Where a stitch's foot is along the line, in working order upwards; null for one that has none.</param>
    /// <param name="pitch">From one stitch to the next that stands beside it.</param>
    /// <param name="length">All that there is; infinite for a row that may grow as wide as it needs.</param>
    /// <returns>Null if no stitch has a foot.</returns>
    public static IReadOnlyList<Knot>? Over(Strip strip, Func<PlacedCell, double?> footOf, double pitch, double length = double.PositiveInfinity)
    {
        var footing = new Footing(strip, footOf);
        if (footing._stitches.Count == 0) return null;
        pitch = Math.Min(pitch, length / footing.Needed);
        return footing.KnotsOf(footing.Middles(pitch, length), pitch, length);
    }

    // Least squares under the condition that all have their room: whatever comes too close is pooled, and a pool stands over its middle.
    private double[] Middles(double pitch, double length)
    {
        var pools = new List<Pool>();
        var room = 0.0;
        foreach (var stitch in _stitches)
        {
            room += stitch.Room * pitch;
            var pool = new Pool(stitch.Foot - room, stitch.Feet, 1);
            while (pools.Count > 0 && pools[^1].At >= pool.At)
            {
                pool = pools[^1].With(pool);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        // What is left when all have room is how far the pools may lie apart.
        var slack = Math.Max(0, length - (Needed * pitch));
        var apart = pools[^1].At - pools[0].At;
        var from = pools[0].At + (Math.Max(0, apart - slack) / 2);
        var middles = new double[_stitches.Count];
        var next = 0;
        room = 0;
        foreach (var pool in pools)
        {
            for (var i = 0; i < pool.Stitches; i++, next++)
            {
                room += _stitches[next].Room * pitch;
                middles[next] = Math.Clamp(pool.At, from, from + Math.Max(slack, 0)) + room;
            }
        }

        return middles;
    }

    private List<Knot> KnotsOf(double[] middles, double pitch, double length)
    {
        var knots = new List<Knot>();
        for (var i = 0; i < middles.Length; i++)
        {
            var stitch = _stitches[i];
            var half = stitch.Columns / 2.0;
            var archBefore = i == 0 ? stitch.Column > 0 : _stitches[i - 1].Column + _stitches[i - 1].Columns < stitch.Column;
            if (archBefore || i == 0) knots.Add(new Knot(stitch.Column, middles[i] - (half * pitch)));
            var leg = half - 0.5;
            knots.Add(new Knot(stitch.Column + 0.5, middles[i] - (leg * pitch)));
            if (leg > 0) knots.Add(new Knot(stitch.Column + stitch.Columns - 0.5, middles[i] + (leg * pitch)));
            var end = stitch.Column + stitch.Columns;
            var archBehind = i == middles.Length - 1 ? end < _columns : end < _stitches[i + 1].Column;
            if (archBehind || i == middles.Length - 1) knots.Add(new Knot(end, middles[i] + (half * pitch)));
        }

        if (_leading > 0) knots.Insert(0, new Knot(0, knots[0].Along - (_leading * pitch)));
        // Of a round, chains at its end lead back to its beginning.
        if (knots[^1].Column < _columns)
            knots.Add(new Knot(_columns, double.IsInfinity(length) ? knots[^1].Along + ((_columns - knots[^1].Column) * pitch) : Math.Max(knots[0].Along + length, knots[^1].Along + (pitch / 2))));
        return knots;
    }

    /// <summary>A stitch, its columns, where its feet are, how many these are, and the room it needs from the middle of the one before, in columns.</summary>
    private readonly record struct Footed(int Column, int Columns, double Foot, int Feet, double Room);

    private readonly record struct Pool(double At, double Weight, int Stitches)
    {
        public Pool With(Pool next) => new(((At * Weight) + (next.At * next.Weight)) / (Weight + next.Weight), Weight + next.Weight, Stitches + next.Stitches);
    }
}
