using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Shaping over rows as published: sleeves, stripes, and how often "more times" is.</summary>
public sealed class ScheduleFacts
{
    private static Compiled Sleeve(string stitches, string lines) => Printed.Piece("", $"begin with {stitches} stitches\nrow 1: sc across\n{lines}").Clean();

    // Rows of a schedule that changes every row given times, then every next; from row 2, since row 1 comes before the shaping.
    private static IEnumerable<int> Every(params (int Rows, int Times)[] frequencies)
    {
        var row = 1;
        foreach (var (rows, times) in frequencies)
        {
            for (var i = 0; i < times; i++) yield return row += rows;
        }
    }

    // "Magic formula", apparel-analysis.blogspot.com, 2013/06: 36 each side over 140 rows: every 3rd row 4 times, every 4th 32 times; + 72.
    [Fact]
    public void Thirty_six_over_a_hundred_and_forty_rows()
    {
        var sleeve = Sleeve("60", "shape 140 rows evenly to 132, at both edges = 60 + 72");
        Assert.Equal(Every((3, 4), (4, 32)), sleeve.Changes());
    }

    // Three published sleeves as three sizes of one, the schedule given: "Magic formula", apparel-analysis.blogspot.com, 2013/06;
    // designyourownsweater.blogspot.com, 2007/01; a knitwear blog of 2014. What is solved comes to the same.
    [Theory]
    [InlineData("shape 140 (176, 108) rows: inc 1 at both edges every 3 (4, 9) rows 4 (34, 2) times, then every 4 (5, 10) rows 32 (8, 9) times")]
    [InlineData("shape 140 (176, 108) rows evenly to 132 (156, 60), at both edges")]
    public void Three_sleeves_are_three_sizes_of_one(string line)
    {
        var sleeve = Printed.Piece("sizes S, M, L", $"begin with 60 (72, 38) stitches\nrow 1: sc across\n{line} = 132 (156, 60)").Clean();
        Assert.Equal(Every((3, 4), (4, 32)), sleeve.Changes("back", 0));
        Assert.Equal(Every((4, 34), (5, 8)), sleeve.Changes("back", 1));
        Assert.Equal(Every((9, 2), (10, 9)), sleeve.Changes("back", 2));
    }

    // The poor way of that page in one size, the good way in another: a stage of 0 times is not there.
    [Fact]
    public void A_stage_of_no_times_is_not_there()
    {
        var sleeve = Printed.Piece("sizes S, M", "begin with 60 stitches\nrow 1: sc across\nshape 140 rows: inc 1 at both edges every 3 rows 36 (4) times, then every 4 rows 0 (32) times = 132").Clean();
        Assert.Equal(Every((3, 36)), sleeve.Changes("back", 0));
        Assert.Equal(Every((3, 4), (4, 32)), sleeve.Changes("back", 1));
    }

    // The same page, shown as the poor way: every 3rd row 36 times is 108 rows, and 32 rows are plain.
    [Fact]
    public void The_poor_way_leaves_thirty_two_rows_plain()
    {
        var sleeve = Sleeve("60", "shape 140 rows: inc 1 at both edges every 3 rows 36 times = 132");
        Assert.Equal(Every((3, 36)), sleeve.Changes());
        Assert.Equal(1 + 108 + 32, sleeve.Piece("back", 0).Rows.Count);
    }

    // designyourownsweater.blogspot.com, 2007/01: gauge 28 and 40, wrist 26 cm, top 56 cm, sleeve 49 cm, 5 cm plain: 72 and 156 stitches,
    // 42 each side over 176 rows: every 4th row 34 times, every 5th 8 times.
    [Fact]
    public void A_sleeve_by_its_gauge()
    {
        var sleeve = Printed.Piece("""
            gauge sc: 28 stitches and 40 rows to 10 cm
            count wrist is stitches for 26 cm, even
            count top is stitches for 56 cm, even
            count all-rows is rows for 49 cm
            count plain-rows is rows for 5 cm
            expect wrist are 72
            expect top are 156
            expect all-rows are 196
            expect plain-rows are 20
            """, "begin with wrist stitches\nrow 1: sc across\nshape all-rows - plain-rows rows evenly to top, at both edges = 156").Clean();
        Assert.Equal(Every((4, 34), (5, 8)), sleeve.Changes());
    }

    // A knitwear blog of 2014: 5 stitches and 7 rows to the inch; cuff 7.75 in 38, underarm 12 in 60; 15.5 in are 108 rows, 11 increases.
    // It stops at 108 / 11 = 9; every 9th row twice and every 10th 9 times follows by the same rule (arithmetic).
    [Fact]
    public void Eleven_over_a_hundred_and_eight_rows()
    {
        var sleeve = Printed.Piece("""
            gauge sc: 5 stitches and 7 rows to 1 in
            count cuff is stitches for 7.75 in, even
            count underarm is stitches for 12 in
            count shaped is rows for 15.5 in, even
            expect cuff are 38
            expect underarm are 60
            expect shaped are 108
            """, "begin with cuff stitches\nrow 1: sc across\nshape shaped rows evenly to underarm, at both edges = 60").Clean();
        Assert.Equal(Every((9, 2), (10, 9)), sleeve.Changes());
    }

