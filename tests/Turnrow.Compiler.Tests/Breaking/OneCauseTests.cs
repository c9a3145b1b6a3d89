using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>One cause, one message: what is off by the same amount for the same reason is counted, not told again.</summary>
public sealed class OneCauseTests
{
    private const string Beginning = "piece scarf\n  begin with 20 stitches\n  row 1 RS: dc across = 20\n  row 2: dc 8, inc 2, dc across = 20\n";

    [Fact]
    public void Nine_claims_below_are_off_by_the_same_2()
    {
        var text = Beginning + string.Concat(Enumerable.Range(3, 9).Select(row => $"  row {row}: dc across = 20\n"));
        var found = Assert.Single(Compilation.Of(new SourceText("scarf", text)).Diagnostics);
        Assert.Equal(RowCount.Kind, found.Kind);
        Assert.Contains("9 more claims below are off by the same 2", found.Ledger);
    }

    [Fact]
    public void A_claim_off_by_another_amount_is_told()
    {
        var found = Compilation.Of(new SourceText("scarf", Beginning + "  row 3: dc across = 20\n  row 4: dc across = 21\n")).Diagnostics;
        Assert.Equal(2, found.Count);
        Assert.Contains("1 more claim below is off by the same 2", found[0].Ledger);
        Assert.All(found, d => Assert.Equal(RowCount.Kind, d.Kind));
    }

    [Fact]
    public void A_part_begins_with_what_its_own_line_says_so_it_has_causes_of_its_own()
    {
        var text = Beginning + "  fasten off\npiece end from scarf: 20 stitches at right edge\n  row: dc across = 18\n  row: dc across = 20\n";
        Assert.Equal(2, Compilation.Of(new SourceText("scarf", text)).Diagnostics.Count);
    }

    [Fact]
    public void What_a_step_claims_is_what_the_next_row_has_to_work_over()
    {
        var text = "piece scarf\n  begin with 20 stitches\n  row 1 RS: dc (across = 20\n  leave 2 at both edges = 16\n  row: dc across = 16\n  add 3 at right edge = 19\n  row: dc across = 20\n";
        var found = Compilation.Of(new SourceText("scarf", text)).Diagnostics;
        Assert.Equal(2, found.Count);
        Assert.Equal("20 stitches are claimed, and the row makes 19: 1 fewer", found[1].Message);
    }

    // `rows` makes rows only with their numbers before the colon.
    [Fact]
    public void A_stretch_with_a_colon_before_its_claim_leaves_the_count_known()
    {
        var text = "piece scarf\n  begin with 20 stitches\n  row 1 RS: dc across = 20\n  straight 3 rows : 20\n  row: dc across = 21\n";
        Assert.Equal(RowCount.Kind, Compilation.Of(new SourceText("scarf", text)).Diagnostics[^1].Kind);
    }

    [Fact]
    public void What_is_not_known_is_laid_beside_no_claim()
    {
        var text = "piece scarf\n  begin with 20 stitches\n  row 1 RS: dc across = 20\n  shape many rows: inc 1 at right edge every row = 30\n  row: dc across = 31\n";
        var found = Compilation.Of(new SourceText("scarf", text)).Diagnostics;
        Assert.Equal([UnknownName.Kind, RowCount.Kind], found.Select(d => d.Kind));
    }

    [Theory]
    [InlineData("row 3: dc across\nrow 4 WS: dc across\nrow 5: dc across", "row-number")]
    [InlineData("row 3: dc across\nrow 4: dc across\nrepeat rows 3 to 4, 2 more times", "row-number")]
    [InlineData("row 3: dc across\nrow 3 RS: dc across\nrow 5: dc across", "row-number row-number")]
    [InlineData("row 3: dc across\nrow 3 WS: dc across", "row-number row-side")]
    public void A_row_that_is_missing_puts_the_numbers_and_sides_behind_it_out(string lines, string found) =>
        Assert.Equal(found, string.Join(' ', Compiled.Piece(lines).Found));

    [Fact]
    public void A_schedule_that_does_not_fit_leaves_the_count_to_the_claim() =>
        Assert.Equal(["schedule-too-long"], Compiled.Piece("shape 4 rows: dec 1 at right edge every row 5 times = 15\nrow: dc across = 15").Found);

    [Theory]
    [InlineData("row 2: xx across\nfasten off", "back last row", "sc")]
    [InlineData("row 2: xx across\nrow 3: dc across = 20\nfasten off", "back right edge", "sc")]
    [InlineData("row 2: dc 3, (ch 1, skip 1, dc) across\nfasten off", "back last row", "1 sc in each st")]
    public void What_is_picked_up_from_a_row_that_is_not_known_is_not_known(string lines, string edge, string rate)
    {
        var compiled = Compiled.Piece($"{lines}\npiece band picked up along {edge}: {rate} = 25\nrow: sc across = 25\npiece other\nbegin with 30 stitches\nrow 1 RS: sc across\nseam band last row with other last row, easing");
        Assert.Single(compiled.Found);
    }

    [Fact]
    public void What_is_the_same_in_all_sizes_is_said_of_all_of_them()
    {
        var found = Assert.Single(Compiled.Piece("piece front\nbegin with 20 stitches\nrow 1 RS: dc across\nstraight 2 rows\nseam back right edge with front left edge").Compilation.Diagnostics);
        Assert.Equal("back has 1 row along this seam, and front has 3 rows in every size", found.Message);
        Assert.Empty(found.Ledger);
    }

    [Fact]
    public void A_size_that_is_called_by_a_number_is_called_a_size()
    {
        var text = Compiled.Header.Replace("S, L", "4, 6", StringComparison.Ordinal) + "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nstraight 2 (3) rows\npiece front\nbegin with 20 stitches\nrow 1 RS: dc across\nseam back right edge with front left edge";
        var found = Assert.Single(Compiled.Whole(text).Compilation.Diagnostics);
        Assert.Equal("back has 3 rows along this seam, and front has 1 row in size 4", found.Message);
        Assert.Equal(["size 4: 3 rows to 1 row, size 6: 4 rows to 1 row"], found.Ledger);
    }

    [Theory]
    [InlineData("US", "treble", "tr")]
    [InlineData("UK", "treble", "tr")]
    public void A_stitch_that_is_written_out_is_answered_by_its_abbreviation(string terms, string word, string abbreviation)
    {
        var text = Compiled.Header.Replace("US", terms, StringComparison.Ordinal).Replace("gauge sc", "gauge dtr", StringComparison.Ordinal) + $"piece back\nbegin with 20 stitches\nrow 1 RS: {word} across";
        var found = Compiled.Whole(text).Compilation.Diagnostics.Single(d => d.Kind == UnknownStitch.Kind);
        Assert.Equal($"stitches are written by their abbreviation: `{abbreviation}`", found.Help);
    }
}
