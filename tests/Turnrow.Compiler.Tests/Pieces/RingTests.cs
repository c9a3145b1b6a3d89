using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Rings, both sides of a chain, and how rounds follow each other.</summary>
public sealed class RingTests
{
    private const string Square = """
        piece back
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring = 12, 4 sp

        """;

    [Theory]
    [InlineData("6 sc in ring", 6)]
    [InlineData("12 dc in ring", 12)]
    [InlineData("(3 dc, ch 2, mark corner) 4 times in ring", 12)]
    [InlineData("(dc, ch 1) 6 times in ring", 6)]
    [InlineData("((2 dc, ch 1) 2 times, 3 tr) 3 times in ring", 21)]
    [InlineData("3 sc in ring, ch 2, 3 sc in ring", 6)]
    public void Any_number_goes_into_a_ring(string words, int stitches)
    {
        Assert.Equal([stitches], Compiled.Of($"piece back\nbegin with ring\nround 1: {words} = {stitches}\nfasten off\n").Clean().Counts());
        Assert.Equal([stitches], Compiled.Of($"piece back\nbegin with ring of 5 chains\nrow 1 WS: {words} = {stitches}\nfasten off\n").Clean().Counts());
    }

    [Theory]
    [InlineData("begin with ring\nround 1: sc around", "ring-place")]
    [InlineData("begin with ring\nround 1: 2 dc in next", "ring-place")]
    [InlineData("begin with ring\nround 1: ch 3", "ring-place")]
    [InlineData("begin with ring\nround 1: 6 sc in ring\nround 2: 6 sc in ring", "ring-place")]
    [InlineData("begin with 6 stitches\nround 1: 6 sc in ring", "ring-place")]
    [InlineData("begin with ring\nround 1: (2 sc, skip 1) 3 times in ring", "not-in-one-place")]
    [InlineData("begin with ring\nround 1: (sc, sc inc) 3 times in ring", "not-in-one-place")]
    [InlineData("begin with ring\nround 1: (sc) around in ring", "bracket-both")]
    [InlineData("begin with ring\nround 1: (sc in next, sc) 3 times in ring", "not-in-one-place")]
    [InlineData("begin with both sides of 1 stitch\nround 1: 6 sc in corner", "both-sides-short")]
    public void What_does_not_go_into_a_ring_is_told(string lines, string name) =>
        Assert.Equal([name], Compiled.Of($"piece back\n{lines}\n").Found);

    [Theory]
    [InlineData("((3 dc, ch 2, 3 dc) in next corner, ch 1) around", "((3 dc, ch 2, 3 dc) in next corner, ch 1, (3 dc in next ch-1 sp, ch 1) until 3 remain before corner) around")]
    [InlineData("(dc to corner, (2 dc, ch 2, 2 dc) in corner) around", "(dc to corner, (2 dc, ch 2, 2 dc) in corner) around, dc around")]
    public void A_square_of_two_hundred_rounds_is_written_as_short_as_one_of_twenty(string second, string others)
    {
        var rows = Compiled.Of($"piece back\nbegin with ring\nround 1: (3 dc, ch 2, mark corner) 4 times in ring\nround 2: {second}\nrounds 3 to 200: {others}\n").Clean().Piece("back", 0).Rows;
        Assert.All(rows, row => Assert.InRange(row.Work!.Tops.Segments.Sum(segment => segment.Unit.Count), 1, 40));
    }

    [Fact]
    public void A_counted_chain_stands_for_the_first_stitch_in_the_ring()
    {
        var row = Compiled.Of("piece back\nbegin with ring\nround 1: 12 dc in ring\n").Row(1);
        Assert.Equal((RowBegins.Ring, true, true, 3), (row.Begins, row.IsRound, row.Work!.Opening.Counts, row.Work.Opening.Chains));
        Assert.Equal(0, Assert.IsType<RingStart>(Compiled.Of("piece back\nbegin with ring\nround 1: 12 dc in ring\n").Piece("back", 0).Start).Chains);
    }

    [Fact]
    public void A_spiral_has_no_chain_and_a_chain_only_where_it_begins()
    {
        var rows = Compiled.Of("rounds are spiral\npiece back\nbegin with ring\nround 1: 6 sc in ring\nround 2: inc 6 evenly = 12\nround 3: sc around\nstraight 2 rounds\n").Clean().Piece("back", 0).Rows;
        Assert.Equal([1, 0, 0, 0, 0], rows.Select(row => row.Work!.Opening.Chains));
        Assert.Equal(RowBegins.Spiral, rows[4].Begins);
        Assert.All(rows, row => Assert.True(row.RightSide));
    }

    [Fact]
    public void A_spiral_may_go_over_into_joined_rounds_and_rows()
    {
        var rows = Compiled.Of("piece back\nrounds are spiral\nbegin with ring\nround 1: 6 sc in ring\nround 2: sc around\nrounds are joined\nround 3: sc around\nround 4: sc around\nrow WS: sc across\nround: sc around\nrounds are spiral\nround: sc around\nround: sc around\n").Clean().Piece("back", 0).Rows;
        Assert.Equal(
            [RowBegins.Ring, RowBegins.Spiral, RowBegins.Round, RowBegins.Round, RowBegins.Turned, RowBegins.Turned, RowBegins.Round, RowBegins.Spiral],
            rows.Select(row => row.Begins));
    }

