using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>How rows begin, under every turning-chain rule.</summary>
public class OpeningTests
{
    [Theory]
    [InlineData("", "sc", "Ch 21.", "Sc in 2nd ch from hook (skipped ch does not count as a st), sc in each ch across. [20 sc]")]
    [InlineData("turn hdc: ch 2 counts", "hdc", "Ch 21.", "Hdc in 3rd ch from hook (skipped 2 ch count as 1 hdc), hdc in each ch across. [20 hdc]")]
    [InlineData("turn hdc: ch 2 does not count", "hdc", "Ch 22.", "Hdc in 3rd ch from hook (skipped 2 ch do not count as sts), hdc in each ch across. [20 hdc]")]
    [InlineData("", "dc", "Ch 22.", "Dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each ch across. [20 dc]")]
    [InlineData("", "tr", "Ch 23.", "Tr in 5th ch from hook (skipped 4 ch count as 1 tr), tr in each ch across. [20 tr]")]
    public void A_foundation_says_its_chains_and_which_chain_comes_first(string rule, string stitch, string chain, string row)
    {
        var panel = Written.Piece($"pattern \"P\"\n{rule}\npiece panel\nbegin with 20 stitches\nrow 1 RS: {stitch} across");
        Assert.StartsWith($"{chain}\nRow 1 (RS): {row}", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2 dc in first, dc across", "Ch 23.", "Dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each ch across. [21 dc]")]
    [InlineData("dc, 2 dc in same, dc across", "Ch 23.", "2 dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each ch across. [22 dc]")]
    [InlineData("dc, (ch 1, 2 dc) in same, dc across", "Ch 24.", "2 dc in 5th ch from hook (skipped 4 ch count as 1 dc and ch 1), dc in each ch across. [22 dc, 1 ch-1 sp]")]
    [InlineData("shell in next, skip 1, dc across", "Ch 23.", "4 dc in 4th ch from hook (skipped 3 ch count as 1 dc) (completes 1 SH), skip next ch, dc in each ch across. [1 SH, 18 dc]")]
    [InlineData("(2 dc, ch 1, dc) in first, dc across", "Ch 23.", "(Dc, ch 1, dc) in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each ch across. [22 dc, 1 ch-1 sp]")]
    [InlineData("skip 2, 2 dc in next, dc across", "Ch 23.", "Dc in 6th ch from hook (skipped 5 ch count as 1 dc and 2 skipped ch), dc in each ch across. [19 dc]")]
    [InlineData("2 sc in first, sc across", "Ch 21.", "2 sc in 2nd ch from hook (skipped ch does not count as a st), sc in each ch across. [21 sc]")]
    public void Beside_a_chain_that_counts_the_first_place_is_the_chain_behind_it(string words, string chain, string row)
    {
        var panel = Panel($"begin with 20 stitches\nrow 1 RS: {words}");
        Assert.StartsWith($"{chain}\nRow 1 (RS): {row}", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dc, ch 2, with rust, dc across", "With navy, skip the 5 ch (they count as 1 dc and ch 2), with rust, dc in each ch across; cut navy. [9 dc, 1 ch-2 sp]")]
    [InlineData("dc, ch 2, skip 2, with rust, dc across", "With navy, skip the 5 ch (they count as 1 dc and ch 2), skip next 2 ch, with rust, dc in each ch across; cut navy. [7 dc, 1 ch-2 sp]")]
    [InlineData("dc, with rust, dc across", "With navy, skip the 3 ch (they count as 1 dc), with rust, dc in each ch across; cut navy. [9 dc]")]
    public void Where_another_yarn_comes_behind_the_chain_all_that_it_stands_for_is_said(string words, string row)
    {
        var panel = Written.Piece($"pattern \"P\"\nyarn navy\nyarn rust\npiece panel\nbegin with 9 stitches\nrow 1 RS: {words}");
        Assert.Contains($"Row 1 (RS): {row}", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stitch own is dc, ch 1, skip 1", "own 5, dc 2", "dc in each st and sp across, dc in 3rd ch of turning ch-4. [12 dc]")]
    [InlineData("stitch own is dc, ch 1, skip 1", "own 6", "skip first ch-1 sp, dc in each st and sp across, dc in 3rd ch of turning ch-4. [12 dc]")]
    [InlineData("stitch own is skip 1, dc, ch 1", "own 5, dc 2", "dc in each st and sp across, dc in 3rd ch of turning ch-4. [12 dc]")]
    [InlineData("stitch own is 2 dc in next, skip 1", "own 5, dc 2", "dc in each st and sp across, dc in top of turning ch. [12 dc]")]
    public void The_chain_that_begins_a_stitch_over_several_places_is_the_last_stitch_of_the_next_row(string stitch, string row, string told) =>
        Assert.Contains(told, Written.Piece($"pattern \"P\"\nturn dc: ch 3 counts\n{stitch}\npiece panel\nbegin with 12 stitches\nrow 1 RS: dc across\nrow 2: {row}\nrow 3: dc in each st and sp\n"), StringComparison.Ordinal);

    [Theory]
    [InlineData("dc, ch 1, skip 1", "join with sl st in 3rd ch of ch-4.")]
    [InlineData("skip 1, dc, ch 1", "join with sl st in 3rd ch of ch-4.")]
    [InlineData("2 dc in next, skip 1", "join with sl st in top of ch-3.")]
    [InlineData("sc, dc in same, skip 1", "join with sl st in first sc.")]
    [InlineData("(dc, tr) together", "join with sl st in first st.")]
    public void A_round_that_a_stitch_over_several_places_begins_is_joined_in_the_chain(string stitch, string told) =>
        Assert.Contains(told, Written.Piece($"pattern \"P\"\nturn dc: ch 3 counts\nstitch own is {stitch}\npiece panel\nbegin with 12 stitches\nround 1: dc around\nround 2: own around\n").Split('\n').Single(static line => line.StartsWith("Round 2", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Theory]
    [InlineData("picked up along cloth last row: 1 bobble in each st", "Ch 3 (does not count as a st), BO in same st, BO in each of next 11 sts. [12 BO]")]
    [InlineData("picked up along cloth right edge: 2 puff in each row", "2 PS in same row-end, 2 PS in each of next 3 row-ends. [8 PS]")]
    [InlineData("picked up along cloth last row: 18 popcorn evenly", "18 PC evenly over these 12 sts")]
    [InlineData("picked up along cloth last row: 1 berry in each st", "berry in same st, berry in each of next 11 sts. [12 berries]")]
    [InlineData("picked up around cloth last row and cloth left edge and cloth foundation and cloth right edge: 1 bobble in each st, 1 bobble in each row, 3 bobble in each corner", "(2 BO, place a marker in the BO just made, BO) in same st, BO in each of next 10 sts,")]
    public void What_is_picked_up_is_told_by_its_own_name(string pickUp, string told) =>
        Assert.Contains(told, Written.Piece($"pattern \"P\"\nturn dc: ch 3 counts\nstitch berry is 5 dc together in one place\npiece cloth\nbegin with 12 stitches\nrow 1 RS: dc across\nstraight 3 rows\nfasten off\npiece panel {pickUp}\n"), StringComparison.Ordinal);

    [Fact]
    public void A_mirrored_round_or_row_that_begins_with_a_space_has_its_chains_once()
    {
        const string Net = "pattern \"P\"\npiece net\nbegin with 9 stitches\nround 1: sc around\nround 2: sc 5, dc 3, ch 2, skip 1\npiece other is net mirrored\n";
        Assert.Contains("Round 2: Ch 2 (a ch-2 sp), skip first sc, dc in each of next 3 sc, sc in each of next 5 sc, join with sl st in the ch-2 sp at its beginning. [1 ch-2 sp, 3 dc, 5 sc]", Written.Piece(Net, piece: "Other"), StringComparison.Ordinal);
        const string Row = "pattern \"P\"\nyarn navy\nyarn rust\npiece net\nbegin with 9 stitches\nrow 1 RS: sc across\nrow 2: sc 8, with rust, ch 2, skip 1\npiece other is net mirrored\n";
        Assert.Contains("Row 2 (WS): With rust, ch 2 (a ch-2 sp), turn, skip first sc, with navy, sc in each of last 8 sc; cut rust. [1 ch-2 sp, 8 sc]", Written.Piece(Row, piece: "Other"), StringComparison.Ordinal);
        const string Marked = "pattern \"P\"\npiece net\nbegin with 9 stitches\nrow 1 RS: sc across\nrow 2: sc 8, ch 2, mark corner, skip 1\npiece other is net mirrored\n";
        Assert.Contains("Row 2 (WS): Ch 2 (a ch-2 sp), turn, place a marker in the ch-2 sp just made, skip first sc, sc in each", Written.Piece(Marked, piece: "Other"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_oval_begins_in_the_chain_behind_those_that_count() => Assert.StartsWith(
        "Ch 13.\nRound 1: 4 dc in 4th ch from hook (skipped 3 ch count as 1 dc)",
        Panel("begin with both sides of 10 stitches\nround 1: 5 dc in corner, dc to corner, 5 dc in corner, dc around"),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("dc, (ch 1, skip 1, dc) across", "6th")]
    [InlineData("dc, skip 2, 2 dc in next, dc across", "6th")]
    [InlineData("dc across", "4th")]
    [InlineData("2 dc in first, dc across", "4th")]
    [InlineData("sc, (skip 1, sc) across", "2nd")]
    public void The_chart_names_the_chain_that_the_row_names(string words, string chain)
    {
        var notation = $"pattern \"P\"\npiece panel\nbegin with 21 stitches\nrow 1 RS: {words}";
        Assert.Contains($" in {chain} ch from hook", Written.Piece(notation), StringComparison.Ordinal);
        var piece = Compilation.Of(new SourceText("test.turnrow", notation)).Pattern.Pieces.First().InSizes[0];
        Assert.Contains($" in the {chain} chain from the hook", Chart.Of(piece, "panel", "P", Terms.US)!.Svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_that_counts_takes_the_first_place_and_the_last_stitch_goes_in_it()
    {
        var panel = Panel("begin with 10 stitches\nrow 1 RS: dc across\nrow: dc across\nrow: dc across");
        Assert.Contains("Row 2 (WS): Ch 3 (counts as 1 dc here and throughout), turn, skip first dc, dc in each dc across, dc in top of beginning ch. [10 dc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 3 (RS): As Row 2, ending in top of turning ch. [10 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_that_does_not_count_leaves_the_first_place_to_the_first_stitch()
    {
        var panel = Panel("begin with 10 stitches\nrow 1 RS: sc across\nrow: sc 4, 2 sc in next, sc across");
        Assert.Contains("Row 2 (WS): Ch 1 (does not count as a st here and throughout), turn, sc in each of first 4 sc, 2 sc in next sc, sc in each sc across. [11 sc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_increase_goes_in_the_base_of_the_chain_and_a_first_decrease_shortens_it()
    {
        var panel = Panel("begin with 10 stitches\nrow 1 RS: dc across\nrow: dc inc, dc until 1 remain, dc inc\nrow: dc dec, dc until 2 remain, dc dec");
        Assert.Contains("Row 2 (WS): Ch 3 (counts as 1 dc here and throughout), turn, dc in first dc, dc in each dc across, 2 dc in top of beginning ch. [12 dc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 3 (RS): Ch 2, turn, skip first dc, dc in next dc (the ch 2 and this dc count as dc2tog), dc in each dc to last 2 sts, dc2tog over last dc and top of turning ch. [10 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_that_opens_with_a_space_makes_one_chain_for_both_and_the_next_row_may_end_in_it()
    {
        var panel = Panel("begin with 9 stitches\nrow 1 RS: dc across\nrow: dc, ch 2, skip 2, dc across\nrow: dc 6, 2 dc in next sp, dc");
        Assert.Contains("Row 2 (WS): Ch 5 (counts as 1 dc and ch 2), turn, skip first 3 dc, dc in each dc across, dc in top of beginning ch. [7 dc, 1 ch-2 sp]", panel, StringComparison.Ordinal);
        Assert.Contains("2 dc in next ch-2 sp, dc in 3rd ch of turning ch-5. [9 dc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void The_space_that_a_row_opens_with_may_be_the_first_of_a_repeat_and_is_told_once()
    {
        var panel = Panel("begin with 9 stitches\nrow 1 RS: dc across\nrow: dc, (ch 1, skip 1, dc) across\nrow: dc in each st and sp\nrow: sc across\nrow: dc, (ch 1, skip 1, dc) 4 times");
        Assert.Contains("Row 2 (WS): Ch 4 (counts as 1 dc and ch 1), turn, skip first 2 dc, dc in next dc, [ch 1, skip next dc, dc in next dc] 2 times, ch 1, skip next dc, dc in top of beginning ch. [5 dc, 4 ch-1 sps]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 5 (RS): Ch 4 (counts as 1 dc and ch 1), turn, skip first 2 sc, dc in next sc, [ch 1, skip next sc, dc in next sc] 3 times. [5 dc, 4 ch-1 sps]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Chains_skipped_on_purpose_are_counted_from_the_hook_too()
    {
        var panel = Panel("begin with 25 stitches\nrow 1 RS: (dc, ch 1, skip 1) until 1 remain, dc");
        Assert.Equal(
            "Ch 28.\nRow 1 (RS): Dc in 6th ch from hook (skipped 5 ch count as 1 dc, ch 1 and 1 skipped ch), ch 1, skip next ch, [dc in next ch, ch 1, skip next ch] 10 times, dc in last ch. [13 dc, 12 ch-1 sps]\nFasten off.",
            panel);
    }

    [Fact]
    public void Where_the_rule_changes_every_row_says_whether_its_chain_counts()
    {
        var panel = Panel("begin with 8 stitches\nrow 1 RS: hdc across\nrow: hdc across\nturn hdc, next row: ch 2 does not count\nrow: hdc across");
        Assert.Contains("Ch 2 (counts as 1 hdc), turn", panel, StringComparison.Ordinal);
        Assert.Contains("Ch 2 (does not count as a st), turn", panel, StringComparison.Ordinal);
        Assert.DoesNotContain("throughout", panel, StringComparison.Ordinal);
    }

    private static string Panel(string lines) => Written.Piece($"pattern \"P\"\npiece panel\n{lines}");
}