    // knittingunplugged.com, 2016/05: 5.5 stitches and 7 rows to the inch; cuff 9 in 50, top 13 in 72, 13 in long 91 rows: 11 each side.
    [Fact]
    public void Eleven_over_ninety_one_rows()
    {
        var sleeve = Printed.Piece("""
            gauge sc: 5.5 stitches and 7 rows to 1 in
            count cuff is stitches for 9 in
            count top is stitches for 13 in
            count long is rows for 13 in
            expect cuff are 50
            expect top are 72
            expect long are 91
            """, "begin with cuff stitches\nrow 1: sc across\nshape long - 1 rows evenly to top, at both edges = 72").Clean();
        Assert.Equal((11, 91), (sleeve.Changes().Count(), sleeve.Piece("back", 0).Rows.Count));
    }

    // papermoonknits.com, "Math Monday: increasing, part I": 13 in at 6.75 rounds are 88, the nearest even; 9 in of 4.25 the nearest
    // multiple of 4, 40; 15 in of 4 are 60; 20 stitches in 10 pairs.
    [Fact]
    public void Ten_pairs_over_eighty_eight_rows()
    {
        var sleeve = Printed.Piece("""
            gauge sc: 4.25 stitches and 6.75 rows to 1 in
            gauge dc: 4 stitches and 6.75 rows to 1 in
            count cuff is sc stitches for 9 in, multiple of 4
            count upper is dc stitches for 15 in
            count shaped is sc rows for 13 in, even
            expect cuff are 40
            expect upper are 60
            expect shaped are 88
            """, "begin with cuff stitches\nrow 1: sc across\nshape shaped rows evenly to upper, at both edges = 60").Clean();
        Assert.Equal(10, sleeve.Changes().Count());
    }

    // bkkquilt.com, "How do you calculate a decrease in stitches": 21 in less 1 upper, 1 wrist and 1 cuff at 8 rounds are 144; 80 to 45 are
    // 35 to remove, odd: one end needs one more.
    [Fact]
    public void Thirty_five_can_not_be_shared_by_two_edges()
    {
        Printed.Top("gauge sc: 5 stitches and 8 rows to 1 in\ncount n is rows for 21 in - 1 in - 1 in - 1 in\nexpect n are 144").Clean();
        Printed.Objects(Printed.Piece("", "begin with 80 stitches\nrow 1: sc across\nshape 144 rows evenly to 45, at both edges"), "taper-odd", "35");
        Sleeve("80", "shape 143 rows evenly to 46, at both edges\nrow: dec, sc across = 45");
    }

    // Published leaflet CAC0125-012177M: stripes of 33, 18, 11 times 12, 18 and 32 rows: 233.
    [Fact]
    public void Stripes_add_up() => Assert.Equal(
        "233", Sleeve("20", "straight 32 rows\nstraight 18 rows\n" + string.Concat(Enumerable.Repeat("straight 12 rows\n", 11)) + "straight 18 rows\nstraight 32 rows").Rows());

    // "Work even" and "as established" change no count: conventions of published leaflets.
    [Fact]
    public void Working_even_changes_no_count() => Assert.Empty(Sleeve("20", "straight 19 rows = 20").Changes());

    // clearwaterknits.com/charting/jpchart.html: bind off 6, then 1 stitch every other row 5 times.
    [Fact]
    public void Six_and_then_one_every_other_row_five_times()
    {
        var armhole = Sleeve("40", "leave 6 at right edge\nrow: sc across = 34\nshape 10 rows: dec 1 at right edge every 2 rows 5 times = 29");
        Assert.Equal([2, 4, 6, 8, 10, 12], armhole.Changes());
        var inOneLine = Sleeve("40", "shape 11 rows: leave 6 at right edge, then dec 1 every 2 rows 5 times = 29");
        Assert.Equal([2, 4, 6, 8, 10, 12], inOneLine.Changes());
    }

    // "Repeat four more times" is five in all: craft text at zanotowane.pl/837/653. "Rep from ** 9 times more": published leaflet
    // BRC0502-027780M; "3 times more": BRC0502-030110M: N more than the first.
    [Theory]
    [InlineData("repeat row 2, 4 more times", 5)]
    [InlineData("repeat row 2, 9 more times", 10)]
    [InlineData("repeat row 2, 3 more times", 4)]
    public void So_many_more_times_is_one_more_in_all(string repeat, int inAll) =>
        Assert.Equal(1 + inAll, Sleeve("20", "row 2: sc across\n" + repeat).Piece("back", 0).Rows.Count);

    // Print uses "N times" both ways (common practice, no source), so it is asked which.
    [Fact]
    public void So_many_times_alone_is_asked_back() =>
        Assert.Equal(["repeat-times"], Printed.Piece("", "begin with 20 stitches\nrow 1: sc across\nrow 2: sc across\nrepeat row 2, 9 times").Found);
}
