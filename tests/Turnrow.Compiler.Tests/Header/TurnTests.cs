using Turnrow.Fabric.Pieces;
using Xunit;

namespace Turnrow.Compiler.Tests.Header;

/// <summary>Turning chains: for the pattern, a piece, the next row, the foundation alone.</summary>
public sealed class TurnTests
{
    private const string Rows = "begin with 20 stitches\nrow 1: dc across = 20\nrow 2: dc across = 20\n";

    private static int FoundationOf(Compiled compiled, string piece = "back") => ((FoundationStart)compiled.Piece(piece, 0).Start!).Chains;

    [Theory]
    [InlineData("turn dc: ch 3 counts", 22, 3, true)]
    [InlineData("turn dc: ch 3 does not count", 23, 3, false)]
    [InlineData("turn dc: ch 2 counts", 21, 2, true)]
    [InlineData("turn dc: ch 2 does not count", 22, 2, false)]
    [InlineData("turn dc: ch 3 counts, not in the foundation", 23, 3, true)]
    [InlineData("turn dc: ch 3 counts, first stitch in 5th chain", 23, 3, true)]
    [InlineData("turn dc: ch 3", 22, 3, true)]
    public void A_rule_for_the_pattern_changes_the_chains_and_no_count(string rule, int foundation, int turning, bool counts)
    {
        var compiled = Compiled.Whole($"terms US\n{rule}\npiece back\n{Rows}").Clean();
        Assert.Equal(foundation, FoundationOf(compiled));
        Assert.Equal((turning, counts), (compiled.Row(2).Work!.Opening.Chains, compiled.Row(2).Work!.Opening.Counts));
    }

    [Fact]
    public void A_rule_in_a_piece_holds_for_that_piece()
    {
        var compiled = Compiled.Of($"piece back\nturn dc: ch 2 does not count\n{Rows}piece front\n{Rows}seam back right edge with front right edge");
        Assert.Equal((22, 2), (FoundationOf(compiled), compiled.Row(2).Work!.Opening.Chains));
        Assert.Equal((22, 3), (FoundationOf(compiled, "front"), compiled.Row(2, "front").Work!.Opening.Chains));
        Assert.Equal(18, Compiled.Of("piece back\nturn dc: ch 2 does not count\nchain 20\nrow 1: dc across").Clean().Counts().Single());
    }

    [Fact]
    public void A_rule_in_a_piece_holds_from_there_on() =>
        Assert.Equal([22, 3, 2, 2], Compiled.Of($"piece back\n{Rows}turn dc: ch 2 counts\nstraight 2 rows").Clean()
            .Piece("back", 0).Rows.Select(r => r.Work!.Opening.Chains));

    [Fact]
    public void A_rule_for_the_next_row_is_over_after_it() =>
        Assert.Equal([22, 3, 2, 3], Compiled.Of($"piece back\n{Rows}turn dc, next row: ch 2 does not count\nstraight 2 rows").Clean()
            .Piece("back", 0).Rows.Select(r => r.Work!.Opening.Chains));

    // The designer gives the chains, and the rule decides the count.
    [Theory]
    [InlineData("ch 3 counts", 18)]
    [InlineData("ch 3 does not count", 17)]
    [InlineData("ch 3 counts, first stitch in 5th chain", 17)]
    [InlineData("ch 3 counts, not in the foundation", 17)]
    public void Chains_give_what_the_rule_makes_of_them(string rule, int stitches) =>
        Assert.Equal(stitches, Compiled.Whole($"terms US\nturn dc: {rule}\npiece back\nchain 20\nrow 1: dc across").Clean().Counts().Single());

    [Fact]
    public void Chains_and_a_first_row_that_opens_with_a_space_come_out() =>
        Assert.Equal("6", Compiled.Of("piece back\nchain 20\nrow 1: dc, (ch 2, skip 2, dc) across").Clean().Last());
}
