using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>A round as it is drawn round the middle.</summary>
/// <param name="row">The round in columns.</param>
/// <param name="ground">What it stands on.</param>
/// <param name="shape">The line it lies on.</param>
/// <param name="inner">How far out its foot is.</param>
/// <param name="outer">How far out its top is.</param>
/// <param name="knots">Columns and where they lie along the line at its top; between two of them stitches stand evenly.</param>
/// <param name="gap">Width of the gap between its end and its beginning, in pixels.</param>
internal sealed class RoundLayout(
    RowLayout row, RoundGround ground, RingShape shape, double inner, double outer, Knots knots, double gap)
{
    /// <summary>Room that chains take up beside a round.</summary>
    public const double RoomForChain = 14;

    private const double AboveLeaning = 0.75;

    private readonly double _start = knots.First.Along;
    private readonly double _end = knots.Last.Along;

    /// <summary>The round in columns.</summary>
    public RowLayout Row { get; } = row;

    /// <summary>What it stands on.</summary>
    public RoundGround Ground { get; } = ground;

    /// <summary>The line it lies on.</summary>
    public RingShape Shape { get; } = shape;

    /// <summary>How far out its foot is.</summary>
    public double Inner { get; } = inner;

    /// <summary>How far out its top is.</summary>
    public double Outer { get; } = outer;

    /// <summary>How high it is.</summary>
    public double Height => Outer - Inner;

    /// <summary>The way it goes: 1 against the clock, -1 with it.</summary>
    public int Direction { get; } = row.Direction;

    /// <summary>Width of the gap between its end and its beginning, in pixels.</summary>
    public double Gap { get; } = gap;

    /// <summary>The middle of the gap between its end and its beginning.</summary>
    public double Seam { get; } = shape.TurnAt(knots.First.Along - (row.Direction * gap / 2), outer);

    /// <summary>
    /// Where its number stands, from the middle: halfway between its first stitch (or the chains beside it) and its last, wherever these lean.
    /// </summary>
    public Point NumberAt
    {
        get
        {
            var strip = Row.Strip!;
            var beside = FromSeam(TurnBeside(ChainRoom));
            var (foot, top) = ChainRoom > 0 ? (beside, beside) : Leg(strip.EndCell(first: true), strip.Root.FirstFoot, 0.5);
            var (lastFoot, lastTop) = Leg(strip.EndCell(first: false), strip.Root.LastFoot, strip.Columns - 0.5);
            // Where they come together or cross at the foot there is more room above.
            var height = Direction * (foot - lastFoot) < Math.Abs(lastTop - top) / 2 ? AboveLeaning : 0.5;
            var turn = ((foot + lastFoot) / 2 * (1 - height)) + ((top + lastTop) / 2 * height);
            return Shape.At(Seam + turn, Inner + ((Outer - Inner) * height));
        }
    }

    /// <summary>Where its number stands if only a part of it is drawn: just before its beginning or just behind its end.</summary>
    public Point NumberBeside(bool beginning) => Shape.At(beginning ? TurnBeside(Gap / 2) : TurnBehind(Gap / 2), (Inner + Outer) / 2);

    /// <summary>Room in the gap for chains that are no stitch.</summary>
    public double ChainRoom => Row is { StandingChains: > 0, ChainIsStitch: false } ? RoomForChain : 0;

    /// <summary>Pixels from one stitch to the next, where it is least.</summary>
    public double Pitch => knots.Closest;

    /// <summary>Where a column of its stitches is, in working order.</summary>
    public double TurnOf(double column) => Shape.TurnAt(knots.At(column), Outer);

    /// <summary>Some pixels before its beginning.</summary>
    public double TurnBeside(double pixels) => Shape.TurnAt(_start - (Direction * pixels), Outer);

    /// <summary>Some pixels behind its end.</summary>
    public double TurnBehind(double pixels) => Shape.TurnAt(_end + (Direction * pixels), Outer);

    /// <summary>Where the foot of a stitch is.</summary>
    /// <param name="place">The place it is worked into.</param>
    /// <param name="column">Where it stands itself.</param>
    public double FootTurn(int place, double column) => Ground.TurnOf(place) ?? TurnOf(column);

    // The foot and the top of a stitch at an end; chains of a space have no foot.
    private (double Foot, double Top) Leg(Cell? cell, int? foot, double column)
    {
        var top = FromSeam(TurnOf(column));
        return (cell is { Stitch: not null } && foot is { } place ? FromSeam(FootTurn(place, column)) : top, top);
    }

    private double FromSeam(double turn) => Compass.Between(Seam, turn);
}
