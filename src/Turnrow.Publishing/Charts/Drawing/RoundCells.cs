using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>A round drawn round the middle.</summary>
internal sealed class RoundCells(RoundStack stack, RoundLayout round, Point middle) : CellGround
{
    private const double BesideFirst = 8;

    private readonly double _stretch = round.Height / round.Row.Height;

    /// <inheritdoc/>
    public override RowLayout Row => round.Row;

    /// <inheritdoc/>
    public override double Height => round.Row.Height;

    /// <inheritdoc/>
    public override double Pitch => round.Pitch / ChartScale.Column;

    /// <inheritdoc/>
    public override IEnumerable<Columns> Open => [stack.Open(round)];

    /// <inheritdoc/>
    public override bool IsOpen(int column) => stack.Open(round).From <= column;

    /// <inheritdoc/>
    public override bool IsInRing => round.Ground.TurnOf(0) is null;

    /// <inheritdoc/>
    public override Stand Head(double column, double above) => At(round.TurnOf(column), above * _stretch);

    /// <inheritdoc/>
    public override Stand Foot(int place, double column, HookInto hook)
    {
        var turn = round.FootTurn(place, column);
        return new Stand(middle + GroundOf(hook.RowsDown()).At(turn, FootAbove(hook.RowsDown() > 0 ? HookInto.BothLoops : hook)), round.Shape.Up(turn));
    }

    /// <inheritdoc/>
    public override Stand Beside(double above) => At(round.TurnBeside(BesideFirst), above * _stretch);

    /// <summary>A point over a place of the round's line.</summary>
    public Stand At(double turn, double above) => new(middle + round.Shape.At(turn, round.Inner + above), round.Shape.Up(turn));

    // A spike leads down to what a round further in stands on, and no further than the middle.
    private RoundGround GroundOf(int down) => stack.Rounds[Math.Max(0, Row.Row.Number - 1 - down)].Ground;
}
