using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Gauge arithmetic as published: lengths that become counts, counts that measure a length, and how both are rounded.</summary>
public sealed class GaugeFacts
{
    [Theory]
    [InlineData("18 stitches and 24 rows to 4 in", "stitches for 2 in", "9")] // bkkquilt.com: 4.5 stitches to the inch
    [InlineData("18 stitches and 24 rows to 4 in", "rows for 1 in", "6")] // the same page: 6 rows to the inch
    [InlineData("3 stitches and 2 rows to 1 in", "stitches for 30 in", "90")] // "The Crochet Handbook", chapter 3
    [InlineData("3 stitches and 2 rows to 1 in", "rows for 54 in", "108")] // the same chapter
    [InlineData("13 stitches and 7.5 rows to 4 in", "stitches for 50 in, rounded down", "162")] // sdrta.net, "how much yarn to crochet a blanket": 162.5
    [InlineData("13 stitches and 7.5 rows to 4 in", "rows for 60 in, rounded down", "112")] // the same page: 112.5
    [InlineData("6 stitches and 3 rows to 1 in", "rows for 24 in / 6", "12")] // fiber-images.com, "How to convert": 24 rows at 6 to the inch
    [InlineData("28 stitches and 40 rows to 10 cm", "stitches for 26 cm, even", "72")] // designyourownsweater.blogspot.com, 2007/01: 72.8
    [InlineData("28 stitches and 40 rows to 10 cm", "stitches for 56 cm, even", "156")] // the same page: 156.8
    [InlineData("28 stitches and 40 rows to 10 cm", "rows for 49 cm", "196")] // the same page
    [InlineData("5 stitches and 7 rows to 1 in", "stitches for 7.75 in, even", "38")] // a knitwear blog of 2014: 38.75
    [InlineData("5 stitches and 7 rows to 1 in", "rows for 15.5 in, even", "108")] // the same blog: 108.5
    [InlineData("5.5 stitches and 7 rows to 1 in", "stitches for 9 in", "50")] // knittingunplugged.com, 2016/05: 49.5
    [InlineData("5.5 stitches and 7 rows to 1 in", "stitches for 13 in", "72")] // the same page: 71.5
    [InlineData("4.25 stitches and 6.75 rows to 1 in", "rows for 13 in, even", "88")] // papermoonknits.com, "Math Monday": 87.75
    [InlineData("4.25 stitches and 6.75 rows to 1 in", "stitches for 9 in, multiple of 4", "40")] // the same page: 38.25
    [InlineData("4.6 stitches and 6 rows to 1 in", "stitches for 22 in, even", "102")] // Interweave, "Focus on fit": neck, 101.2
    [InlineData("4.6 stitches and 6 rows to 1 in", "stitches for 40 in", "184")] // the same article: bust
    [InlineData("4.6 stitches and 6 rows to 1 in", "stitches for 13 in", "60")] // the same article: sleeve, 59.8
    [InlineData("5 stitches and 7 rows to 1 in", "stitches for 40 in", "200")] // handmadestitchbystitch.wordpress.com, "yoke cheat sheet"
    [InlineData("5 stitches and 6.6 rows to 1 in", "rows for 40 in / 4", "66")] // the same sheet: yoke height 25 % of 40 in
    [InlineData("5 stitches and 7.5 rows to 1 in", "rows for 40 in / 4", "75")] // the same sheet: 66 to 75 rounds
    [InlineData("5 stitches and 7 rows to 1 in", "stitches for 42 in", "210")] // diydiy.info, the percentage system
    [InlineData("5 stitches and 7 rows to 1 in", "stitches for 50 in", "250")] // heleninhobart.blogspot.com
    [InlineData("16.65 stitches and 16.27 rows to 1 in", "stitches for 1 in", "17")] // modenook.com, "Yarn math 102": 16.65
    [InlineData("16.65 stitches and 16.27 rows to 1 in", "rows for 1 in", "16")] // the same page: 16.27
    [InlineData("28 stitches and 40 rows to 10 cm", "rows for 80 cm - 62 cm / 2", "196")] // designyourownsweater.blogspot.com: 80 - 31 = 49 cm
    public void A_length_becomes_the_printed_count(string gauge, string count, string expected) =>
        Printed.Top($"gauge sc: {gauge}\ncount n is {count}\nexpect n are {expected}").Clean();

