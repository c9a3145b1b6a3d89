using System.Globalization;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>
/// Sets one round round the one below: its stitches evenly along its line, corners over corners, its beginning over the beginning below unless
/// it begins elsewhere, and so far out that they have room.
/// </summary>
internal sealed class RoundFit
{
    private const int FewestCorners = 3;
    private const double FirstPitch = 18;
    private const double LeastPitch = 13;
    private const double BesideNumber = 12;
    private const double NumberHeight = 14;
    private const double BetweenNumbers = 3;
    private const double OverChain = 6;
    private const double AtCorner = 0.25;
    private const double Comfort = 1.15;
    private const double FarLean = 1.05;
    private const double FewLean = 0.1;

    private readonly Row _row;
    private readonly RoundLayout? _before;
    private readonly RoundGround _ground;
    private readonly Strip _strip;
    private readonly double _needed;
    private readonly RowLayout _flat;
    private readonly IReadOnlyList<double> _corners;
    private readonly RingShape _shape;

    private readonly double _seamBelow;

    private RoundFit(Row row, RoundLayout? before, RoundGround middle, int corners, double begins)
    {
        (_row, _before, _seamBelow) = (row, before, before?.Seam ?? begins);
        _ground = before is null ? middle : Over(before, row);
        _strip = StripBuilder.Build(row.Work!.Words, row.Work.Below, inRing: _ground.TurnOf(0) is null);
        // Chains arch over the rim: they need less than lying side by side.
        _needed = _strip.Columns > Footing.MostColumns ? _strip.Columns : Math.Min(_strip.Columns, Comfort * Footing.NeededBy(_strip));
        _flat = new RowLayout(row, _strip, _ground.Scale, 0, Knots.Even(0, row.StartsAt == Hand.Right ? 1 : -1, _strip.Columns), 1);
        var at = corners >= FewestCorners ? CornersOf.Round(row.Work.Tops) : [];
        var polygon = at.Count == corners && at.Count > 0;
        _corners = polygon ? [.. at.Select(top => (_strip.EdgeOfTop(top) + _strip.EdgeOfTop(top + 1)) / 2.0)] : [];
        _shape = polygon ? new PolygonShape(corners) : ShapeUnder(middle);
    }

    /// <summary>Lays a round out.</summary>
    /// <param name="row">The round.</param>
    /// <param name="before">The one below; null for the first.</param>
    /// <param name="middle">What the first stands on.</param>
    /// <param name="corners">Corners of the last round that is drawn.</param>
    /// <param name="begins">Where the first round begins, in turns.</param>
    public static RoundLayout Lay(Row row, RoundLayout? before, RoundGround middle, int corners, double begins) => new RoundFit(row, before, middle, corners, begins).Lay();

    /// <summary>
    /// Of the first round with corners, how far the rounds below have to be turned for its corners to lie over what they stand on.
    /// </summary>
    public static double TurnUnder(RoundLayout round, RoundLayout below)
    {
        if (round.Shape is not PolygonShape polygon || below.Shape is PolygonShape or OvalShape) return 0;
        var fit = new RoundFit(round.Row.Row, below, round.Ground, polygon.Corners, 0);
        if (fit.FootNear(fit._corners[0]) is not { } first) return 0;
        // The seam takes room between two of them: all together they lie as near as they can.
        var (corner, turn) = (polygon.NearestCorner(first), 0.0);
        for (var i = 0; i < fit._corners.Count; i++)
        {
            var over = corner + ((double)(fit._flat.Direction * i) / polygon.Corners);
            turn += Compass.Between(fit.FootNear(fit._corners[i]) ?? over, over) / polygon.Corners;
        }

        return turn;
    }

    /// <summary>What a round's number says.</summary>
    public static string NameOf(Row row) => row.Number.ToString(CultureInfo.InvariantCulture);

    private static RingShape ShapeUnder(RoundGround middle) => middle is BothSidesGround chain ? chain.Shape : CircleShape.Instance;

    private static BelowGround Over(RoundLayout before, Row row)
    {
        var turned = row.StartsAt != before.Row.Row.StartsAt;
        var count = before.Row.Strip!.Tops;
        // Where a round goes the other way from a join, the first place still comes first.
        var begunAt = (row.Work!.BegunAt + (turned ? count - 1 : 0)) % count;
        return new BelowGround(before, BelowScale.Around(before.Row.Strip, turned, begunAt), turned);
    }

    private RoundLayout Lay()
    {
        var name = NameOf(_row);
        var (across, high) = (ChartScale.TextWidth(name, ChartScale.Label), NumberHeight);
        var up = _shape.Up(_seamBelow);
        var gap = (Math.Abs(up.Y) * across) + (Math.Abs(up.X) * high) + BesideNumber + (_flat is { StandingChains: > 0, ChainIsStitch: false } ? RoundLayout.RoomForChain : 0);
        var height = Math.Max(_flat.Height, (Math.Abs(up.X) * across) + (Math.Abs(up.Y) * high) + BetweenNumbers);
        var inner = _before?.Outer ?? (_ground is RingGround ring ? ring.Reach : OverChain);
        // The first round may be drawn farther out than it is high: then the ring is wider.
        var outer = Math.Max(inner + height, ReachFor(_before is null ? FirstPitch : LeastPitch, gap));
        var ground = _ground;
        if (_before is null && _ground is RingGround small) ground = small.With(inner = outer - height);
        return new RoundLayout(_flat, ground, _shape, inner, outer, KnotsAt(outer, gap), gap);
    }

