using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Compiler.Tests.Header;

public sealed class TermsTests
{
    private const string Begin = "piece back\nbegin with 12 stitches\n";

    [Fact]
    public void UK_words_mean_UK_stitches()
    {
        var uk = Compiled.Whole("terms UK\n" + Begin + "row 1: tr across = 12 tr\nrow 2: dc across\nrow 3: dtr2tog across = 6\nrow 4: tr inc 2 evenly").Clean();
        Assert.Equal([StitchBook.Double, StitchBook.Single, StitchBook.Treble, StitchBook.Double], uk.Piece("back", 0).Rows.Select(r => r.Work!.Opening.Stitch));
        Assert.Equal(8, uk.Counts().Last());
    }

    [Theory]
    [InlineData("UK", "sc", "other-terms")]
    [InlineData("UK", "hdc", "other-terms")]
    [InlineData("US", "htr", "other-terms")]
    [InlineData("US", "qqq", "unknown-stitch")]
    public void A_word_that_the_terms_do_not_have_is_an_error_that_offers_the_other_s(string terms, string word, string name) =>
        Assert.Equal([name], Compiled.Whole($"terms {terms}\n{Begin}row 1: {word} across").Found);

    [Fact]
    public void A_gauge_and_a_turning_chain_are_in_the_file_s_terms_too()
    {
        var uk = Compiled.Whole("terms UK\ngauge tr: 20 stitches and 10 rows to 10 cm\nturn tr: ch 2 does not count\n" + Begin + "row 1: tr across\nstraight to 5 cm").Clean();
        Assert.Equal("5", uk.Rows());
        Assert.Equal((2, false), (uk.Row(2).Work!.Opening.Chains, uk.Row(2).Work!.Opening.Counts));
    }
}