    [Theory]
    [InlineData("16 stitches and 14 rows to 4 in", "209 stitches", "52 1/4 in", "0 in")] // moss stitch, published leaflet BRC0502-027780M: 52 in
    [InlineData("16 stitches and 14 rows to 4 in", "170 rows", "48 1/2 in", "0.1 in")] // the same leaflet: 48 1/2 in, exactly 48.57
    [InlineData("9 stitches and 9 rows to 4 in", "111 stitches", "49 in", "1/2 in")] // published leaflet CAC0502-029057M
    [InlineData("4 stitches and 4 rows to 4 in", "30 stitches", "30 in", "0 in")] // in groups: published leaflet CAC0126-035092M
    [InlineData("14 stitches and 14 rows to 4 in", "64 stitches", "18.3 in", "0.05 in")] // a hat: published leaflet CAC0116-029868M
    [InlineData("49 stitches and 49 rows to 13.5 in", "10 stitches", "2.8 in", "0.05 in")] // neisripplealong.blogspot.com, 2007/05
    [InlineData("49 stitches and 49 rows to 13.5 in", "1000 stitches", "275.5 in", "0.05 in")] // arithmetic on the same page's swatch, to four places
    [InlineData("6 stitches and 6 rows to 3.12 in", "10 rows", "5.2 in", "0 in")] // the same page: 6 rows of 3.12 in
    [InlineData("5 stitches and 5 rows to 1 in", "126 stitches", "25.2 in", "0 in")] // qctester.wordpress.com, 2010/04/21: 25.5 asked, 25.2 made
    [InlineData("5 stitches and 5 rows to 1 in", "102 stitches", "20.4 in", "0 in")] // the same page: 20.4 in of 5 to the inch
    [InlineData("4 stitches and 4 rows to 1 in", "102 stitches", "25.5 in", "0 in")] // the same page: 25.5 in of 4 to the inch
    [InlineData("13 stitches and 7.5 rows to 4 in", "10 stitches", "3.07 in", "0.01 in")] // sdrta.net, "how much yarn": a stitch
    [InlineData("13 stitches and 7.5 rows to 4 in", "10 rows", "5.33 in", "0.01 in")] // the same page: a row
    public void A_count_measures_the_printed_length(string gauge, string count, string length, string within) =>
        Printed.Top($"gauge sc: {gauge}\nexpect {count} measure {length}, within {within}").Clean();

    // Published leaflet CAK0129-010186M, in three sizes: 15 stitches to 4 in, 81 (95, 109) a half: finished bust 43 (50, 58) in.
    [Fact]
    public void Two_halves_measure_the_finished_bust() => Printed.Top(
        "sizes S, M, L\ngauge sc: 15 stitches and 20 rows to 4 in\ncount half is 81 (95, 109)\nexpect half + half stitches measure 43 (50, 58) in, within 0.7 in").Clean();

    [Theory]
    [InlineData("96 x 4 / 5, multiple of 6", "78")] // qctester.wordpress.com, 2010/04/21: 5 to the inch against 4: 76.8
    [InlineData("102 x 4 / 5, multiple of 6", "84")] // the same page: 81.6
    [InlineData("102 x 5 / 4, multiple of 6", "126")] // the same page: 4 against 5: 127.5
    public void A_count_of_another_gauge_is_rounded_as_printed(string count, string expected) =>
        Printed.Top($"count n is {count}\nexpect n are {expected}").Clean();

    [Theory]
    [InlineData("9 in + 2 in + 9 in + 2 in", "22 in")] // Interweave, on gauge and graph paper: a neck of 22 in
    [InlineData("5.5 in + 4 in / 2", "7.5 in")] // "How I design a top-down raglan pullover", a knitwear blog, June 2013: the armhole's depth
    [InlineData("23 in x 4 / 10", "9.2 in")] // hookthatyarn.wordpress.com, 2016/06: a hat's depth
    [InlineData("13.5 in x 4 / 10", "5.4 in")] // the same page
    [InlineData("22 in x 4 / 10", "8.8 in")] // thecountrywillows.com, "Do you struggle with hat sizing"
    [InlineData("80 cm - 62 cm / 2", "49 cm")] // designyourownsweater.blogspot.com, 2007/01: the sleeve
    public void Lengths_add_up_as_printed(string sum, string length) => Printed.Top($"measure n is {sum}\nexpect n is {length}").Clean();
}
