using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>
/// The line that a round lies on, at any distance from the middle: a circle, a polygon with its corners in line, or an oval round a chain. A
/// place on it is a turn against the clock from straight up; the same turn farther out lies straight above.
/// </summary>
internal abstract class RingShape
{
    /// <summary>Where a place lies, from the middle.</summary>
    /// <param name="turn">The place.</param>
    /// <param name="reach">How far out the line runs.</param>
    public abstract Point At(double turn, double reach);

    /// <summary>The direction out at a place, 1 long.</summary>
    public abstract Point Up(double turn);

    /// <summary>The line's whole length.</summary>
    public abstract double Length(double reach);

    /// <summary>Its length from straight up to a place; a whole turn more is a whole length more.</summary>
    public virtual double Along(double turn, double reach) => turn * Length(reach);

    /// <summary>The place at a length from straight up.</summary>
    public virtual double TurnAt(double along, double reach) => along / Length(reach);

    /// <summary>Half of its width.</summary>
    public abstract double HalfWidth(double reach);

    /// <summary>Half of its height.</summary>
    public abstract double HalfHeight(double reach);

    /// <summary>How far out the line has to run to be so long.</summary>
    public double ReachFor(double length) => (length - Length(0)) / (Length(1) - Length(0));

    /// <summary>Points on the line, close enough to draw it.</summary>
    public IEnumerable<Point> Outline(double reach)
    {
        const int points = 120;
        for (var i = 0; i < points; i++) yield return At(((double)i / points) + Offset, reach);
    }

    /// <summary>A place that the outline must not miss.</summary>
    protected virtual double Offset => 0;
}

/// <summary>A circle.</summary>
internal sealed class CircleShape : RingShape
{
    public static CircleShape Instance { get; } = new();

    /// <inheritdoc/>
    public override Point At(double turn, double reach) => Compass.Up(turn) * reach;

    /// <inheritdoc/>
    public override Point Up(double turn) => Compass.Up(turn);

    /// <inheritdoc/>
    public override double Length(double reach) => 2 * Math.PI * reach;

    /// <inheritdoc/>
    public override double HalfWidth(double reach) => reach;

    /// <inheritdoc/>
    public override double HalfHeight(double reach) => reach;
}

/// <summary>A polygon of equal sides, the middle of one of them straight up.</summary>
/// <param name="corners">How many corners it has.</param>
internal sealed class PolygonShape(int corners) : RingShape
{
    private const double NearCorner = 0.9;

    private readonly double _slope = Compass.Tangent(0.5 / corners);

    /// <summary>How many corners it has.</summary>
    public int Corners => corners;

    /// <summary>The place of the corner that is next to another place.</summary>
    public double NearestCorner(double turn) => (Math.Round((turn * corners) - 0.5, MidpointRounding.AwayFromZero) + 0.5) / corners;

    /// <inheritdoc/>
    public override Point At(double turn, double reach)
    {
        var (outwards, aside) = SideOf(turn);
        // Against the clock as it is seen is to the left of the direction out.
        return (outwards * reach) - (outwards.Across() * (aside * reach * _slope));
    }

    /// <inheritdoc/>
    public override Point Up(double turn)
    {
        var (outwards, aside) = SideOf(turn);
        var lean = (Math.Abs(aside) - NearCorner) / (1 - NearCorner);
        if (lean <= 0) return outwards;
        return (outwards - (outwards.Across() * (Math.Sign(aside) * lean * _slope))).Unit();
    }

    /// <inheritdoc/>
    public override double Length(double reach) => 2 * corners * _slope * reach;

    /// <inheritdoc/>
    public override double HalfWidth(double reach) => Farthest(reach, static point => Math.Abs(point.X));

    /// <inheritdoc/>
    public override double HalfHeight(double reach) => Farthest(reach, static point => Math.Abs(point.Y));

    /// <inheritdoc/>
    protected override double Offset => 0.5 / corners;

    private double Farthest(double reach, Func<Point, double> of)
    {
        var most = 0.0;
        for (var i = 0; i < corners; i++) most = Math.Max(most, of(At((i + 0.5) / corners, reach)));
        return most;
    }

    // The side, by its direction out, and where on it: -1 at its beginning, 1 at its end.
    private (Point Out, double Aside) SideOf(double turn)
    {
        var at = turn * corners;
        var side = Math.Floor(at + 0.5);
        return (Compass.Up(side / corners), 2 * (at - side));
    }
}

/// <summary>An oval: two straight sides over a chain that lies across, and half a circle round each of its ends.</summary>
/// <param name="half">Half of the chain's length.</param>
internal sealed class OvalShape(double half) : RingShape
{
    private const double Eighth = 0.125;

    /// <inheritdoc/>
    public override Point At(double turn, double reach)
    {
        var (aside, outwards) = PartOf(turn);
        return new Point(aside * half, 0) + (outwards * reach);
    }

    /// <inheritdoc/>
    public override Point Up(double turn) => PartOf(turn).Out;

    /// <inheritdoc/>
    public override double Length(double reach) => (4 * half) + (2 * Math.PI * reach);

    /// <inheritdoc/>
    public override double Along(double turn, double reach)
    {
        var quarter = Math.Floor((turn + Eighth) * 4);
        var part = ((turn + Eighth) * 4) - quarter;
        var pairs = Math.Floor(quarter / 2);
        var (side, end) = (2 * half, Math.PI * reach);
        var isEnd = quarter - (2 * pairs) > 0.5;
        return (pairs * (side + end)) + (isEnd ? side + (part * end) : part * side) - half;
    }

    /// <inheritdoc/>
    public override double TurnAt(double along, double reach)
    {
        var (side, end) = (2 * half, Math.PI * reach);
        var pairs = Math.Floor((along + half) / (side + end));
        var rest = along + half - (pairs * (side + end));
        return (pairs / 2) - Eighth + (rest < side ? rest / side / 4 : 0.25 + ((rest - side) / end / 4));
    }

    /// <inheritdoc/>
    public override double HalfWidth(double reach) => half + reach;

    /// <inheritdoc/>
    public override double HalfHeight(double reach) => reach;

    // Quarters of the turn from its upper right on: the upper side, the left end, the lower side, the right end.
    private static (double Aside, Point Out) PartOf(double turn)
    {
        var at = Compass.Within(turn + Eighth) * 4;
        var quarter = (int)Math.Min(3, Math.Floor(at));
        var part = at - quarter;
        return quarter switch
        {
            0 => (1 - (2 * part), new Point(0, -1)),
            1 => (-1, Compass.Up(part / 2)),
            2 => ((2 * part) - 1, new Point(0, 1)),
            _ => (1, Compass.Up(0.5 + (part / 2))),
        };
    }
}
