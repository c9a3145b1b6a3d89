namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// Sets the stitches of a row over what they are worked into: each straight over it where there is room, those that crowd side by side, in the
/// middle over all that they are worked into. Chains arch from one stitch to the next, whatever they lead over.
/// </summary>
internal sealed class Footing
{
    /// <summary>Of more columns, stitches are not set one by one.</summary>
    public const int MostColumns = 1000;

    /// <summary>How far plain stitches go from over their feet to where they would stand evenly.</summary>
    public const double Evened = 0.35;

    private const double ClosestChain = 0.27;
    private const double NarrowestArch = 0.5;

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
        GroupByFoot();
    }

    /// <summary>Columns that the row needs where it stands closest: its chains arch as steeply as can be read.</summary>
    private double Needed => _stitches.Count == 0 ? 0 : _leading + _stitches.Sum(static stitch => stitch.Room) + ((_stitches[0].Columns + _stitches[^1].Columns) / 2.0) + _trailing;

    /// <summary>Columns that a row needs where all of it stands side by side.</summary>
    public static double NeededBy(Strip strip) => new Footing(strip, static _ => 0).Needed;

    /// <summary>Sets a row.</summary>
    /// <param name="strip">The row in columns.</param>
    /// <param name="footOf">Where a stitch's foot is along the line, in working order upwards; null for one that has none.</param>
    /// <param name="pitch">From one stitch to the next that stands beside it.</param>
    /// <param name="length">All that there is; infinite for a row that may grow as wide as it needs.</param>
    /// <param name="isRound">True if it leads round to its beginning.</param>
    /// <returns>Null if no stitch has a foot.</returns>
    public static IReadOnlyList<Knot>? Over(Strip strip, Func<PlacedCell, double?> footOf, double pitch, double length, bool isRound = false)
    {
        var footing = new Footing(strip, footOf);
        if (footing._stitches.Count == 0) return null;
        pitch = Math.Min(pitch, length / footing.Needed);
        return footing.KnotsOf(footing.Middles(pitch, length), pitch, isRound ? length : null);
    }

    // What stands in one place stands over it as a whole, and weighs the less the more it is, since it spreads anyhow.
    private void GroupByFoot()
    {
        for (var (first, next) = (0, 0); first < _stitches.Count; first = next)
        {
            var columns = 0;
            for (next = first; next < _stitches.Count && _stitches[next].Foot == _stitches[first].Foot; next++) columns += _stitches[next].Columns;
            for (var i = first; i < next; i++) _stitches[i] = _stitches[i] with { Weight = _stitches[i].Weight / (columns * (next - first)), First = first, Last = next - 1 };
        }
    }

    // Where each would stand if the stitches before it stood side by side from 0 on.
    private double[] SideBySide(double pitch)
    {
        var middles = new double[_stitches.Count];
        var room = 0.0;
        for (var i = 0; i < middles.Length; i++) middles[i] = room += _stitches[i].Room * pitch;
        return middles;
    }

    // Whatever comes too close is pooled, and a pool stands where most in its middle stand straight.
    private double[] Middles(double pitch, double length)
    {
        var middles = SideBySide(pitch);
        var asked = new double[middles.Length];
        for (var i = 0; i < asked.Length; i++)
        {
            var (first, last) = (_stitches[i].First, _stitches[i].Last);
            var group = middles[first] + middles[last] + ((_stitches[last].Columns - _stitches[first].Columns) * pitch / 2);
            asked[i] = _stitches[i].Foot - (group / 2);
        }

        var pools = Pools(asked);
        var places = Places(pools, asked);

        // What is left when all have room is how far the pools may lie apart.
        var slack = Math.Max(0, length - (Needed * pitch));
        var from = places[0] + (Math.Max(0, places[^1] - places[0] - slack) / 2);
        for (var (pool, next) = (0, 0); pool < pools.Count; pool++)
        {
            for (var i = 0; i < pools[pool].Stitches; i++, next++) middles[next] += Math.Clamp(places[pool], from, from + slack);
        }

        return middles;
    }

    // Least squares under the condition that all have their room.
    private List<Pool> Pools(double[] asked)
    {
        var pools = new List<Pool>();
        for (var i = 0; i < asked.Length; i++)
        {
            var pool = new Pool(asked[i], _stitches[i].Weight, 1);
            while (pools.Count > 0 && pools[^1].At >= pool.At)
            {
                pool = pools[^1].With(pool);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        return pools;
    }

    private double[] Places(List<Pool> pools, double[] asked)
    {
        var places = new double[pools.Count];
        for (var (pool, first) = (0, 0); pool < pools.Count; first += pools[pool++].Stitches)
        {
            var leans = new List<Lean>(pools[pool].Stitches);
            for (var i = first; i < first + pools[pool].Stitches; i++) leans.Add(new Lean(asked[i], _stitches[i].Weight));
            var least = pool == 0 ? double.NegativeInfinity : places[pool - 1];
            var most = pool == pools.Count - 1 ? double.PositiveInfinity : pools[pool + 1].At;
            places[pool] = Math.Clamp(Lean.MiddleOf(leans), least, Math.Max(least, most));
        }

        return places;
    }

    private List<Knot> KnotsOf(double[] middles, double pitch, double? round)
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
            knots.Add(new Knot(_columns, round is { } length ? Math.Max(knots[0].Along + length, knots[^1].Along + (pitch / 2)) : knots[^1].Along + ((_columns - knots[^1].Column) * pitch)));
        return knots;
    }

    /// <summary>A stitch, its columns, where its feet are, how much it weighs (the less the more it spreads over one foot), and the room it needs from the middle of the one before, in columns.</summary>
    private readonly record struct Footed(int Column, int Columns, double Foot, double Weight, double Room)
    {
        /// <summary>The first of those in the same place.</summary>
        public int First { get; init; }

        /// <summary>The last of those in the same place.</summary>
        public int Last { get; init; }
    }

    private readonly record struct Pool(double At, double Weight, int Stitches)
    {
        public Pool With(Pool next) => new(((At * Weight) + (next.At * next.Weight)) / (Weight + next.Weight), Weight + next.Weight, Stitches + next.Stitches);
    }
}
