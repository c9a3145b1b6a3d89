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
        SampleRounds.Oval, SampleRounds.OvalFromCorner, SampleRounds.Turned, SampleRounds.Hat, SampleRounds.Doily,
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
        Assert.True(stack.Extent.Width <= 880);
        Assert.All(stack.Rounds, static round => Assert.True(round.Pitch >= 12.9));
    }

    [Theory]
    [InlineData(SampleRounds.WideLace, 8)]
    [InlineData(SampleRounds.WideTurned, 12)]
    public void Of_what_is_too_wide_a_part_of_every_round_is_drawn(string lines, int parts)
    {
        var piece = SampleRounds.Piece(lines);
        var stack = RoundStack.Of(piece)!;
        Assert.Equal(piece.Rows.Count, stack.Rounds.Count);
        Assert.Equal(parts, stack.Wedge!.Value.Parts);
        Assert.True(stack.Extent is { Width: <= 880, Height: <= 1000 });
        RoundChecks.Check(stack, clear: false);
        RoundChecks.PartsAreTheWhole(stack);
    }

    [Theory]
    [InlineData(SampleRounds.Circle)]
    [InlineData(SampleRounds.Turned)]
    [InlineData(SampleRounds.Hat)]
    public void Where_rounds_only_grow_evenly_each_stitch_stands_over_its_place(string lines)
    {
        foreach (var round in Stack(lines).Rounds.Skip(1))
        {
            var (far, all) = (0, 0);
            round.Row.Strip!.Visit(0, round.Row.Strip.Columns, cell =>
            {
                var lean = Math.Abs(Compass.Between(round.FootTurn(cell.Foot, cell.Middle), round.TurnOf(cell.Middle))) * round.Shape.Length(round.Outer);
                Assert.InRange(lean, 0, 2 * Math.Max(round.Pitch, ChartScale.Column));
                far += lean > 1.05 * Math.Max(round.Pitch, ChartScale.Column) ? 1 : 0;
                all++;
            });
            Assert.InRange(far, 0, all / 10);
        }
    }

    [Fact]
    public void Corners_that_come_out_of_a_circle_lie_over_what_they_stand_on()
    {
        var rounds = Stack(SampleRounds.CircleToSquare).Rounds;
        Assert.IsType<CircleShape>(rounds[1].Shape);
        var square = rounds[2];
        Assert.IsType<PolygonShape>(square.Shape);
        var corners = 0;
        foreach (var top in CornersOf.Round(square.Row.Row.Work!.Tops))
        {
            var column = square.Row.Strip!.EdgeOfTop(top) + 0.5;
            square.Row.Strip.Visit(column - 2, column, cell => Assert.InRange(Math.Abs(Compass.Between(square.FootTurn(cell.Foot, column), square.TurnOf(column))), 0, 0.05));
            corners++;
        }

        Assert.Equal(4, corners);
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
