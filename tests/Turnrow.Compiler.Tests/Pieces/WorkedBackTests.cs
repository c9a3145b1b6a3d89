using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Reverse single crochet: rows and rounds that go back from left to right without a turn.</summary>
public sealed class WorkedBackTests
{
    private static IReadOnlyList<Row> Rows(string lines) => Compiled.Of($"piece back\nbegin with 20 stitches\n{lines}\n").Clean().Piece("back", 0).Rows;

    [Fact]
    public void It_goes_back_on_the_same_side_and_the_next_row_goes_forth_on_it_again()
    {
        var rows = Rows("row 1 RS: sc across\nrow 2 RS: rsc across\nrow 3 RS: sc across\nrow 4 WS: sc across\nrow 5 WS: rsc across\nrow 6 WS: sc across");
        Assert.Equal([Hand.Right, Hand.Left, Hand.Right, Hand.Left, Hand.Right, Hand.Left], rows.Select(row => row.StartsAt));
        Assert.Equal([RowBegins.Foundation, RowBegins.Back, RowBegins.Back, RowBegins.Turned, RowBegins.Back, RowBegins.Back], rows.Select(row => row.Begins));
    }

    [Fact]
    public void Two_of_them_are_turned_between() =>
        Assert.Equal([(true, false), (true, true), (false, true), (false, false)], Rows("row 1 RS: sc across\nrows 2 to 3: rsc across\nrow 4: sc across").Select(row => (row.RightSide, row.IsBack)));

    [Fact]
    public void Its_words_are_met_from_the_edge_where_it_starts()
    {
        var rows = Rows("row 1 RS: sc across\nrow 2: rsc 15, ch 1, skip 1, rsc across\nrow 3: sc 4, sc in next sp, sc across = 20");
        Assert.Equal("rsc 4, sp, rsc 15", string.Join(", ", rows[1].Work!.Tops.Reversed().Segments.SelectMany(s => s.Unit).Select(run => run.Place.Stitch is { } stitch ? $"{stitch} {run.Count}" : "sp")));
    }

    [Fact]
    public void A_round_of_it_begins_at_the_join_and_meets_the_others_from_the_last()
    {
        var rows = Rows("round 1: sc 3, mark corner, sc around\nround 2: rsc 18, 3 rsc in corner, rsc around = 22\nround 3: sc to corner, 3 sc in corner, sc around = 24");
        Assert.Equal([RowBegins.Ring, RowBegins.RoundBack, RowBegins.RoundBack], rows.Select(row => row.Begins));
        Assert.All(rows, row => Assert.True(row.RightSide));
    }

    [Fact]
    public void Where_rounds_are_turned_it_is_not() =>
        Assert.Equal([true, false, false, false, true], Rows("rounds are joined and turned\nround 1: sc around\nround 2: sc around\nround 3: rsc around\nround 4: sc around\nround 5: sc around").Select(row => row.RightSide));

    [Theory]
    [InlineData("row 1: rsc across")]
    [InlineData("row 1: sc across\nrow 2: rsc 10, sc across")]
    [InlineData("row 1: sc across\nrow 2: (rsc, sc) across")]
    [InlineData("row 1: sc across\nround: rsc around")]
    [InlineData("round 1: sc around\nround 2: rsc 3, 2 sc in next, rsc around")]
    public void Other_stitches_beside_it_and_nothing_to_go_back_over_are_told(string lines) =>
        Assert.Equal(["worked-back"], Compiled.Of($"piece back\nbegin with 20 stitches\n{lines}\n").Found);

    [Fact]
    public void Nothing_is_picked_up_by_it() =>
        Assert.Contains("worked-back", Compiled.Of("piece back\nbegin with 20 stitches\nrow 1: sc across\nstraight 3 rows\npiece edging picked up along back right edge: 1 rsc in each row\nrow: sc across\n").Found);
}
