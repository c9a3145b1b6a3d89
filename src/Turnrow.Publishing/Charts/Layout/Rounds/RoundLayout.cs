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
    RowLayout row, RoundGround ground, RingShape shape, double inner, double outer, IReadOnlyList<Knot> knots, double gap)
{
    /// <summary>Room that chains take up beside a round.</summary>
    public const double RoomForChain = 14;

    private readonly double _start = knots[0].Along;
    private readonly double _end = knots[^1].Along;

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
    public double Seam { get; } = shape.TurnAt(knots[0].Along - (row.Direction * gap / 2), outer);

    /// <summary>
    /// Where its number stands, from the middle: halfway between its first stitch (or the chains beside it) and its last, wherever these lean.
    /// </summary>
    public Point NumberAt
    {
        get
        {
            var strip = Row.Strip!;
            var first = ChainRoom > 0 ? FromSeam(TurnBeside(ChainRoom)) : Leg(_start, strip.EndCell(first: true), strip.Root.FirstFoot, 0.5);
            var last = Leg(_end, strip.EndCell(first: false), strip.Root.LastFoot, strip.Columns - 0.5);
            return Shape.At(Seam + ((first + last) / 2), (Inner + Outer) / 2);
        }
    }

    /// <summary>Room in the gap for chains that are no stitch.</summary>
    public double ChainRoom => Row is { StandingChains: > 0, ChainIsStitch: false } ? RoomForChain : 0;

    /// <summary>Pixels from one stitch to the next, where it is least.</summary>
    public double Pitch { get; } = PitchOf(knots);

    /// <summary>Where a column of its stitches is, in working order.</summary>
    public double TurnOf(double column)
    {
        var (low, high) = (0, knots.Count - 2);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (knots[middle].Column <= column) low = middle;
            else high = middle - 1;
        }

        var (from, to) = (knots[low], knots[low + 1]);
        var part = to.Column > from.Column ? (column - from.Column) / (to.Column - from.Column) : 0;
        return Shape.TurnAt(from.Along + (part * (to.Along - from.Along)), Outer);
    }

    /// <summary>Some pixels before its beginning.</summary>
    public double TurnBeside(double pixels) => Shape.TurnAt(_start - (Direction * pixels), Outer);

    /// <summary>Some pixels behind its end.</summary>
    public double TurnBehind(double pixels) => Shape.TurnAt(_end + (Direction * pixels), Outer);

    /// <summary>Where the foot of a stitch is.</summary>
    /// <param name="place">The place it is worked into.</param>
    /// <param name="column">Where it stands itself.</param>
    public double FootTurn(int place, double column) => Ground.TurnOf(place) ?? TurnOf(column);

    // Halfway up a stitch at an end; of a space, the end itself.
    private double Leg(double along, Cell? cell, int? foot, double column) => cell is { Stitch: not null } && foot is { } place
        ? (FromSeam(FootTurn(place, column)) + FromSeam(TurnOf(column))) / 2
        : FromSeam(Shape.TurnAt(along, Outer));

    private double FromSeam(double turn) => Compass.Between(Seam, turn);

    private static double PitchOf(IReadOnlyList<Knot> knots)
    {
        var least = double.PositiveInfinity;
        for (var i = 1; i < knots.Count; i++)
        {
            var columns = knots[i].Column - knots[i - 1].Column;
            if (columns > 0) least = Math.Min(least, Math.Abs(knots[i].Along - knots[i - 1].Along) / columns);
        }

        return least;
    }
}

/// <summary>Where a column lies along a round's line.</summary>
internal readonly record struct Knot(double Column, double Along);
