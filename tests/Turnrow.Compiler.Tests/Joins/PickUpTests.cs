using System.Globalization;
using Turnrow.Fabric.Pieces;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Pick-ups along eight rows of 20 dc.</summary>
public sealed class PickUpTests
{
    private static Compiled Along(string words) => Compiled.Piece($"straight 7 rows\npiece band picked up along {words}");

    // Sources: "Picot edging", a crochet blog, Sept 2009 (sc 1 a row, dc 2, tr 3); hdc 3 in 2 rows: common practice.
    [Theory]
    [InlineData("dc", "16")]
    [InlineData("sc", "8")]
    [InlineData("hdc", "12")]
    [InlineData("tr", "24")]
    public void Unsaid_the_rows_own_height_decides(string rows, string expected) => Assert.Equal(expected, Compiled.Whole(
        $"terms US\nturn hdc: ch 2 counts\npiece back\nbegin with 20 stitches\nrow 1: {rows} across\nstraight 7 rows\npiece band picked up along back right edge: sc").Clean().Last("band"));

    [Theory]
    [InlineData("back right edge: 2 sc in each row", "16")]
    [InlineData("back right edge: 3 sc per 2 rows", "12")]
    [InlineData("back right edge, last 3 rows: 2 dc in each row", "6")]
    [InlineData("back right edge, first 3 rows: 2 dc in each row", "6")]
    [InlineData("back right edge, all but first 3 rows: 1 dc in each row", "5")]
    [InlineData("back right edge, all but last 3 rows: 1 dc in each row", "5")]
    [InlineData("back right edge, rows 3 to 6: 1 dc in each row", "4")]
    [InlineData("back last row: 1 sc in each st", "20")]
    [InlineData("back foundation: 1 sc in each st", "20")]
    [InlineData("back right edge and back last row and back left edge: sc", "52")]
    [InlineData("back right edge and back last row: 3 sc per 2 rows, 1 sc in each st", "32")]
    [InlineData("back right edge, WS facing: 2 sc in each row", "16")]
    public void So_many_are_picked_up(string words, string expected) => Assert.Equal(expected, Along(words).Clean().Last("band"));

    // What is picked up has its first row before a line can name its edges.
    [Theory]
    [InlineData("both edges are face\nstraight 2 rows", "band right face", 3)]
    [InlineData("both edges are face\nstraight 2 rows\nfrom here left edge is crown\nstraight 1 row", "band left face", 3)]
    [InlineData("straight 1 row\nright edge is face\nstraight 2 rows", "band right face", 2)]
    [InlineData("from here right edge is face\nstraight 2 rows", "band right face", 2)]
    public void A_name_of_its_edge_holds_from_the_beginning(string lines, string edge, int rows) =>
        Assert.Equal(rows.ToString(CultureInfo.InvariantCulture), Along($"back right edge: sc\n{lines}\npiece other picked up along {edge}: 1 sc in each row").Clean().Last("other"));

    // Right side facing: up the right edge, the last row from right to left, down the left edge, the foundation from left to right.
    [Theory]
    [InlineData("back right edge", true)]
    [InlineData("back last row", true)]
    [InlineData("back left edge", false)]
    [InlineData("back foundation", false)]
    public void She_works_from_right_to_left_along_the_edge_on_top_and_with_the_wrong_side_facing_the_other_way(string edge, bool upwards)
    {
        Assert.Equal(upwards, Leg(Along(edge + ": sc")).Upwards);
        Assert.Equal(!upwards, Leg(Along(edge + ", WS facing: sc")).Upwards);
    }

    [Fact]
    public void With_the_wrong_side_facing_its_first_row_is_a_wrong_side_row() => Assert.False(Along("back right edge, WS facing: sc").Row(1, "band").RightSide);

