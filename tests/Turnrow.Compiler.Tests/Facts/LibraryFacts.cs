using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>The stitch patterns of <c>patterns/stitch-library.turnrow</c>, held to multiples and chains as they are published.</summary>
public sealed class LibraryFacts
{
    private const string Custom = "turn dc: ch 3 counts";

    // Stitches, chains, and the chain that the first stitch goes into; of an increase in the first stitch, the one that it goes into beside the skipped chains.
    [Theory]
    [InlineData("moss", "", 209, 210, 2)] // 2, an even number, sc in 2nd ch, 210 chains, 209 stitches: published leaflet BRC0502-027780M
    [InlineData("wide-vees", Custom, 171, 173, 4)] // 4 + 5, 173 chains, 42 V: published leaflet BRC0502-029618M
    [InlineData("vees", Custom, 101, 103, 4)] // 103 chains, 33 V: published leaflet BRC0502-028564M
    [InlineData("waves", "", 111, 112, 2)] // 10 + 2, 112 chains, 111 sc: published leaflet CAC0502-029057M
    [InlineData("ripple", "", 172, 173, 2)] // 17 + 3, 173 chains: "Single crochet ripple tutorial", chattyspatterns.blogspot.com, 2011/02
    [InlineData("neat-ripple", Custom, 28, 31, 4)] // 14 + 3, 31 chains: forum.knittinghelp.com/t/126923
    [InlineData("interlocking-shells", "turn dc: ch 2 counts", 19, 21, 3)] // 6 + 3, 2 dc in 3rd ch: video text at hairsmakeup.com
    [InlineData("basketweave", "turn dc: ch 2 counts", 20, 21, 3)] // 6, + 2 edges, + 1 turning, dc in 3rd ch, 21 chains: creativecrochetcorner.com
    [InlineData("waffle", Custom, 102, 104, 4)] // 3 + 2, dc in 4th ch, 104 chains, 102 stitches: a vintage text; juneblog51.blogspot.com
    [InlineData("shells", "", 31, 32, 2)] // 6 + 1, add 1: common practice, no source
    public void A_published_foundation_is_that_of_the_first_row(string name, string turn, int stitches, int chains, int firstIn)
    {
        var compiled = Using($"{turn}\npiece back\n  begin with {stitches} stitches\n  straight 9 rows, in {name}");
        var row = compiled.Row(1);
        Assert.Equal((chains, firstIn), (((FoundationStart)compiled.Piece("back", 0).Start!).Chains, row.Work!.Opening.FirstStitchIn));
        Assert.Equal(chains, ((FoundationStart)Using($"{turn}\npiece back\n  chain {chains}\n  straight 9 rows, in {name}").Piece("back", 0).Start!).Chains);
    }

    // What of a sample is published as made: V, waves, stitches.
    [Theory]
    [InlineData("moss", 209, 1, "105 stitches, 104 spaces")] // 209 stitches, the ch-1 spaces counted: published leaflet BRC0502-027780M
    [InlineData("wide-vees", 171, 2, "86 stitches, 42 spaces")] // 42 V: published leaflet BRC0502-029618M
    [InlineData("vees", 101, 2, "68 stitches, 33 spaces")] // 33 V: published leaflet BRC0502-028564M
    [InlineData("waves", 111, 1, "111 stitches, 0 spaces")] // 111 sc: published leaflet CAC0502-029057M
    [InlineData("waffle", 102, 3, "102 stitches, 0 spaces")] // 102 stitches: a vintage text; juneblog51.blogspot.com
    [InlineData("chevron", 49, 2, "49 stitches, 0 spaces")] // 12 + 1, 49 stitches: neisripplealong.blogspot.com, 2007/05
    public void A_published_sample_makes_what_is_published(string name, int stitches, int row, string made)
    {
        var work = Using($"{Custom}\nturn hdc: ch 2 counts\npiece back\n  begin with {stitches} stitches\n  straight 9 rows, in {name}").Row(row).Work!;
        Assert.Equal(made, $"{work.Stitches} stitches, {work.Spaces} spaces");
    }

    [Theory]
    [InlineData("moss", 2, 1)] // 2 chains, an even number, so an odd one of stitches: published leaflet BRC0502-027780M
    [InlineData("wide-vees", 4, 3)] // 4 chains + 5, less 2 for the turning chain: published leaflet BRC0502-029618M
    [InlineData("vees", 3, 2)] // 3 chains + 4, less 2 for the turning chain: published leaflet BRC0502-028564M
    [InlineData("waves", 10, 1)] // 10 chains + 2: published leaflet CAC0502-029057M
    [InlineData("ripple", 17, 2)] // 17 chains + 3: chattyspatterns.blogspot.com, 2011/02
    [InlineData("neat-ripple", 14, 0)] // 14 chains + 3: forum.knittinghelp.com/t/126923
    [InlineData("chevron", 12, 1)] // 12 + 1 stitches: neisripplealong.blogspot.com, 2007/05
    [InlineData("interlocking-shells", 6, 1)] // 6 chains + 3: video text at hairsmakeup.com
    [InlineData("crumble", 3, 1)] // (sc, 2 dc) in one, 3 stitches + 1: a stitch dictionary, zanotowane.pl/719/2936
    [InlineData("basketweave", 6, 2)] // 6, + 2 edges: creativecrochetcorner.com
    [InlineData("waffle", 3, 0)] // 3 chains + 2: a vintage text; juneblog51.blogspot.com
    [InlineData("mesh", 2, 1)] // open filet, 2 + 1: stitchwhisperdesigns.com
    [InlineData("shells", 6, 1)] // 6 + 1: common practice, no source
    [InlineData("granny-stripe", 3, 2)] // 3 + 2: common practice, no source
    [InlineData("squares", 3, 1)] // 3 + 1: common practice, no source
    [InlineData("post-rib", 2, 2)] // even, an edge stitch at each end: common practice, no source
    public void A_multiple_is_the_published_one(string name, int multiple, int plus)
    {
        var row = Using($"{Custom}\nturn hdc: ch 2 counts\npiece back\n  begin with {(4 * multiple) + plus} stitches\n  straight 9 rows, in {name}").Row(9);
        var pattern = ((WordsPlan)row.Plan).Of!.Pattern;
        Assert.Equal((multiple, plus), (pattern.Multiple, pattern.Plus));
    }

    private static Compiled Using(string lines) => Compiled.Whole($"terms US\nuse \"stitch-library.turnrow\"\n{lines}\n").Clean();
}
