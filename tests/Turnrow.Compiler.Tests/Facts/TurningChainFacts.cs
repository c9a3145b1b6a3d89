using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Turning chains as published: how long, and whether they stand for the row's first stitch.</summary>
public sealed class TurningChainFacts
{
    // Sources: "How to Crochet a Turning Chain", Dummies: sl st 0, sc 1, hdc 2, dc 3, tr 4, dtr 5; nearly always the first stitch of the
    // row, sc excepted. The same to tr in a lesson sheet of the Crochet Guild of America (1997), reproduced at careyscraftycorner.tripod.com.
    // trtr 6 by the same rule, and that the hdc's is counted by some and not by others: common practice, no source.
    [Theory]
    [InlineData("", "sl st", 0, false)]
    [InlineData("", "sc", 1, false)]
    [InlineData("turn hdc: ch 2 counts", "hdc", 2, true)]
    [InlineData("turn hdc: ch 2 does not count", "hdc", 2, false)]
    [InlineData("", "dc", 3, true)]
    [InlineData("", "tr", 4, true)]
    [InlineData("", "dtr", 5, true)]
    [InlineData("", "trtr", 6, true)]
    public void Custom_turns_a_row_with_so_many_chains(string rule, string stitch, int chains, bool counts)
    {
        var turn = Printed.Turn(Printed.Piece(rule, $"begin with 20 stitches\nrow 1: {stitch} across\nrow 2: {stitch} across = 20"), 2);
        Assert.Equal((chains, counts), (turn.Chains, turn.Counts));
    }

    // Print does both, so a pattern that does not say which is asked (common practice, no source).
    [Fact]
    public void A_row_of_hdc_is_asked_whether_its_chain_counts() =>
        Printed.Fault(Printed.Piece("", "begin with 20 stitches\nrow 1: hdc across\nrow 2: hdc across = 20"), "turn-unsaid");

    // Some makers turn with fewer: "Crochet turning chain: does it count as a stitch", maisieandruth.com.
    [Theory]
    [InlineData("hdc", 1)]
    [InlineData("dc", 2)]
    [InlineData("tr", 3)]
    public void A_shorter_chain_is_followed_and_changes_no_count(string stitch, int chains)
    {
        foreach (var counts in new[] { "counts", "does not count" })
        {
            var made = Printed.Piece($"turn {stitch}: ch {chains} {counts}", $"begin with 20 stitches\nrow 1: {stitch} across = 20\nrow 2: {stitch} across = 20");
            Assert.Equal(chains, Printed.Turn(made, 2).Chains);
        }
    }

    // "Turning chains when working crochet in rows", mariescozycorner.blogspot.com, 2009/03: ch 5 read as 1 dc and ch 2.
    [Fact]
    public void A_chain_of_five_is_a_dc_and_a_space_of_two()
    {
        var made = Printed.Piece("", "begin with 19 stitches\nrow 1: dc across\nrow 2: dc, (ch 2, skip 2, dc) across = 7 dc, 6 sp");
        Assert.Equal((5, true, 2), (Printed.Turn(made, 2).Chains, Printed.Turn(made, 2).Counts, Printed.Turn(made, 2).Space));
    }

    // "Crochet: Turning Chain", thebestknittersguide.com, 2010/05: counted, the next row's last stitch goes into its top; not counted (sc),
    // nothing does.
    [Theory]
    [InlineData("dc", PlaceKind.TurningChain)]
    [InlineData("sc", PlaceKind.Stitch)]
    public void A_counted_chain_is_a_place_of_the_next_row_and_another_is_not(string stitch, PlaceKind first)
    {
        var made = Printed.Piece("", $"begin with 20 stitches\nrow 1: {stitch} across\nrow 2: {stitch} across").Clean();
        Assert.Equal(first, made.Row(2).Work!.Tops.First.Kind);
    }
}
