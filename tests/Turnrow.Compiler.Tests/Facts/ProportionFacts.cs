using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Shares of a body's stitches (the percentage system), and balls of another yarn, as published.</summary>
public sealed class ProportionFacts
{
    // countrywool.com, a raglan by percentages: rib 90 %, top of sleeve 33 %, cuff 20 %, yoke 133 %, neck 40 %; of a body of 200.
    // handmadestitchbystitch.wordpress.com, "yoke cheat sheet": body 200, sleeve 66, underarm 16, yoke 268, neck 80, and of a raglan
    // sleeve 50, front and back 84. diydiy.info: body 210, rib 189, cuff 42, upper sleeve 35 % (73.5).
    [Theory]
    [InlineData("200 x 90 / 100", "180")] // countrywool.com
    [InlineData("200 x 20 / 100", "40")] // countrywool.com
    [InlineData("200 x 133 / 100", "266")] // countrywool.com
    [InlineData("200 x 33 / 100", "66")] // the yoke cheat sheet; countrywool.com
    [InlineData("200 x 8 / 100", "16")] // the yoke cheat sheet
    [InlineData("200 + 2 x 66 - 4 x 16", "268")] // the yoke cheat sheet
    [InlineData("200 x 40 / 100", "80")] // the yoke cheat sheet; countrywool.com
    [InlineData("66 - 16", "50")] // the yoke cheat sheet
    [InlineData("200 / 2 - 16", "84")] // the yoke cheat sheet
    [InlineData("2 x 50 + 2 x 84", "268")] // the yoke cheat sheet
    [InlineData("210 x 90 / 100", "189")] // diydiy.info
    [InlineData("210 x 90 / 100, even", "190")] // diydiy.info: 188 or 190 for a rib of 2 and 2; on a tie the larger (common practice)
    [InlineData("210 x 20 / 100", "42")] // diydiy.info
    [InlineData("210 x 35 / 100, rounded up", "74")] // diydiy.info: 73.5
    public void A_share_of_the_stitches_is_the_printed_one(string count, string expected) =>
        Printed.Top($"count n is {count}\nexpect n are {expected}").Clean();

    // handmadestitchbystitch.wordpress.com, the same sheet: three rows of (1, 2 together): 268, 179, 120, 80.
    [Fact]
    public void Three_rows_of_one_and_two_together_take_a_yoke_to_its_neck() => Assert.Equal(
        [268, 179, 120, 80],
        Printed.Over("268", "row: (dc, dec) until 1 remain, dc\nrow: (dc, dec) until 2 remain, dc 2\nrow: (dc, dec) across").Clean().Counts());

    // The other version of the sheet: (2, 2 together), (1, 2 together), (1, 2 together, 2 together): 268, 201, 134, 80 (80.4).
    [Fact]
    public void Three_other_rows_take_it_there_too() => Assert.Equal(
        [268, 201, 134, 80],
        Printed.Over("268", "row: (dc 2, dec) across\nrow: (dc, dec) across\nrow: (dc, dec, dec) until 4 remain, dec 2").Clean().Counts());

    // serendipity.gpvm.com/modify.html: a front is the back's width less 1 in of band, halved.
    [Fact]
    public void A_front_is_half_the_back_without_the_band() =>
        Printed.Top("measure back-width is 21 in\nmeasure front-width is (back-width - 1 in) / 2\nexpect front-width is 10 in").Clean();

    [Theory]
    [InlineData("9 x 200 / 109", "17")] // agoodyarn.biz, tips: 1800 yd, 16.5
    [InlineData("9 x 182 / 100", "17")] // the same page: 1638 m, 16.4
    [InlineData("4 x 150 / 200", "3")] // crochet.lifetips.com, "Substituting yarn"
    [InlineData("5 x 338 / 124", "14")] // cebuana80.blogspot.com, 2015/01: 13.6
    [InlineData("6 x 100 / 150", "4")] // LoveKnitting help, "Substituting yarn"
    [InlineData("6 x 100 / 90", "7")] // the same page: 6.67, printed as 6.6
    [InlineData("60 x 72 / (13.5 x 3.12)", "103")] // neisripplealong.blogspot.com, 2007/05: 4320 / 42.12, about 103
    [InlineData("103 x 35", "3605")] // the same page: yards
    [InlineData("103 x 35 / 220", "17")] // the same page: skeins
    [InlineData("162 x 112", "18144")] // sdrta.net, "how much yarn to crochet a blanket": stitches
    [InlineData("30 x 10", "300")] // the same page: the swatch
    public void Balls_are_rounded_up(string count, string expected) =>
        Printed.Top($"count n is {count}, rounded up\nexpect n are {expected}").Clean();
}