    [Fact]
    public void Turned_rounds_take_turns_with_their_sides_and_meet_the_join_first()
    {
        var compiled = Compiled.Of("rounds are joined and turned\npiece back\nbegin with 12 stitches\nround 1: dc 3, mark corner, dc around\nround 2 WS: dc, dc to corner, 3 dc in corner, dc around = 14\nround 3 RS: dc until 1 remains before corner, dc around\nstraight 4 rounds, end WS\n");
        Assert.Equal(["rows-fix"], compiled.Found);
        var rows = compiled.Piece("back", 0).Rows;
        Assert.Equal([true, false, true], rows.Take(3).Select(row => row.RightSide));
        // In round 1 it is the 3rd; turned, the place of the join still comes first, and then the last ones: the 11th.
        Assert.Equal(10, CornerAt(rows[1].Work!.Below));
        // Nine and the first of three came before it.
        Assert.Equal(11, CornerAt(rows[1].Work!.Tops));
        Assert.Equal(3, CornerAt(rows[2].Work!.Below));
    }

    [Fact]
    public void A_round_that_goes_to_a_corner_begins_there_and_ends_with_what_was_before_it()
    {
        var work = Compiled.Of(Square + "round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) 3 times, (2 dc, ch 2, 2 dc) in corner, dc around = 28\nfasten off\n").Clean().Row(2).Work!;
        Assert.Equal(3, work.BegunAt);
        Assert.True(work.Below.First.IsCorner);
        Assert.False(work.Below.Last.IsCorner);
    }

    [Fact]
    public void A_round_moves_on_behind_slip_stitches_and_nothing_is_left()
    {
        var rows = Compiled.Of("piece back\nbegin with 10 stitches\nround 1: dc, ch 1, skip 1, dc around\nround 2: slip over 1, dc in next sp, dc around = 10\nround 3: slip over 4, dc around\nfasten off\n").Clean().Piece("back", 0).Rows;
        Assert.Equal([0, 1, 4], rows.Select(row => row.Work!.BegunAt));
        Assert.Equal([9, 10, 10], rows.Select(row => row.Work!.Stitches));
    }

    [Fact]
    public void Before_the_first_round_there_is_nothing_to_slip_over() =>
        Assert.Equal(["step-in-round"], Compiled.Of("piece back\nbegin with 10 stitches\nround 1: slip over 2, dc around\n").Found);

    [Theory]
    [InlineData(Square + "round 2: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around, slip over 2\n")]
    [InlineData("piece back\nbegin with 10 stitches\nround 1: dc around\nround 2: dc 8, leave 2\n")]
    public void Nothing_is_left_at_the_end_of_a_round(string lines) => Assert.Single(Compiled.Of(lines).Found);

    [Fact]
    public void Rounds_that_begin_elsewhere_are_not_mirrored_but_may_be_turned_over()
    {
        const string second = "round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) 3 times, (2 dc, ch 2, 2 dc) in corner, dc around = 28\nfasten off\n";
        Assert.Contains("round-mirrored", Compiled.Of(Square + second + "piece front is back mirrored\n").Found);
        var over = Compiled.Of(Square + second + "piece front is back mirrored, turned over\n");
        Assert.DoesNotContain("round-mirrored", over.Found);
        Assert.Equal([12, 28], over.Counts("front"));
        Assert.Equal(3, over.Row(2, "front").Work!.BegunAt);
        var slipped = Compiled.Of("piece back\nbegin with 10 stitches\nround 1: dc around\nround 2: slip over 4, dc around\nfasten off\npiece front is back mirrored, turned over\n");
        Assert.Equal(4, slipped.Row(2, "front").Work!.BegunAt);
    }

    [Fact]
    public void Both_sides_of_a_chain_are_worked_round_with_one_place_at_each_end()
    {
        var compiled = Compiled.Of("piece back\nbegin with both sides of 10 stitches = 18\nround 1: 3 sc in corner, sc to corner, 3 sc in corner, sc around = 22\nround 2: (sc to corner, 3 sc in corner) around, sc around = 26\nfasten off\n").Clean();
        Assert.Equal(11, Assert.IsType<BothSidesStart>(compiled.Piece("back", 0).Start).Chains);
        Assert.Equal((RowBegins.BothSides, 2), (compiled.Row(1).Begins, compiled.Row(1).Work!.Opening.FirstStitchIn));
    }

    [Fact]
    public void A_round_that_goes_to_the_next_corner_begins_there_and_ends_past_what_is_before_it()
    {
        var compiled = Compiled.Of(Square + "round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around = 24, 8 sp\nround 3: ((3 dc, ch 2, 3 dc) in next corner, ch 1, 3 dc in next ch-1 sp, ch 1) around = 36, 12 sp\nfasten off\n").Clean();
        Assert.Equal(3, compiled.Row(3).Work!.BegunAt);
    }

    [Fact]
    public void Behind_the_last_corner_of_a_round_comes_its_first_one()
    {
        var compiled = Compiled.Of(Square + "round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around = 24, 8 sp\nrounds 3 to 9: ((3 dc, ch 2, 3 dc) in next corner, ch 1, (3 dc in next ch-1 sp, ch 1) until 3 remain before corner) around = 108, 36 sp\nround: dc in each st and sp, remove corners\nfasten off\n");
        Assert.Equal([12, 24, 36, 48, 60, 72, 84, 96, 108], compiled.Counts().Take(9));
    }

    private static int CornerAt(Turnrow.Fabric.Places.PlaceSequence places) => new Turnrow.Fabric.Places.PlaceCursor(places).ToCorner();
}
