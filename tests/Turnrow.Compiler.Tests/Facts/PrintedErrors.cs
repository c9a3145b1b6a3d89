using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Errors that were published: typed as printed, the compiler objects, and shows the arithmetic that is right.</summary>
public sealed class PrintedErrors
{
    private const string HdcCounts = "turn hdc: ch 2 counts";

    [Theory]
    // busyfingersbusylife.blogspot.nl, 2012/10: ch 10 + 2, hdc in the 3rd, 10 printed, while the turning chain counts.
    [InlineData(HdcCounts, "chain 12\nrow 1: hdc across = 10", "the row makes 11: 1 more")]
    // thefiberbug.blogspot.com, 2019/02: 13 of 15 chains; with the usual 3rd chain it would be 14.
    [InlineData(HdcCounts, "chain 15\nrow 1: hdc across = 13", "the row makes 14: 1 more")]
    // citygirlcrochet.com: 20 sc of 22 chains; with the usual 2nd chain it would be 21.
    [InlineData("", "chain 22\nrow 1: sc across = 20", "the row makes 21: 1 more")]
    // "The Crochet Handbook", chapter 3: 93 chains for 90, which holds only where the 3 chains do not count.
    [InlineData("", "chain 93\nrow 1: dc across = 90", "the row makes 91: 1 more")]
    // ninasatmyhouse.blogspot.com, 2016/10: chain 20 and 34 hdc, which need 35.
    [InlineData(HdcCounts, "chain 20\nrow 1: hdc across = 34", "the row makes 19: 15 fewer")]
    // ninasatmyhouse.blogspot.com, 2015/10/25: "chain 14 (5+2+2 = 14)": 9; 14 is 10 + 2 + 2, two times 5 and 2, and 2.
    [InlineData("", "chain 5 + 2 + 2\nrow 1: dc across = 5 x 2 + 2", "the row makes 7: 5 fewer")]
    // Published leaflet BRC0202-003788M: 102 stitches of 105 chains with dc in the 4th (the pattern's own edge); by the rule 103.
    [InlineData("", "chain 105\nrow 1: dc across = 102", "the row makes 103: 1 more")]
    public void A_count_that_its_chain_does_not_give(string rule, string lines, string arithmetic) =>
        Printed.Objects(Printed.Piece(rule, lines), "row-count", arithmetic);

    // spincraftpatterns.com, "decrease evenly across row": 131 less 39, written as groups of 4 and 5 where 3 and 4 are meant: 25 of 4 take
    // 100, and of the 31 that are left 14 of 5 can't be made: after the sixth there is 1.
    [Fact]
    public void Groups_that_are_one_too_long() => Printed.Objects(
        Printed.Over("131", "row 2: (dc 2, dec) 25 times, (dc 3, dec) 14 times = 92"), "row-length", "needs 3 stitches, and row 2 of back has 1 left");

    // koel-magazine.com, waffle stitch: 3 + 2 in the steps, 3 alone in the short text: 102 chains are no 3 + 2, and the row leaves one.
    [Fact]
    public void A_multiple_that_lacks_its_edge() => Printed.Objects(
        Printed.Piece("", "chain 102\nrow 1: dc across = 100\nrow 2: (FPdc, dc 2) across"), "repeat-remainder", "33 times 3 is 99, and 1 is left over of 100");

    [Theory]
    [InlineData("expect 78 - 32 are 42", "makes 46, and the number here is 42")] // designyourownsweater.blogspot.com, 2007/01: half of 156 less half of 72 is 78 - 36
    [InlineData("expect 5 + 2 + 2 are 14", "makes 9, and the number here is 14")] // ninasatmyhouse.blogspot.com, 2015/10/25
    [InlineData("expect 600 / 90 are 6.6", "makes 6 2/3, and the number here is 6 3/5")] // LoveKnitting help, "Substituting yarn": 6.67 printed as 6.6
    public void Sums_that_are_wrong(string line, string arithmetic) => Printed.Objects(Printed.Top(line), "expect-equal", arithmetic);

