using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Stitches left, chains added, parts gone on with and joined: where the yarn is, is always said.</summary>
public class StepTests
{
    [Fact]
    public void Stitches_left_at_the_start_are_slipped_over_with_the_one_whose_place_the_chain_takes()
    {
        var panel = Panel("begin with 20 stitches\nrow 1 RS: dc across\nrow: dc across\nleave 3 at both edges\nstraight 2 rows");
        Assert.Contains("Row 3 (RS): Turn, sl st in each of first 4 sts, ch 3 (counts as 1 dc, in the place of the last sl st), dc in each dc to last 3 sts, leave these unworked. [14 dc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 4 (WS): As Row 2, ending in top of turning ch; leave the sl sts unworked. [14 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_round_that_goes_on_from_a_row_leaves_no_slip_stitches_since_it_is_joined_beside_them()
    {
        var panel = Panel("begin with 20 stitches\nrow 1 RS: sc across\nrow: sc across\nleave 3 at both edges\nrow: sc across\nround: sc across");
        Assert.EndsWith("Do not turn; join with sl st in the first st of the last row, and work in rounds from here.\nRound 4: Ch 1, sc in same sc, sc in each sc around, join with sl st in first sc. [14 sc]\nFasten off.", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Worked_together_with_the_joined_place_each_place_has_its_own_name()
    {
        const string Sleeve = "pattern \"P\"\nturn sc: ch 1 counts\npiece sleeve\nbegin with 20 stitches\nround 1: sc across\nround: sc, hold 3 for thumb, bridge 3, sc across\n";
        var collar = Written.Piece(Sleeve + "piece collar from sleeve: 8 stitches at right edge\nrow: sc dec, sc across", piece: "Collar");
        Assert.Contains("Row 1 (RS): Sc2tog over same st and next ch, sc in", collar, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_within_a_slope_is_told_in_its_row()
    {
        var panel = Panel("begin with 20 stitches\nright edge is armhole\nrow 1 RS: dc across\nrow: dc across\nshape 5 rows: leave 3 at armhole, then dec 1 every 2 rows 2 times");
        Assert.Contains("Row 3 (RS): Turn, sl st in each of first 4 sts, ch 3 (counts as 1 dc, in the place of the last sl st), dc in each dc across", panel, StringComparison.Ordinal);
        Assert.Contains("Row 5 (RS): Ch 2, turn, skip first dc, dc in next dc (the ch 2 and this dc count as dc2tog) (decrease at armhole edge)", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decrease_by_skipping_passes_over_the_stitch_beside_the_chain()
    {
        var panel = Panel("begin with 20 stitches\nrow 1 RS: dc across\nrow: dc across\nshape by skipping\nshape 1 rows: dec 1 at both edges every row");
        Assert.Contains("Row 3 (RS): Ch 3, turn, skip first 2 dc (decrease), dc in each dc to last 2 sts, skip next dc (decrease), dc in top of turning ch. [18 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_chain_does_not_count_only_those_left_are_slipped_over()
    {
        var panel = Panel("begin with 20 stitches\nrow 1 RS: sc across\nleave 3 at both edges\nstraight 2 rows");
        Assert.Contains("Row 2 (WS): Turn, sl st in each of first 3 sts (this row works nothing else in them), ch 1 (does not count as a st here and throughout), sc in each sc to last 3 sts, leave these unworked. [14 sc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Chains_added_where_the_hook_is_are_worked_like_a_foundation()
    {
        var panel = Panel("begin with 10 stitches\nright edge is armhole\nrow 1 RS: dc across\nrow: dc across\nadd 4 at armhole\nstraight 2 rows");
        Assert.Contains("The yarn is at the armhole edge: ch 6.\nRow 3 (RS): Turn, dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each ch and dc across, dc in top of turning ch. [14 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Chains_added_elsewhere_are_a_separate_length_joined_and_fastened_off()
    {
        var panel = Panel("begin with 10 stitches\nright edge is neck\nleft edge is armhole\nrow 1 RS: dc across\nrow: dc across\nadd 4 at armhole\nstraight 2 rows");
        Assert.Contains(
            "Leave the yarn at the neck edge; at the armhole edge, join another length of yarn with sl st in top of turning ch, ch 4, fasten off.\nRow 3 (RS): Ch 3, turn, skip first dc, dc in each dc across, dc in top of turning ch, dc in each of the 4 added ch. [14 dc]",
            panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_at_the_hook_goes_on_and_one_elsewhere_is_joined_anew()
    {
        const string Pattern = """
            pattern "P"
            piece panel
              begin with 20 stitches
              row 1 RS: sc across
              row: sc across
            piece right-part from panel: 6 stitches at right edge
              row 1: sc across
            piece left-part from panel: 7 stitches at left edge
              row 1: sc across
            """;
        Assert.EndsWith("Do not fasten off: the yarn is at the right edge, where Right part goes on with a RS row.", Written.Piece(Pattern), StringComparison.Ordinal);
        Assert.Equal(
            "Go on from the last row of Panel, with the same yarn.\nRow 1 (RS): Ch 1, turn, sc in each of first 6 sc, leave the other 14 sts unworked. [6 sc]\nFasten off.",
            Written.Piece(Pattern, piece: "Right part"));
        Assert.Equal(
            "With RS of Panel facing, join yarn with sl st in the 7th st of its last row, counted from its left edge.\nRow 1 (RS): Ch 1, sc in same sc, sc in each of next 6 sc. [7 sc]\nFasten off.",
            Written.Piece(Pattern, piece: "Left part"));
    }

    [Fact]
    public void Where_another_piece_comes_first_the_loop_is_kept_until_it_is_done()
    {
        const string Pattern = """
            pattern "P"
            hook 4 mm
            gauge sc: 20 stitches and 20 rows to 10 cm
            piece panel
              begin with 20 stitches
              row 1 RS: sc across
              row: sc across
            piece left-part from panel: 7 stitches at left edge
              row 1: sc across
            piece right-part from panel: 6 stitches at right edge
              row 1: sc across
              straight 5 rows
            """;
        Assert.EndsWith("Do not fasten off, but put the loop on a marker: the yarn is at the right edge, where Right part goes on with a RS row. Left part comes first, with another ball of yarn.", Written.Piece(Pattern), StringComparison.Ordinal);
        Assert.Contains("[6 sc in each row] From its Row 1, Right part measures 3 cm (1 1/4 in).", Written.Piece(Pattern, piece: "Right part"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mirrored_shaping_is_at_the_other_end_of_the_same_rows()
    {
        const string Pattern = """
            pattern "P"
            piece panel
              begin with 10 stitches
              left edge is neck
              row 1 RS: sc across
              shape 2 rows: inc 1 at neck every row
            piece other is panel mirrored
            """;
        Assert.Contains("Row 2 (WS): Ch 1 (does not count as a st here and throughout), turn, 2 sc in first sc (increase at neck edge), sc in each sc across. [11 sc]", Written.Piece(Pattern), StringComparison.Ordinal);
        Assert.Contains("Row 2 (WS): Ch 1, turn, sc in each sc to last st, 2 sc in last sc (increase at neck edge). [11 sc]", Written.Piece(Pattern, piece: "Other"), StringComparison.Ordinal);
    }

    private static string Panel(string lines) => Written.Piece($"pattern \"P\"\npiece panel\n{lines}");
}
