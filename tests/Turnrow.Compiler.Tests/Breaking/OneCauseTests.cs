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

    [Fact]
    public void What_is_not_known_is_laid_beside_no_claim()
    {
        var text = "piece scarf\n  begin with 20 stitches\n  row 1 RS: dc across = 20\n  shape many rows: inc 1 at right edge every row = 30\n  row: dc across = 31\n";
        var found = Compilation.Of(new SourceText("scarf", text)).Diagnostics;
        Assert.Equal([UnknownName.Kind, RowCount.Kind], found.Select(d => d.Kind));
    }
}
