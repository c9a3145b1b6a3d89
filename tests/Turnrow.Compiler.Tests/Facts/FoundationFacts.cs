using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Foundation chains as published: how many, which chain from the hook, and the stitches that they give.</summary>
public sealed class FoundationFacts
{
    private const string HdcCounts = "turn hdc: ch 2 counts";
    private const string HdcDoesNot = "turn hdc: ch 2 does not count";
    private const string DcDoesNot = "turn dc: ch 3 does not count";

    // Custom: "How to Crochet a Turning Chain", Dummies, and "Crochet: Turning Chain", thebestknittersguide.com, 2010/05, for sc to tr;
    // sc and dc textbook rule: moodlehub.ca, lesson 6; the numbers of chains are arithmetic. Slip stitches, dtr by the same rule and trtr:
    // common practice, no source.
    [Theory]
    [InlineData("", "sl st", 21, 2)]
    [InlineData("", "sc", 21, 2)]
    [InlineData(HdcCounts, "hdc", 21, 3)]
    [InlineData(HdcDoesNot, "hdc", 22, 3)]
    [InlineData("", "dc", 22, 4)]
    [InlineData(DcDoesNot, "dc", 23, 4)]
    [InlineData("", "tr", 23, 5)]
    [InlineData("", "dtr", 24, 6)]
    [InlineData("", "trtr", 25, 7)]
    public void Twenty_stitches_take_so_many_chains(string rule, string stitch, int chains, int firstIn)
    {
        var made = Printed.Piece(rule, $"begin with 20 stitches\nrow 1: {stitch} across = 20");
        Assert.Equal((chains, firstIn), Printed.Foundation(made));
        Assert.Same(StitchBook.Find(stitch, Terms.US), made.Row(1).Work!.Opening.Stitch);
    }

    [Theory]
    [InlineData(HdcCounts, 31, "hdc", 30)] // Lion Brand glossary, "half double crochet": wanted hdc + 1
    [InlineData(HdcCounts, 21, "hdc", 20)] // mersydotes.blogspot.com, 2016/05
    [InlineData(HdcCounts, 17, "hdc", 16)] // a Dummies text, repeated at howtodiscuss.com
    [InlineData("turn hdc: ch 2 counts, first stitch in 4th chain", 15, "hdc", 13)] // thefiberbug.blogspot.com, 2019/02
    [InlineData("turn sc: ch 1 does not count, first stitch in 3rd chain", 22, "sc", 20)] // citygirlcrochet.com, "crochet terms and definitions"
    [InlineData("", 12, "sc", 11)] // published leaflet CAC0116-029868M
    [InlineData("", 26, "sc", 25)] // published leaflet CAC0502-030680M
    [InlineData("", 4, "sc", 3)] // published leaflet CAC0125-012177M
    [InlineData("", 210, "sc", 209)] // published leaflet BRC0502-027780M
    [InlineData("", 112, "sc", 111)] // published leaflet CAC0502-029057M
    [InlineData("", 32, "dc", 30)] // "Sampler afghan square #9", a blog, 16 May 2015
    [InlineData("turn dc: ch 3 counts, first stitch in 5th chain", 42, "dc", 39)] // thelazyhobbyhopper.blogspot.com
    [InlineData("turn dc: ch 2 counts", 21, "dc", 20)] // creativecrochetcorner.com, basket weave: 6, + 2 edges, + 1 turning
    [InlineData("", 104, "dc", 102)] // waffle: a vintage text; juneblog51.blogspot.com
    [InlineData(HdcCounts, 35, "hdc", 34)] // ninasatmyhouse.blogspot.com, 2016/10: 34 hdc (its chain of 20 is an error)
    public void Published_chains_give_the_published_stitches(string rule, int chains, string stitch, int stitches) =>
        Assert.Equal([stitches], Printed.Piece(rule, $"chain {chains}\nrow 1: {stitch} across = {stitches}").Clean().Counts());

    // Published leaflet CAC0129-010202M: ch 32 (32, 34, 36, 38, 42), 1 hdc in 3rd ch, the 2 ch not counted.
    [Fact]
    public void Chains_in_six_sizes_give_two_fewer_where_two_are_not_counted() => Assert.Equal(
        "30 (30, 32, 34, 36, 40)",
        Printed.Piece($"sizes XS, S, M, L, XL, 2XL\n{HdcDoesNot}", "chain 32 (32, 34, 36, 38, 42)\nrow 1: hdc across").Clean().Last());

    // A Dummies text, repeated at howtodiscuss.com: 16 hdc in row 1, and in row 2 as well.
    [Fact]
    public void The_second_row_has_as_many_as_the_first() =>
        Assert.Equal([16, 16], Printed.Piece(HdcCounts, "chain 17\nrow 1: hdc across\nrow 2: hdc across").Clean().Counts());

    // "The Crochet Handbook", chapter 3: 30 in wide, 3 stitches to the inch, and 3 chains for the first dc: 90 and chain 93. Pages say
    // "add turning chains" in two ways: here the skipped chains are added whole, so 90 come out only where they do not count.
    [Theory]
    [InlineData(DcDoesNot, 90)]
    [InlineData("turn dc: ch 3 counts", 91)]
    public void Adding_the_whole_turning_chain_gives_one_more_where_it_counts(string rule, int stitches) =>
        Assert.Equal([stitches], Printed.Piece(rule, "chain 93\nrow 1: dc across").Clean().Counts());

    // The loop on the hook and the slip knot are never counted as chains: "How are crochet stitches calculated?", katieskitchenblog.com.
    // So the 2nd chain from the hook is the last but one of all that were made.
    [Fact]
    public void The_loop_on_the_hook_is_no_chain() => Assert.Equal((6, 2), Printed.Foundation(Printed.Piece("", "begin with 5 stitches\nrow 1: sc across")));

    // The note and not the length decides, "ch 2 does not count as hdc": conventions of published leaflets.
    [Fact]
    public void The_note_and_not_the_length_decides_whether_it_counts()
    {
        Assert.Equal([19], Printed.Piece(HdcCounts, "chain 20\nrow 1: hdc across").Clean().Counts());
        Assert.Equal([18], Printed.Piece(HdcDoesNot, "chain 20\nrow 1: hdc across").Clean().Counts());
    }
}
