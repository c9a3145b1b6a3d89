using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

/// <summary>What holds of all rounds that are drawn round their middle.</summary>
internal static class RoundChecks
{
    /// <summary>Checks it.</summary>
    /// <param name="stack">The rounds.</param>
    /// <param name="clear">True if numbers stand clear of all stitches: where rounds begin wherever chance says, they can't always.</param>
    public static void Check(RoundStack stack, bool clear)
    {
        RoundLayout? before = null;
        foreach (var round in stack.Rounds)
        {
            Assert.True(round.Outer > round.Inner);
            Assert.Equal(before?.Outer ?? round.Inner, round.Inner);
            GoesRoundOnce(round);
            round.Row.Strip!.Visit(0, round.Row.Strip.Columns, cell =>
            {
                StandsOnItsPlaces(cell, round, before);
                if (clear) NumberIsClear(cell, round);
            });
            before = round;
        }

        NumbersStandApart(stack);
    }

    /// <summary>What is drawn of each round, as often as it is worked, makes what the row model says the round makes.</summary>
    public static void PartsAreTheWhole(RoundStack stack)
    {
        foreach (var round in stack.Rounds)
        {
            var (open, made) = (stack.Open(round), 0L);
            round.Row.Strip!.Visit(open.From, open.To, cell => made += cell.Cell.Columns == 0 ? 0 : cell.Cell.Tops);
            var (shown, parts) = stack.Wedge is var (some, all, _) ? (some, all) : (1, 1);
            Assert.Equal(round.Row.Row.Work!.Tops.Count * (long)shown, made * parts);
        }
    }

    private static void GoesRoundOnce(RoundLayout round)
    {
        var columns = round.Row.Strip!.Columns;
        for (var column = 0.0; column < columns; column += 0.5)
            Assert.True(round.Direction * (round.TurnOf(column + 0.5) - round.TurnOf(column)) > 0, $"round {round.Row.Row.Number}, column {column}");
        Assert.InRange(Math.Abs(round.TurnOf(columns) - round.TurnOf(0)), 0.01, 1);
    }

    // Told from the row model's places and not from the layout's columns.
    private static void StandsOnItsPlaces(PlacedCell cell, RoundLayout round, RoundLayout? before)
    {
        if (before is null || cell.Cell.Stitch is null) return;
        var count = before.Row.Row.Work!.Tops.Count;
        var work = round.Row.Row.Work!;
        Assert.Equal(count, work.Below.Count);
        for (var i = 0; i < cell.Cell.Feet; i++)
        {
            var met = cell.Foot + i + work.BegunAt;
            // Turned, the first place comes first and the others from the last on.
            var place = round.Direction == before.Direction ? met % count : (count - (met % count)) % count;
            var middle = before.TurnOf((before.Row.Strip!.EdgeOfTop(place) + before.Row.Strip.EdgeOfTop(place + 1)) / 2.0);
            var turn = round.FootTurn(cell.Foot + i, cell.Middle);
            Assert.Equal(0, Compass.Between(middle, turn), 9);
            Assert.Equal(0, (round.Ground.At(turn, 0) - before.Shape.At(middle, before.Outer)).Length, 6);
        }
    }

    private static void NumbersStandApart(RoundStack stack)
    {
        for (var i = 0; i < stack.Rounds.Count; i++)
        {
            var (at, half) = Box(stack.Rounds[i]);
            for (var j = 0; j < i; j++)
            {
                var (other, otherHalf) = Box(stack.Rounds[j]);
                Assert.True(Math.Abs(at.X - other.X) >= half.X + otherHalf.X || Math.Abs(at.Y - other.Y) >= half.Y + otherHalf.Y, $"numbers {j + 1} and {i + 1}");
            }
        }
    }

    private static void NumberIsClear(PlacedCell cell, RoundLayout round)
    {
        if (cell.Cell.Stitch is null || cell.Cell.Tops == 0) return;
        var (at, half) = Box(round);
        for (var leg = 0; leg < cell.Cell.Legs; leg++)
        {
            var column = cell.Column + (leg * cell.Cell.Tops / cell.Cell.Legs) + 0.5;
            var foot = round.Ground.At(round.FootTurn(cell.Foot + (leg * cell.Cell.Feet / cell.Cell.Legs), column), 3);
            var head = round.Shape.At(round.TurnOf(column), round.Outer - 4);
            for (var part = 0.0; part <= 1; part += 0.05)
            {
                var apart = foot.Towards(head, part) - at;
                Assert.True(Math.Abs(apart.X) > half.X || Math.Abs(apart.Y) > half.Y, $"number {round.Row.Row.Number} and the stitch in column {column}");
            }
        }
    }

    private static (Point At, Point Half) Box(RoundLayout round) =>
        (round.NumberAt, new Point(ChartScale.TextWidth(RoundFit.NameOf(round.Row.Row), ChartScale.Label) / 2, ChartScale.Label * 0.4));
}
