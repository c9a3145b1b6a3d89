using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Pick-ups and seams: which edge, which side, in which row order.</summary>
public class JoiningTests
{
    private const string Panel = "pattern \"P\"\npiece panel\nbegin with 10 stitches\nright edge is front\nleft edge is neck\nrow 1 RS: hdc across\nstraight 7 rows\nfasten off\n";

    [Fact]
    public void A_left_edge_is_picked_up_from_its_last_row_down()
    {
        var band = Written.Piece(Panel + "piece band picked up along panel neck: 3 sc per 2 rows", piece: "Band");
        Assert.Equal(
            "With RS facing, join yarn with sl st at the left edge (neck) of Panel, in the end of its last row; work along the edge from there back to Row 1.\nRow 1 (RS): Ch 1 (does not count as a st), 2 sc in same row-end, sc in next row-end, [2 sc in next row-end, sc in next row-end] 3 times. [12 sc]\nFasten off.",
            band);
    }

    [Fact]
    public void A_right_edge_is_picked_up_from_its_first_row_up()
    {
        var band = Written.Piece(Panel + "piece band picked up along panel front: 2 dc in each row", piece: "Band");
        Assert.StartsWith(
            "With RS facing, join yarn with sl st at the right edge (front) of Panel, in the end of Row 1; work along the edge from there up to its last row.\nRow 1 (RS): Ch 3 (counts as 1 dc), dc in same row-end, 2 dc in each of next 7 row-ends. [16 dc]",
            band, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_of_several_edges_together_goes_on_in_the_middle_of_a_round()
    {
        const string Ends = "pattern \"P\"\npiece panel\nbegin with 10 stitches\nright edge is front\nrow 1 RS: hdc across\nstraight 4 rows\nfasten off\n";
        var band = Written.Piece(Ends + "piece band picked up along panel front and panel left edge: 3 sc per 2 rows", piece: "Band");
        Assert.Contains(
            "2 sc in same row-end, [sc in next row-end, 2 sc in next row-end] 2 times, then along the left edge of Panel from its last row back to Row 1, sc in next row-end, [2 sc in next row-end, sc in next row-end] 2 times. [15 sc]",
            band, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_of_several_stitches_are_one_edge_to_the_maker()
    {
        var band = Written.Piece("pattern \"P\"\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nrow: sc across\nrow: dc across\nrow: dc across\nfasten off\npiece band picked up along panel right edge: sc", piece: "Band");
        Assert.Contains("work along the edge from there up to its last row.\nRow 1 (RS): Ch 1 (does not count as a st), sc in same row-end, sc in next row-end, 2 sc in each of next 2 row-ends. [6 sc]", band, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_may_be_all_that_an_even_pick_up_puts_into_its_first_edge()
    {
        const string Ends = "pattern \"P\"\nturn sc: ch 1 counts\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nfrom here left edge is neck\nrow: sc across\nfasten off\n";
        var band = Written.Piece(Ends + "piece band picked up along panel left edge: 2 sc evenly", piece: "Band");
        Assert.Contains("Row 1 (RS): Ch 1 (counts as 1 sc), then along the left edge of Panel at Row 1, 1 sc in this row-end. [2 sc]", band, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("counts", "Ch 1 (counts as 1 sc), then along the right edge (neck) of Other from Row 2 up to its last row, 1 sc evenly over these 3 row-ends. [2 sc]")]
    [InlineData("does not count", "Ch 1 (does not count as a st), 1 sc in this row-end, then along the right edge (neck) of Other from Row 2 up to its last row, 1 sc evenly over these 3 row-ends. [2 sc]")]
    public void A_mirrored_even_pick_up_has_a_stitch_where_its_yarn_is_joined(string chain, string expected)
    {
        var ends = $"pattern \"P\"\nturn sc: ch 1 {chain}\npiece panel\nbegin with 18 stitches\nrow 1 WS: sc across\nfrom here left edge is neck\nrows 2 to 4: sc across\nfasten off\npiece other is panel mirrored\n";
        var band = Written.Piece(ends + "piece band picked up along panel left edge: 2 sc evenly\npiece twin is band mirrored", piece: "Twin");
        Assert.Contains(expected, band, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_two_parts_the_last_row_is_what_they_leave()
    {
        var band = Written.Piece(Panel.Replace("fasten off", "piece a from panel: 3 stitches at right edge\nrow: hdc across\nfasten off\npiece b from panel: 3 stitches at left edge\nrow: hdc across\nfasten off", StringComparison.Ordinal) + "piece band picked up along panel last row: sc", piece: "Band");
        Assert.StartsWith("With RS facing, join yarn with sl st at the sts left unworked in the last row of Panel, in the one nearest the right edge.\nRow 1 (RS): Ch 1 (does not count as a st), sc in same st, sc in each of next 3 sts. [4 sc]", band, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Match the two ends of Row 1. Sew")]
    [InlineData("straight 1 row\n", "Match the two ends of each row from Row 1 to Row 2. Sew")]
    public void A_band_closed_to_a_ring_has_its_own_ends_matched(string more, string expected)
    {
        var text = Written.Of(Panel + $"piece band picked up along panel neck: 3 sc per 2 rows\n{more}fasten off\nseam band right edge with band left edge");
        Assert.Contains(expected, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("right", "slip-stitched sts at the right edge (arm) of Panel, in the outermost of them", "RS")]
    [InlineData("left", "sts left unworked at the left edge (arm) of Panel, in the outermost of them", "WS")]
    public void Stitches_left_at_a_step_are_called_what_the_maker_sees(string hand, string expected, string side)
    {
        var step = Panel.Replace("straight 7 rows", "row: hdc across\nfrom here both edges are arm\nleave 2 at both edges\nstraight 5 rows", StringComparison.Ordinal);
        var band = Written.Piece(step + $"piece band picked up along panel {hand} arm{(side == "WS" ? ", WS facing" : string.Empty)}: 2 sc in each row, 1 sc in each st", piece: "Band");
        Assert.StartsWith($"With {side} facing, join yarn with sl st at the {expected}.", band, StringComparison.Ordinal);
    }

    [Fact]
    public void An_edge_sewn_to_itself_is_folded()
    {
        var text = Written.Of(Panel + "seam panel neck, first 3 rows, with panel neck, last 3 rows");
        Assert.Contains(
            "Fold Panel across, RS out, so that the two parts of this edge lie together. Match them row for row, Row 1 of Panel with Row 8 of Panel, and so on to Row 3 of Panel with Row 6 of Panel. Sew them together. Leave Rows 4-5 of Panel open.",
            text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("seam ear last row with itself: 1 sc in each st", "**Last round of Ear to itself:** Fold Ear flat, WS out, so that the two halves of this edge lie together. Match them st for st, stitch 1 with stitch 12, and so on to stitch 6 with stitch 7. Join yarn and work 1 sc in each st through both halves. Fasten off.")]
    [InlineData("seam ear last row with itself, from stitch 4", "stitch 4 with stitch 3, and so on to stitch 9 with stitch 10. Sew them together.")]
    [InlineData("seam odd last row with itself", "Match them st for st, stitch 1 with stitch 5, and so on to stitch 2 with stitch 4. Stitch 3 lies in the fold and meets no other; take it in by itself. Sew them together.")]
    [InlineData("seam halved front with halved back", "**Stitches 1-5 (front) to stitches 6-10 (back) of the last round of Halved:** Fold Halved flat, RS out, so that the two halves of this edge lie together. Match them st for st, stitch 1 with stitch 10, and so on to stitch 5 with stitch 6. Sew them together.")]
    public void A_round_closed_flat_says_which_stitch_lies_on_which(string line, string expected)
    {
        var text = Written.Of($"piece ear\nbegin with 12 stitches\nround 1: sc around\npiece odd\nbegin with 5 stitches\nround 1: sc around\npiece halved\nbegin with 10 stitches\nround 1: sc around\ndivide: 5 for front, 5 for back\n{line}");
        Assert.Contains(expected, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("back", "", "With RS facing, join yarn with sl st at the loops of Round 1 of Tube left free on the RS by Round 2, in the first of them.")]
    [InlineData("front", ", WS facing", "With WS facing, join yarn with sl st at the loops of Round 1 of Tube left free on the WS by Round 2, in the last of them.")]
    public void Free_loops_are_told_by_their_round_and_side(string loop, string facing, string expected)
    {
        var text = Written.Of($"piece tube\nbegin with 12 stitches\nround 1: sc around\nround 2: {loop}-loop sc around\nround 3: sc around\nfasten off\npiece skirt picked up around tube round 1{facing}: 1 sc in each st\nround 2: sc around\nfasten off\nseam skirt last row with tube row 1");
        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.Contains("**Last round of Skirt to free loops of Round 1 of Tube:**", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_seam_says_which_row_meets_which_and_what_stays_open()
    {
        var text = Written.Of(Panel + "piece other\nbegin with 10 stitches\nright edge is front\nrow 1 RS: hdc across\nstraight 7 rows\nseam panel front, all but first 2 rows, with other front, all but last 2 rows: 1 sc in each row\nseam panel neck with other left edge");
        Assert.Contains(
            "**Right edge (front) of Panel to right edge (front) of Other:** Lay the two edges together, RS facing each other. Match them row for row, Row 3 of Panel with Row 6 of Other, and so on to Row 8 of Panel with Row 1 of Other. Join yarn and work 1 sc in each row through both edges. Fasten off. Leave Rows 1-2 of Panel and Rows 7-8 of Other open.",
            text, StringComparison.Ordinal);
        Assert.Contains("**Left edge (neck) of Panel to left edge of Other:** Lay the two edges side by side, RS of both up. Match them row for row, Row 1 of Panel with Row 8 of Other, and so on to Row 8 of Panel with Row 1 of Other. Sew them together.", text, StringComparison.Ordinal);
    }
}
