using CsCheck;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Fabric.Tests.Stitches;

public sealed class TurnRuleTests
{
    // Arithmetic, no source needed: c chains, the first stitch in the k-th, s = 1 if the skipped chains count: c - (k - 1) + s.
    [Theory]
    [InlineData("sl st", 0, false, 20, 21, 2)] // the 2nd chain of slip stitches: common practice
    [InlineData("sc", 1, false, 20, 21, 2)]
    [InlineData("hdc", 2, true, 20, 21, 3)]
    [InlineData("hdc", 2, false, 20, 22, 3)]
    [InlineData("dc", 3, true, 20, 22, 4)]
    [InlineData("dc", 3, false, 20, 23, 4)]
    [InlineData("tr", 4, true, 20, 23, 5)]
    [InlineData("dtr", 5, true, 20, 24, 6)]
    [InlineData("trtr", 6, true, 20, 25, 7)] // by the same rule: common practice
    public void Twenty_stitches_need_so_many_chains_and_so_many_chains_give_twenty(
        string stitch, int length, bool counts, int stitches, int chains, int firstIn)
    {
        var rule = TurnRule.Of(length, counts);
        Assert.Equal(firstIn, rule.FirstStitchIn);
        Assert.Equal(chains, rule.ChainsFor(stitches));
        Assert.Equal(stitches, rule.StitchesOf(chains));
        Assert.Equal(length, StitchBook.Find(stitch, Terms.US)!.Height);
    }

    // Sources: Lion Brand glossary, "half double crochet" (wanted hdc + 1, first in the 3rd chain, counted); a blog of 2016/05 prints
    // chain 21 for 20; a Dummies text prints 15 + 2 = 17 chains, first in the 3rd, 16 hdc with the turning chain.
    [Theory]
    [InlineData(21, 20)]
    [InlineData(17, 16)]
    public void Published_foundations_of_half_doubles_come_out(int chains, int stitches) =>
        Assert.Equal(stitches, TurnRule.CustomOf(StitchBook.HalfDouble).StitchesOf(chains));

    // Source: thefiberbug.blogspot.com, 2019/02: chain 15, hdc in the 4th, ch 2 counted: 12 worked and 1 counted.
    [Fact]
    public void A_first_chain_of_its_own_is_followed() => Assert.Equal(13, new TurnRule(2, true, true, 4).StitchesOf(15));

    // Source: busyfingersbusylife.blogspot.nl, 2012/10: ch 10 + 2, hdc in the 3rd, prints 10 while saying that the chain counts. A page error.
    [Fact]
    public void A_published_slip_does_not_come_out() => Assert.Equal(11, TurnRule.CustomOf(StitchBook.HalfDouble).StitchesOf(12));

    // Source: citygirlcrochet.com, "crochet terms and definitions": ch 22, sc in the 3rd, 20 sc: the chain is a place, not a stitch.
    [Fact]
    public void A_first_chain_further_on_costs_a_stitch() => Assert.Equal(20, new TurnRule(1, false, false, 3).StitchesOf(22));

    [Fact]
    public void A_chain_may_count_in_the_rows_and_not_in_the_foundation() => Assert.Equal(22, new TurnRule(2, true, false, 3).ChainsFor(20));

    [Fact]
    public void Custom_is_the_stitch_s_height_and_counts_where_print_does_both()
    {
        Assert.Equal(TurnRule.Of(3, true), TurnRule.CustomOf(StitchBook.Double));
        Assert.Equal(TurnRule.Of(2, true), TurnRule.CustomOf(StitchBook.HalfDouble));
        Assert.Equal(TurnRule.Of(1, false), TurnRule.CustomOf(StitchBook.Single));
    }

    [Fact]
    public void Chains_for_stitches_give_these_stitches() => Gen.Select(Gen.Int[0, 9], Gen.Bool, Gen.Bool, Gen.Int[1, 9], Gen.Int[1, 500])
        .Sample((chains, counts, inFoundation, first, stitches) =>
        {
            var rule = new TurnRule(chains, counts, inFoundation, first);
            return rule.StitchesOf(rule.ChainsFor(stitches)) == stitches;
        });
}