    private double ReachFor(double pitch, double gap)
    {
        if (_corners.Count == 0) return _shape.ReachFor((_needed * pitch) + gap);
        var most = _corners[0] + _strip.Columns - _corners[^1] + (gap / pitch);
        for (var i = 1; i < _corners.Count; i++) most = Math.Max(most, _corners[i] - _corners[i - 1]);
        return _shape.ReachFor(most * pitch * _corners.Count);
    }

    private Knots KnotsAt(double outer, double gap)
    {
        var length = _shape.Length(outer);
        if (_shape is PolygonShape polygon) return new Knots(OverCorners(polygon, length, gap));
        var start = _shape.Along(_seamBelow, outer) + (_flat.Direction * gap / 2);
        var leans = LeansAt(outer, start, length - gap);
        // The round is turned until the middle one of all its stitches stands straight over what it is worked into.
        var middle = leans.Count == 0 ? 0 : leans[leans.Count / 2];
        var aside = _ground is BelowGround { Scale.BegunColumns: 0 } ? 0 : middle;
        var pitch = (length - gap) / _strip.Columns;
        return IsCalm(leans, aside, pitch) ? Knots.Even(start + aside, _flat.Direction * pitch, _strip.Columns) : OverFeet(outer, start + middle, length - gap);
    }

    // Stitches stand evenly if hardly one leans by more than the width of one.
    private static bool IsCalm(List<double> leans, double aside, double pitch)
    {
        var far = 0;
        foreach (var lean in leans) far += Math.Abs(lean - aside) > FarLean * Math.Min(pitch, ChartScale.Column) ? 1 : 0;
        return far <= leans.Count * FewLean;
    }

    // By how much each stitch leans if all stand evenly, from the least to the most.
    private List<double> LeansAt(double outer, double start, double length)
    {
        var leans = new List<double>();
        if (_strip.Columns > Footing.MostColumns) return leans;
        var feet = new FeetAlong(_ground, _shape, outer, start);
        _strip.Visit(0, _strip.Columns, cell =>
        {
            if (cell.Cell.Stitch is not null && feet.Of(cell) is { } foot) leans.Add(foot - start - (_flat.Direction * length * cell.Middle / _strip.Columns));
        });
        leans.Sort();
        return leans;
    }

    private Knots OverFeet(double outer, double start, double length)
    {
        var direction = _flat.Direction;
        var feet = new FeetAlong(_ground, _shape, outer, start);
        var evened = _row.Work!.Tops.Kinds().Any(static kind => kind.Place.Kind == PlaceKind.Space) ? 0 : Footing.Evened;
        var knots = Footing.Over(_strip, cell => (direction * feet.Of(cell) * (1 - evened)) + (((direction * start) + (length * cell.Middle / _strip.Columns)) * evened), Math.Min(ChartScale.Column, length / _strip.Columns), length, isRound: true);
        return new Knots([.. knots!.Select(knot => knot with { Along = direction * knot.Along })]);
    }

    private List<Knot> OverCorners(PolygonShape polygon, double length, double gap)
    {
        var direction = _flat.Direction;
        var before = _corners[0];
        var after = _strip.Columns - _corners[^1];
        var first = FirstCorner(polygon, before, after) * length;
        var side = length / polygon.Corners;
        var pitch = (side - gap) / (before + after);
        var knots = new List<Knot> { new(0, first - (direction * before * pitch)) };
        for (var i = 0; i < _corners.Count; i++) knots.Add(new Knot(_corners[i], first + (direction * i * side)));
        knots.Add(new Knot(_strip.Columns, knots[^1].Along + (direction * after * pitch)));
        return knots;
    }

    // The corner that the first one lies over; of a first round, which has nothing below, the one next to its beginning.
    private double FirstCorner(PolygonShape polygon, double before, double after)
    {
        var half = _flat.Direction * 0.5 / polygon.Corners;
        if (_before is not null && FootNear(_corners[0]) is { } foot) return polygon.NearestCorner(foot);
        return SeamSide(polygon) + (before < AtCorner * (before + after) ? -half : half);
    }

    private double SeamSide(PolygonShape polygon) => Math.Round(_seamBelow * polygon.Corners, MidpointRounding.AwayFromZero) / polygon.Corners;

    // Where the stitches on both sides of a column go into, in the middle between them.
    private double? FootNear(double column)
    {
        const double reach = 4;
        var (before, after) = (default((double Turn, double Apart)?), default((double Turn, double Apart)?));
        _strip.Visit(Math.Max(0, column - reach), column + reach, cell =>
        {
            if (cell.Cell.Stitch is null || cell.Cell.Columns == 0 || _ground.TurnOf(cell.Foot) is not { } foot) return;
            var apart = cell.Middle - column;
            if (apart <= 0 && (before is null || -apart < before.Value.Apart)) before = (foot, -apart);
            if (apart >= 0 && (after is null || apart < after.Value.Apart)) after = (foot, apart);
        });
        if ((before ?? after) is not { } one || (after ?? before) is not { } other) return null;
        return one.Turn + (Compass.Between(one.Turn, other.Turn) / 2);
    }

    /// <summary>Where feet are along a round's line. The first one says which of all turns is meant, each next one goes on from it.</summary>
    private sealed class FeetAlong(RoundGround ground, RingShape shape, double outer, double near)
    {
        private readonly double _whole = shape.Length(outer);
        private double _last = near;

        public double? Of(PlacedCell cell)
        {
            if (ground.TurnOf(cell.Foot) is not { } first || ground.TurnOf(cell.Foot + cell.Cell.Feet - 1) is not { } last) return null;
            var along = shape.Along(first + (Compass.Between(first, last) / 2), outer);
            return _last = along + (_whole * Math.Round((_last - along) / _whole, MidpointRounding.AwayFromZero));
        }
    }
}