    // Published leaflet CAC0129-035073M: 979 yd are 2.04 cakes of 481 yd, printed as 2; the other sizes are right.
    [Fact]
    public void A_cake_too_few_in_one_size()
    {
        var found = Printed.Fault(Printed.Top("""
            sizes "XS/S", M, L, XL, "2/3XL", "4/5XL"
            count yards is 780 (905, 979, 1075, 1200, 1360)
            count cakes is yards / 481, rounded up
            expect cakes are 2 (2, 2, 3, 3, 3)
            """), "expect-equal");
        Assert.Equal(["L"], found.Sizes);
        Assert.Contains("cakes is 3, and the number here is 2", found.Message, StringComparison.Ordinal);
    }

    // crochetqueen.co, "Raglans lesson #4": a sleeve is 0.25 of the back, once printed as .025.
    [Fact]
    public void A_point_in_the_wrong_place()
    {
        Printed.Top("count back-neck is 36\ncount sleeve is back-neck x 0.25\nexpect sleeve are 9").Clean();
        Printed.Objects(Printed.Top("count back-neck is 36\ncount sleeve is back-neck x 0.025"), "not-whole", "9/10");
        Printed.Objects(Printed.Top("count back-neck is 36\ncount sleeve is back-neck x .025"), "strange-character", "can't begin with its point");
    }

    // Both units of a leaflet, of which one is a slip: as many stitches as the inches ask for do not measure the printed centimetres.
    [Theory]
    [InlineData("42", "122", "106.68 cm", "15.32 cm less than 122 cm")] // published leaflet CAK0129-029288M, bust M: 106.5
    [InlineData("48", "132", "121.92 cm", "10.08 cm less than 132 cm")] // published leaflet CAC0129-029329M, bust L: 122 (its M is 42 in [122 cm] too)
    [InlineData("62", "168", "157.48 cm", "10.52 cm less than 168 cm")] // published leaflet PAC0129-027531M, bust 4/5XL: 157.5
    [InlineData("8", "71", "20.32 cm", "50.68 cm less than 71 cm")] // published leaflet CAC0129-010202M, to fit XS/S: 28 in
    [InlineData("65", "162.5", "165.1 cm", "2.6 cm more than 162.5 cm")] // published leaflet CAK0129-029288M, bust 4/5XL: 165
    [InlineData("10", "33", "25.4 cm", "7.6 cm less than 33 cm")] // motherhoodday.com, newborn head: 13 in
    public void Inches_that_are_not_the_centimetres(string inches, string printed, string made, string off)
    {
        var leaflet = Printed.Top($"measure bust is {printed} cm\ngauge sc: 100 stitches and 10 rows to 1 in\ncount n is stitches for {inches} in\nexpect n stitches measure bust, within 1/2 cm");
        Printed.Objects(leaflet, "expect-measure", $"stitches measure {made}, {off}");
    }

    // Widths printed beside a gauge that gives another: the V-stitches' edges, a scalloped edge, or a gauge that is odd.
    [Theory]
    [InlineData(3, 42, "57 in", "56 in, 1 in less than 57 in")] // published leaflet BRC0502-029618M
    [InlineData(3, 37, "50 1/2 in", "49.33 in, 1.17 in less than 50.5 in")] // published leaflet BRC0502-030110M
    [InlineData(3, 33, "50 in", "44 in, 6 in less than 50 in")] // published leaflet BRC0502-028564M
    [InlineData(11, 102, "40 in", "37.09 in, 2.91 in less than 40 in")] // published leaflet BRC0202-003788M
    [InlineData(14, 64, "19 1/2 in", "18.29 in, 1.21 in less than 19.5 in")] // published leaflet CAC0116-029868M: meant, the ribbing is stretched
    public void Widths_that_the_gauge_does_not_give(int gauge, int stitches, string printed, string arithmetic) => Printed.Objects(
        Printed.Top($"gauge sc: {gauge} stitches and 10 rows to 4 in\nexpect {stitches} stitches measure {printed}, within 1/2 in"),
        "expect-measure", arithmetic);

    // serendipity.gpvm.com/modify.html: 2 dc rows take 5 sc along the side, against the custom of 2 a row ("Picot edging", a crochet blog).
    [Fact]
    public void Five_along_two_rows_of_dc_are_not_the_custom() => Printed.Objects(
        Printed.Piece("", "begin with 20 stitches\nrow 1: dc across\nrow 2: dc across\npiece band picked up along back right edge: sc = 5"),
        "row-count", "5 stitches are claimed, and the row makes 4: 1 fewer");
}
