using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Fabric.Tests.Stitches;

public sealed class StitchBookTests
{
    // Sources: "Crochet hook, yarn and stitch conversions" and "Crochet Terms Translation Chart" (two conversion sheets): chain, slip
    // stitch, sc = UK dc, hdc = UK htr, dc = UK tr, tr = UK dtr. dtr: one of them prints trtr, the other ttr; trtr is taken. trtr = UK qtr:
    // from memory of the Craft Yarn Council's table.
    [Theory]
    [InlineData("ch", "ch")]
    [InlineData("sl st", "sl st")]
    [InlineData("sc", "dc")]
    [InlineData("hdc", "htr")]
    [InlineData("dc", "tr")]
    [InlineData("tr", "dtr")]
    [InlineData("dtr", "trtr")]
    [InlineData("trtr", "qtr")]
    public void The_same_stitch_has_one_name_in_the_US_and_another_in_the_UK(string us, string uk)
    {
        Assert.NotNull(StitchBook.Find(us, Terms.US));
        Assert.Same(StitchBook.Find(us, Terms.US), StitchBook.Find(uk, Terms.UK));
    }

    // The words overlap, so that converting is one exchange and never one word after the other (same sheets).
    [Fact]
    public void A_UK_dc_is_not_a_US_dc()
    {
        Assert.Same(StitchBook.Single, StitchBook.Find("dc", Terms.UK));
        Assert.Same(StitchBook.Double, StitchBook.Find("dc", Terms.US));
        Assert.Null(StitchBook.Find("sc", Terms.UK));
        Assert.Null(StitchBook.Find("htr", Terms.US));
    }

    // Source: "How to Crochet a Turning Chain", Dummies: sl st 0, sc 1, hdc 2, dc 3, tr 4, dtr 5; it nearly always counts, sc excepted.
    // The split for hdc (older books count it, newer patterns often do not), and trtr by the same rule: common practice.
    [Theory]
    [InlineData("sl st", 0, false)]
    [InlineData("sc", 1, false)]
    [InlineData("hdc", 2, null)]
    [InlineData("dc", 3, true)]
    [InlineData("tr", 4, true)]
    [InlineData("dtr", 5, true)]
    [InlineData("trtr", 6, true)]
    public void A_stitch_knows_its_customary_turning_chain(string stitch, int chains, bool? counts)
    {
        var found = StitchBook.Find(stitch, Terms.US)!;
        Assert.Equal((chains, counts), (found.Height, found.TurningChainCounts));
    }

    // Sources: "Picot edging", a crochet blog, Sept 2009: sc 1 a row, dc 2, tr 3. hdc 3 in 2 rows: common practice. dtr 4 and trtr 5 by the same rule.
    [Theory]
    [InlineData("sc", 1, 1)]
    [InlineData("hdc", 3, 2)]
    [InlineData("dc", 2, 1)]
    [InlineData("tr", 3, 1)]
    [InlineData("dtr", 4, 1)]
    [InlineData("trtr", 5, 1)]
    public void A_stitch_knows_how_many_are_picked_up_along_its_rows(string stitch, int stitches, int rows) =>
        Assert.Equal(new PickUpRate(stitches, rows), StitchBook.Find(stitch, Terms.US)!.PickUp);

    // Published leaflets print "Sc", "Hdc" with a capital letter.
    [Fact]
    public void A_capital_letter_makes_no_difference() => Assert.Same(StitchBook.HalfDouble, StitchBook.Find("Hdc", Terms.US));

    [Fact]
    public void No_two_stitches_share_a_word_in_the_same_terms()
    {
        foreach (var terms in new[] { Terms.US, Terms.UK })
        {
            Assert.Distinct(StitchBook.All.Select(s => s.In(terms).Abbreviation));
            Assert.Distinct(StitchBook.All.Select(s => s.In(terms).Name));
        }
    }

    // Source: dailyhandmade.com (symbols): open oval, filled dot, cross, T without a slash, with 1, with 2; 3 and 4 by the same rule.
    [Theory]
    [InlineData("ch", SymbolShape.Oval, 0)]
    [InlineData("sl st", SymbolShape.Dot, 0)]
    [InlineData("sc", SymbolShape.Cross, 0)]
    [InlineData("hdc", SymbolShape.Stem, 0)]
    [InlineData("dc", SymbolShape.Stem, 1)]
    [InlineData("tr", SymbolShape.Stem, 2)]
    [InlineData("dtr", SymbolShape.Stem, 3)]
    [InlineData("trtr", SymbolShape.Stem, 4)]
    public void A_stitch_is_drawn_in_its_symbol_with_a_bar_more_for_each_taller_one(string stitch, SymbolShape shape, int bars) =>
        Assert.Equal(new StitchSymbol(shape, bars), StitchBook.Find(stitch, Terms.US)!.Symbol);

    // Common practice, no source: along chains and slip stitches one stitch for each; a chain is one chain high and stands for no stitch.
    [Fact]
    public void Chains_and_slip_stitches_are_picked_up_one_for_one()
    {
        Assert.Equal(new PickUpRate(1, 1), StitchBook.Chain.PickUp);
        Assert.Equal(new PickUpRate(1, 1), StitchBook.Slip.PickUp);
        Assert.Equal((1, false), (StitchBook.Chain.Height, StitchBook.Chain.TurningChainCounts));
    }
}
