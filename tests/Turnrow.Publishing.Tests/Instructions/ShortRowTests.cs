using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Tests.Reader;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Short rows in words: what is left for now, and that a later row works over it.</summary>
public class ShortRowTests
{
    [Fact]
    public void A_short_row_leaves_its_last_stitches_for_now()
    {
        var panel = Panel("turn hdc: ch 2 does not count", "hdc", "shape 4 rows: leave 4 for later at left edge every 2 rows\nstraight 2 rows");
        Assert.Contains("Row 3 (RS): Ch 2, turn, hdc in each hdc to last 4 sts, leave these unworked for now. [16 hdc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 5 (RS): Ch 2, turn, hdc in each hdc to last 4 sts, leave these unworked for now, with those left before. [12 hdc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 7 (RS): Ch 2, turn, hdc in each hdc to the turn below, hdc in each of the 8 hdc left before. [20 hdc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_chain_counts_the_short_part_ends_in_its_top()
    {
        var panel = Panel("turn dc: ch 3 counts", "dc", "row: dc across\nrow: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: dc across");
        Assert.Contains("Row 4 (WS): As Row 2, ending in top of turning ch. [14 dc]", panel, StringComparison.Ordinal);
        Assert.Contains(
            "Row 5 (RS): Ch 3, turn, skip first dc, dc in each dc to the turn below, dc in top of turning ch, dc in each of the 5 dc left before, dc in top of turning ch. [20 dc]",
            panel,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Among_those_left_each_chain_is_what_its_own_row_made_of_it()
    {
        var decreased = Panel("turn dc: ch 3 counts", "dc", "row: dc across\nshape 1 rows: dec 1 at right edge every row\nrow: dc until 3 remain, leave 3 for later\nrow: dc across\nrow: dc across");
        Assert.Contains("dc in top of turning ch, dc in each of the 3 dc left before. [19 dc]", decreased, StringComparison.Ordinal);
        var after = Panel("turn dc: ch 3 counts", "dc", "row: dc across\nrow: dc across\nrow: dc until 6 remain, leave 6 for later\nrow: dc dec 1, dc across\nrow: dc across");
        Assert.Contains("dc in each dc to the turn below, dc in each of the 5 dc left before, dc in top of turning ch. [19 dc]", after, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_may_work_over_some_of_those_left_and_leave_the_others()
    {
        var panel = Panel("turn hdc: ch 2 does not count", "hdc", "row: hdc until 6 remain, leave 6 for later\nrow: hdc across\nrow: hdc until 2 remain, leave 2 for later\nrow: hdc across\nrow: hdc until 2 remain, leave 2 for later\nrow: hdc across\nrow: hdc across");
        Assert.Contains("Row 4 (WS): Ch 2, turn, hdc in each hdc to the turn below, hdc in each of next 4 hdc of those left before, leave the other 2 sts unworked for now. [18 hdc]", panel, StringComparison.Ordinal);
        Assert.Contains("Row 6 (WS): Ch 2, turn, hdc in each hdc across, leave the 2 sts left before unworked for now. [18 hdc]", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_do_not_name_the_stitches_left_have_a_remark()
    {
        var panel = Panel("turn hdc: ch 2 does not count", "hdc", "row: hdc until 6 remain, leave 6 for later\nrow: hdc across\nrow: (hdc, hdc inc) 10 times");
        Assert.Contains("[hdc in next hdc, 2 hdc in next hdc] 10 times; the last 6 sts worked over are those left before. [30 hdc]", panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("shape 4 rows: leave 2 (3) for later at both edges every 2 rows\nstraight 2 rows\nstraight 20 rows")]
    [InlineData("row: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: (dc, dc inc) 10 times")]
    [InlineData("row: dc until 6 (7) remain, leave 6 (7) for later\nrow: dc across\nrow: dc 14 (13), dc dec 3, dc across")]
    [InlineData("row: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: dc until 8 remain, leave 8 for later\nrow: dc across\nrow: dc across")]
    [InlineData("row: (dc, ch 1, skip 1) until 2 remain, dc across\nrow: dc in each st and sp\nrow: dc until 7 remain, leave 7 for later\nrow: dc across\nrow: dc across")]
    [InlineData("row: dc across\nrow: dc, ch 2, skip 2, dc across\nrow: dc until 2 remain, dc in next sp, leave 1 for later\nrow: dc across\nrow: dc across")]
    [InlineData("row: dc until 1 remain, leave 1 for later\nrow: dc across\nrow: dc across\nleave 3 at both edges\nrow: dc across\nrow: dc until 1 remain, leave 1 for later\nrow: dc across\nrow: dc across")]
    [InlineData("row: dc across\nshape 1 rows: dec 1 at right edge every row\nrow: dc until 3 remain, leave 3 for later\nrow: dc across\nrow: dc across")]
    [InlineData("row: dc until 6 remain, leave 6 for later\nrow: dc dec 1, dc across\nrow: dc across")]
    public void They_read_back_whatever_the_chain_counts(string rows)
    {
        foreach (var turn in new[] { "turn dc: ch 3 counts", "turn dc: ch 2 does not count" })
        {
            var compiled = Compilation.Of(new SourceText("test.turnrow", $"pattern \"Panel\"\nterms US\nsizes S, M\ngauge dc: 20 stitches and 10 rows to 10 cm\n{turn}\npiece panel\nbegin with 20 stitches\nrow 1 RS: dc across\n{rows}\n"));
            Assert.Equal(0, compiled.Pattern.Errors);
            foreach (var terms in new[] { Terms.US, Terms.UK })
                Assert.Empty(ReadBack.Differences(compiled.Pattern, WrittenInstructions.Write(compiled.Pattern, terms)));
        }
    }

    [Fact]
    public void A_seam_says_which_piece_has_rows_that_do_not_reach_it()
    {
        var text = Written.Of("""
            terms US
            turn dc: ch 3 counts
            piece back
            begin with 20 stitches
            row 1 RS: dc across
            straight 9 rows
            piece front
            begin with 20 stitches
            row 1 RS: dc across
            straight 3 rows
            shape 4 rows: leave 2 for later at both edges every 2 rows
            straight 6 rows
            seam back right edge with front left edge
            seam back left edge with front right edge, rows 1 to 4
            """.Replace("back left edge with", "back left edge, rows 1 to 4, with", StringComparison.Ordinal));
        Assert.Contains("Row 1 of Back with Row 1 of Front, and so on to Row 10 of Back with Row 14 of Front. Short rows of Front turn before this edge and have no end here. Sew", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Stitches_are_picked_up_in_the_row_ends_that_are_there()
    {
        var text = Written.Piece(
            """
            terms US
            turn sc: ch 1 does not count
            piece front
            begin with 20 stitches
            row 1 RS: sc across
            straight 3 rows
            shape 4 rows: leave 4 for later at right edge every 2 rows
            straight 2 rows
            piece band picked up along front right edge: 1 sc in each row
            straight 1 row
            """,
            piece: "Band");
        Assert.Contains("in the end of Row 1; work along the edge from there up to Row 5.", text, StringComparison.Ordinal);
        Assert.Contains("sc in each of next 4 row-ends, then along the right edge of Front at its last row, sc in next row-end. [6 sc]", text, StringComparison.Ordinal);
    }

    private static string Panel(string turn, string stitch, string rows) =>
        Written.Piece($"terms US\n{turn}\npiece panel\nbegin with 20 stitches\nrow 1 RS: {stitch} across\n{rows}");
}
