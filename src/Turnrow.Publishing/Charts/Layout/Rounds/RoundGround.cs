using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>What a round of a chart stands on: where the places lie that it is worked into.</summary>
internal abstract class RoundGround
{
    /// <summary>The columns of the places, in the order in which the round meets them.</summary>
    public abstract BelowScale Scale { get; }

    /// <summary>Where the middle of a place is; null if it takes all stitches wherever they stand, as a ring does.</summary>
    public abstract double? TurnOf(int place);

    /// <summary>A point at a place, so far out from the line that the places lie on.</summary>
    public abstract Point At(double turn, double above);
}

/// <summary>The ring or the small ring of chains in the middle.</summary>
/// <param name="places">Places of the ring: one for a ring that takes any number of stitches, else its chains.</param>
/// <param name="chains">Its chains; 0 for a ring of yarn.</param>
/// <param name="reach">Its radius.</param>
/// <param name="begins">Where its first place begins, in turns.</param>
internal sealed class RingGround(int places, int chains, double reach, double begins = 0) : RoundGround
{
    /// <inheritdoc/>
    public override BelowScale Scale { get; } = BelowScale.Even(places);

    /// <summary>Its radius.</summary>
    public double Reach => reach;

    /// <summary>Its chains; 0 for a ring of yarn.</summary>
    public int Chains => chains;

    /// <summary>The same, wider.</summary>
    public RingGround With(double newReach) => new(places, chains, newReach, begins);

    /// <summary>The same, turned on.</summary>
    public RingGround Turned(double newBegins) => new(places, chains, reach, newBegins);

    /// <summary>Where its first place begins, in turns.</summary>
    public double Begins => begins;

    /// <inheritdoc/>
    public override double? TurnOf(int place) => places == 1 ? null : begins + ((place + 0.5) / places);

    /// <inheritdoc/>
    public override Point At(double turn, double above) => CircleShape.Instance.At(turn, reach + above);
}

/// <summary>A chain that is worked into on both sides. Its ends are one place each: the right one is met first.</summary>
/// <param name="stitches">Its chains.</param>
internal sealed class BothSidesGround(int stitches) : RoundGround
{
    private const double HalfChain = 4;

    private readonly OvalShape _shape = new((stitches - 1) * ChartScale.Column / 2);

    /// <summary>The oval round it.</summary>
    public OvalShape Shape => _shape;

    /// <summary>Its chains.</summary>
    public int Stitches => stitches;

    /// <inheritdoc/>
    public override BelowScale Scale { get; } = BelowScale.Even(2 * (stitches - 1));

    /// <inheritdoc/>
    public override double? TurnOf(int place)
    {
        var side = stitches - 1;
        var half = place < side ? 0 : 0.5;
        var at = place % side;
        return half + (at == 0 ? -0.25 : (0.25 * at / side) - 0.125);
    }

    /// <inheritdoc/>
    public override Point At(double turn, double above) => _shape.At(turn, above + HalfChain);
}

/// <summary>The round below.</summary>
internal sealed class BelowGround(RoundLayout below, BelowScale scale, bool turned) : RoundGround
{
    /// <inheritdoc/>
    public override BelowScale Scale => scale;

    /// <inheritdoc/>
    public override double? TurnOf(int place) => TurnAt(scale.Middle(place));

    /// <summary>Where a column of what is met is.</summary>
    public double TurnAt(double column)
    {
        var columns = below.Row.Strip!.Columns;
        var met = scale.BegunColumns + column;
        if (met > columns) met -= columns;
        return below.TurnOf(turned ? columns - met : met);
    }

    /// <inheritdoc/>
    public override Point At(double turn, double above) => below.Shape.At(turn, below.Outer + above);
}
