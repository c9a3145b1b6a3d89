using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Multiples as publishers state them, with the chain and the first row that go with them.</summary>
public sealed class MultipleFacts
{
    // "5 plus 1 means 5k + 1, never 6k", and even and odd multiples: stitchwhisperdesigns.com, 2021/03. The others are the sample chains or
    // stitches of the pattern named.
    [Theory]
    [InlineData(11, 5, 1)] // stitchwhisperdesigns.com, 2021/03
    [InlineData(56, 5, 1)] // the same
    [InlineData(101, 5, 1)] // the same
    [InlineData(8, 4, 0)] // "even multiple of 2": the same
    [InlineData(6, 4, 2)] // "odd multiple of 2": the same
    [InlineData(210, 2, 0)] // moss stitch: published leaflet BRC0502-027780M
    [InlineData(173, 4, 5)] // wide V-stitch: published leaflet BRC0502-029618M
    [InlineData(117, 3, 6)] // V-stitch: published leaflet BRC0502-030110M
    [InlineData(103, 3, 4)] // V-stitch with narrow edges, its multiple not stated: published leaflet BRC0502-028564M
    [InlineData(92, 3, 2)] // groups: published leaflet CAC0126-035092M
    [InlineData(112, 10, 2)] // waves: published leaflet CAC0502-029057M
    [InlineData(105, 17, 3)] // feather and fan, not stated: published leaflet BRC0202-003788M
    [InlineData(31, 14, 3)] // ripple: forum.knittinghelp.com/t/126923
    [InlineData(173, 17, 3)] // sc ripple: "Single crochet ripple tutorial", chattyspatterns.blogspot.com, 2011/02
    [InlineData(21, 6, 3)] // basket weave, 6, + 2 edges, + 1 turning: creativecrochetcorner.com
    [InlineData(104, 3, 2)] // waffle: a vintage text; juneblog51.blogspot.com
    [InlineData(66, 4, 2)] // open shells, not stated: thelazyhobbyhopper.blogspot.com
    [InlineData(49, 12, 1)] // ripple, in stitches: neisripplealong.blogspot.com, 2007/05
    public void A_published_sample_is_of_its_multiple_and_the_next_number_is_not(int sample, int multiple, int plus)
    {
        Printed.Top($"count n is {sample}, multiple of {multiple} + {plus}\nexpect n is {sample}").Clean();
        Printed.Fault(Printed.Top($"count n is {sample + 1}, multiple of {multiple} + {plus}\nexpect n is {sample + 1}"), "expect-equal");
    }

    [Theory]
    // Moss stitch, even number of chains, first sc in 2nd: 210 chains, 209 stitches: published leaflet BRC0502-027780M.
    [InlineData(210, "sc, (ch 1, skip 1, sc) across", "= 209 sts with chains")]
    // Wide V-stitch, 4 + 5, V in 6th chain: 173 chains, 42 V: published leaflet BRC0502-029618M.
    [InlineData(173, "dc, skip 2, ((dc, ch 2, dc) in next, skip 3) 41 times, (dc, ch 2, dc) in next, skip 2, dc", "= 86 dc, 42 sp")]
    // V-stitch, 3 + 6, V in 6th chain: 117 chains, 37 V: published leaflet BRC0502-030110M.
    [InlineData(117, "dc, skip 2, ((dc, ch 1, dc) in next, skip 2) 36 times, (dc, ch 1, dc) in next, skip 2, dc", "= 76 dc, 37 sp")]
    // V-stitch with narrow edges, V in 5th chain: 103 chains, 33 V: published leaflet BRC0502-028564M.
    [InlineData(103, "dc, skip 1, ((dc, ch 1, dc) in next, skip 2) 32 times, (dc, ch 1, dc) in next, skip 1, dc", "= 68 dc, 33 sp")]
    // Groups of 2 sc, ch 2: 92 chains, 30 groups: published leaflet CAC0126-035092M.
    [InlineData(92, "(sc 2, ch 2, skip 1) until 1 remain, sc", "= 61 sc, 30 sp")]
    // Waves: 112 chains, 111 sc, 11 waves of 10: published leaflet CAC0502-029057M.
    [InlineData(112, "(sc 10) 11 times, sc", "= 111 sc")]
    // Open shells and loops, sc in 2nd chain: 66 chains, 16 loops: thelazyhobbyhopper.blogspot.com.
    [InlineData(66, "sc, (ch 5, skip 3, sc) across", "= 17 sc, 16 sp")]
    // sc ripple, 7 sc a side, 10 peaks: 14 + 1 + 2 = 17, 170 + 3 = 173: chattyspatterns.blogspot.com, 2011/02.
    [InlineData(173, "sc, skip 1, (sc 7, 3 sc in next, sc 7, skip 2) 9 times, sc 7, 3 sc in next, sc 7, skip 1, sc", "= 172 sc")]
    public void A_published_chain_has_room_for_the_first_row(int chains, string words, string claim) => Assert.Equal(
        chains, Printed.Foundation(Printed.Piece("turn dc: ch 3 counts", $"chain {chains}\nrow 1: {words} {claim}")).Chains);

    [Theory]
    [InlineData(25, 26, "sc, (skip 3, 9 dc in next, skip 3, sc) across")] // Catherine wheel, 8 stitches + 1, add 1: a stitch dictionary, zanotowane.pl/719/2936
    [InlineData(33, 34, "sc across")] // petal, 8 + 1, sc in 2nd ch: craftorator.com/6665
    [InlineData(31, 32, "sc, (skip 2, 5 dc in next, skip 2, sc) across")] // classic shell, 6 + 1, add 1: common practice, no source
    [InlineData(28, 29, "sc across")] // hooked clusters, 8 + 4, add 1: a stitch dictionary, zanotowane.pl/719/2936
    [InlineData(17, 18, "sc across")] // treble X, 3 + 2, add 1: zanotowane.pl/719/2970
    public void Stitches_and_one_chain_more_for_the_base(int stitches, int chains, string words) =>
        Assert.Equal((chains, 2), Printed.Foundation(Printed.Piece("", $"begin with {stitches} stitches\nrow 1: {words}")));
}