    [Theory]
    [InlineData("back left edge: sc", 6, false)]
    [InlineData("back left edge: sc", 7, true)]
    [InlineData("back right edge: sc", 6, true)]
    [InlineData("back right edge, WS facing: sc", 7, false)]
    public void The_yarn_goes_on_where_the_walk_begins_at_the_hook(string words, int straight, bool joined)
    {
        var compiled = Compiled.Piece($"straight {straight} rows\npiece band picked up along {words}");
        Assert.Equal(joined, ((PickUpStart)compiled.Piece("band", 0).Start!).Joined);
    }

    [Theory]
    [InlineData("back right edge, last 3 rows: 3 sc per 2 rows", "pick-up-remainder")]
    [InlineData("back right edge, last 9 rows: sc", "selection-rows")]
    [InlineData("back neck: sc", "edge-unknown")]
    [InlineData("back: sc", "edge-unsaid")]
    [InlineData("front right edge: sc", "unknown-piece")]
    [InlineData("back right edge, last 0 rows: sc", "pick-up-nothing")]
    [InlineData("back right edge: 2 dc in each rwo", "place-unknown")]
    [InlineData("back right edge and back last row: 1 dc in each st, 3 sc in each row", "rate-stitches")]
    public void What_can_not_be_picked_up_is_told(string words, string name) => Assert.Contains(name, Along(words).Found);

    [Theory]
    [InlineData("st")]
    [InlineData("ch")]
    [InlineData("dc")]
    public void A_rate_of_stitches_may_name_them(string word) => Assert.Equal(20, Along($"back last row: 1 dc in each {word}").Counts("band").First());

    [Theory]
    [InlineData("piece a from back: 6 stitches at right edge\nrow 1: dc across\npiece b from back: 6 stitches at left edge\nrow 1: dc across\n")]
    [InlineData("piece b from back: 6 stitches at left edge\nrow 1: dc across\npiece a from back: 6 stitches at right edge\nrow 1: dc across\n")]
    public void Whether_edges_meet_does_not_depend_on_the_order_of_the_pieces(string parts)
    {
        var found = Compiled.Piece("both edges are side\nstraight 3 rows\n" + parts.Replace("row 1", "right edge is r\nleft edge is l\nrow 1", StringComparison.Ordinal)
            + "piece band picked up along a l and back last row and b r: sc").Found;
        Assert.DoesNotContain("pick-up-apart", found);
    }

    private static PickUpLeg Leg(Compiled compiled) => ((PickUpStart)compiled.Piece("band", 0).Start!).Walk[0];

    [Fact]
    public void A_strip_ends_where_it_was_picked_up_and_the_next_one_goes_on_from_there() => Compiled.Of(
        """
        piece centre
          begin with 12 stitches
          row 1 RS: sc across
          straight 13 rows
          fasten off
        piece strip-1 picked up along centre right edge: 1 sc in each row
          straight 7 rows
          fasten off
        piece strip-2 picked up along strip-1 left edge and centre last row: 1 sc in each row, 1 sc in each st
          straight 7 rows
          fasten off
        piece strip-3 picked up along strip-2 left edge and centre left edge: 1 sc in each row
          straight 7 rows
          fasten off
        piece strip-4 picked up along strip-3 left edge and centre foundation and strip-1 right edge: 1 sc in each row, 1 sc in each st
          straight 7 rows
          fasten off
        """).Clean();

    [Fact]
    public void A_strip_along_a_last_row_ends_at_the_corner_of_the_piece_below() => Assert.Equal(["pick-up-apart", "edge-twice"], Compiled.Of(
        """
        piece centre
          begin with 12 stitches
          row 1 RS: sc across
          straight 13 rows
        piece strip-1 picked up along centre last row: 1 sc in each st
          straight 7 rows
        piece strip-2 picked up along strip-1 left edge and centre left edge: 1 sc in each row
          straight 7 rows
        piece strip-3 picked up along strip-1 right edge and centre left edge: 1 sc in each row
          straight 7 rows
        """).Found);
}
