using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>US and UK words, read from files in either terms.</summary>
public sealed class TermsFacts
{
    private static Work First(string terms, string word) => (Work)Compiled
        .Whole($"terms {terms}\nturn hdc: ch 2 counts\n".Replace("hdc", terms == "UK" ? "htr" : "hdc", StringComparison.Ordinal)
            + $"piece back\nbegin with 12 stitches\nrow 1: {(terms == "UK" ? "tr" : "dc")} across\nrow 2: {word} across").Clean().Row(2).Work!.Words[0];

    // Sources: "Crochet hook, yarn and stitch conversions" and "Crochet Terms Translation Chart" (two conversion sheets). US trtr = UK qtr:
    // from memory of the Craft Yarn Council's table. sc2tog = dc2tog, dc2tog = tr2tog and FPdc = FPtr: pages of two UK books, "Modern Granny
    // Square Crochet" p. 9 and "Shawls & Wraps" p. 9; BPdc = BPtr by the same rule.
    [Theory]
    [InlineData("sl st", "sl st")]
    [InlineData("sc", "dc")]
    [InlineData("hdc", "htr")]
    [InlineData("dc", "tr")]
    [InlineData("tr", "dtr")]
    [InlineData("dtr", "trtr")]
    [InlineData("trtr", "qtr")]
    [InlineData("sc2tog", "dc2tog")]
    [InlineData("dc2tog", "tr2tog")]
    [InlineData("FPdc", "FPtr")]
    [InlineData("BPdc", "BPtr")]
    public void A_US_word_and_its_UK_word_are_the_same_stitch(string us, string uk)
    {
        var (american, british) = (First("US", us), First("UK", uk));
        Assert.Same(american.Stitch, british.Stitch);
        Assert.Equal((american.Takes, american.Makes, american.Hook), (british.Takes, british.Makes, british.Hook));
    }

    // The words overlap: US dc = UK tr, UK dc = US sc, US tr = UK dtr (the same two sheets). So a word is never translated twice.
    [Theory]
    [InlineData("dc", "sc")]
    [InlineData("tr", "dc")]
    [InlineData("dtr", "tr")]
    [InlineData("trtr", "dtr")]
    public void A_word_of_both_means_one_stitch_in_one_and_another_in_the_other(string word, string ukMeaning)
    {
        Assert.Equal(word, First("US", word).Stitch.Id);
        Assert.Equal(ukMeaning, First("UK", word).Stitch.Id);
    }

    // Abbreviations of the Craft Yarn Council's list: from memory.
    [Theory]
    [InlineData("FPsc", "sc", HookInto.FrontPost)]
    [InlineData("FPhdc", "hdc", HookInto.FrontPost)]
    [InlineData("FPdc", "dc", HookInto.FrontPost)]
    [InlineData("FPtr", "tr", HookInto.FrontPost)]
    [InlineData("FPdtr", "dtr", HookInto.FrontPost)]
    [InlineData("BPsc", "sc", HookInto.BackPost)]
    [InlineData("BPhdc", "hdc", HookInto.BackPost)]
    [InlineData("BPdc", "dc", HookInto.BackPost)]
    [InlineData("BPtr", "tr", HookInto.BackPost)]
    [InlineData("BPdtr", "dtr", HookInto.BackPost)]
    [InlineData("BL dc", "dc", HookInto.BackLoop)]
    [InlineData("BLO dc", "dc", HookInto.BackLoop)]
    [InlineData("FL dc", "dc", HookInto.FrontLoop)]
    [InlineData("FLO dc", "dc", HookInto.FrontLoop)]
    public void An_abbreviation_says_where_the_hook_goes(string word, string stitch, HookInto hook)
    {
        var work = First("US", word);
        Assert.Equal((StitchBook.Find(stitch, Terms.US), hook), (work.Stitch, work.Hook));
    }

    // Abbreviations of the Craft Yarn Council's list: from memory.
    [Theory]
    [InlineData("sc2tog", "sc")]
    [InlineData("hdc2tog", "hdc")]
    [InlineData("dc2tog", "dc")]
    [InlineData("tr2tog", "tr")]
    public void Two_together_take_two_and_make_one(string word, string stitch)
    {
        var work = First("US", word);
        Assert.Equal((stitch, 2, 1), (work.Stitch.Id, work.Takes, work.Makes));
    }

    // Published leaflets of Yarnspirations print "Hdc2tog" and "Sc2tog" with a capital first letter.
    [Theory]
    [InlineData("Hdc2tog", "hdc2tog")]
    [InlineData("Sc2tog", "sc2tog")]
    public void A_capital_first_letter_makes_no_difference(string printed, string plain) =>
        Assert.Equal(First("US", plain) with { Origin = default }, First("US", printed) with { Origin = default });
}
