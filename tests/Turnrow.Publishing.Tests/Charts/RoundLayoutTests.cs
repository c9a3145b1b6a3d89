using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

public sealed class RoundLayoutTests
{
    public static TheoryData<string> Samples =>
    [
        SampleRounds.Circle, SampleRounds.Blanket, SampleRounds.Square, SampleRounds.FromCorner, SampleRounds.Hexagon,
        SampleRounds.Oval, SampleRounds.Turned, SampleRounds.Hat, SampleRounds.Doily,
    ];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Rounds_lie_as_they_are_worked(string lines) => RoundChecks.Check(Stack(lines), clear: true);

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.125)]
    [InlineData(0.25)]
    [InlineData(0.6)]
    [InlineData(0.99)]
    [InlineData(-3.3)]
    public void Directions_are_those_of_the_circle(double turn)
    {
        var up = Compass.Up(turn);
        Assert.Equal(-Math.Sin(2 * Math.PI * turn), up.X, 9);
        Assert.Equal(-Math.Cos(2 * Math.PI * turn), up.Y, 9);
    }

    [Fact]
    public void A_line_can_be_walked_and_asked_where_one_is()
    {
        foreach (var shape in (RingShape[])[CircleShape.Instance, new PolygonShape(4), new PolygonShape(6), new OvalShape(90)])
        {
            for (var turn = -1.4; turn < 2; turn += 0.07) Assert.Equal(turn, shape.TurnAt(shape.Along(turn, 80), 80), 9);
            Assert.Equal(shape.Length(80), shape.Along(1.3, 80) - shape.Along(0.3, 80), 6);
            Assert.Equal(80, shape.ReachFor(shape.Length(80)), 6);
            // Walked in small steps it is as long as it says.
            var walked = 0.0;
            for (var i = 0; i < 2400; i++) walked += (shape.At((i + 1) / 2400.0, 80) - shape.At(i / 2400.0, 80)).Length;
            Assert.InRange(walked / shape.Length(80), 0.999, 1.001);
        }
    }

    [Theory]
    [InlineData(SampleRounds.Square, 4)]
    [InlineData(SampleRounds.FromCorner, 4)]
    [InlineData(SampleRounds.Hexagon, 6)]
    public void Corners_lie_in_line_and_equally_far_apart(string lines, int corners)
    {
        foreach (var round in Stack(lines).Rounds)
        {
            Assert.Equal(corners, Assert.IsType<PolygonShape>(round.Shape).Corners);
            foreach (var top in CornersOf.Round(round.Row.Row.Work!.Tops))
            {
                var turn = round.TurnOf((round.Row.Strip!.EdgeOfTop(top) + round.Row.Strip.EdgeOfTop(top + 1)) / 2.0) * corners;
                Assert.Equal(0.5, Compass.Within(turn), 9);
            }
        }
    }

    [Fact]
    public void A_square_has_straight_sides()
    {
        var shape = new PolygonShape(4);
        for (var turn = -0.12; turn <= 0.12; turn += 0.03) Assert.Equal(-50, shape.At(turn, 50).Y, 9);
        Assert.Equal(new Point(-50, -50), Rounded(shape.At(0.125, 50)));
    }

    [Fact]
    public void An_oval_stands_over_its_chain()
    {
        var stack = Stack(SampleRounds.Oval);
        var chain = Assert.IsType<BothSidesGround>(stack.Middle);
        Assert.Equal(10, chain.Stitches);
        // The first chain is the right end, the tenth place the left one, and each chain is met from both sides.
        Assert.Equal(new Point(90, 0), Rounded(chain.Shape.At(chain.TurnOf(0)!.Value, 0)));
        Assert.Equal(new Point(-90, 0), Rounded(chain.Shape.At(chain.TurnOf(9)!.Value, 0)));
        for (var i = 1; i < 9; i++) Assert.Equal(Rounded(chain.Shape.At(chain.TurnOf(i)!.Value, 0)), Rounded(chain.Shape.At(chain.TurnOf(18 - i)!.Value, 0)));
    }

    [Fact]
    public void Turned_rounds_go_the_other_way() =>
        Assert.Equal([1, -1, 1, -1], Stack(SampleRounds.Turned).Rounds.Select(static round => round.Direction));

    [Fact]
    public void The_sides_of_a_hat_are_bands()
    {
        var piece = SampleRounds.Piece(SampleRounds.Hat);
        var stack = RoundStack.Of(piece)!;
        Assert.Equal((5, 0), (stack.Rounds.Count, stack.Left));
        var bands = ChartLayout.Of(piece, Fabric.Stitches.Terms.US, stack.Count)!;
        Assert.Equal(6, bands.Rows[0].Row.Number);
        Assert.Equal(new HiddenRows(7, 10, 2, false), Assert.Single(bands.Bands.OfType<HiddenBand>()).Rows);
    }

    [Fact]
    public void A_blanket_is_drawn_as_far_as_it_can_be_read()
    {
        var stack = Stack(SampleRounds.Blanket);
        Assert.Equal(200, stack.Count);
        Assert.InRange(stack.Rounds.Count, 6, 20);
        Assert.True(stack.HalfWidth <= 440);
        Assert.All(stack.Rounds, static round => Assert.True(round.Pitch >= 12.9));
    }

    [Theory]
    [InlineData("  begin with 60 stitches\n  round 1: dc around\n  straight 8 rounds")]
    [InlineData("  begin with 12 stitches\n  round 1: dc around\n  straight 8 rounds")]
    [InlineData("  begin with 12 stitches\n  row 1 RS: dc across\n  straight 8 rows")]
    [InlineData("  begin with both sides of 100 stitches\n  round 1: (3 sc in corner, sc to corner) around")]
    public void What_does_not_grow_from_a_middle_stays_in_bands(string lines) => Assert.Null(RoundStack.Of(SampleRounds.Piece(lines)));

    private static RoundStack Stack(string lines) => RoundStack.Of(SampleRounds.Piece(lines))!;

    private static Point Rounded(Point point) => new(Math.Round(point.X, 6) + 0.0, Math.Round(point.Y, 6) + 0.0);
}
