using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>Circles, squares and hexagons from a ring, with the counts that were published of them, round by round.</summary>
public sealed class RoundFacts
{
    [Theory]
    [InlineData("sc", "6 12 18 24 30")] // "All things round", thecrochetbag.blogspot.com, 2013/05
    [InlineData("hdc", "8 16 24")] // the same; 8 in round 1, ch 2 counted
    [InlineData("dc", "12 24")] // published leaflet BRC0502-031867M: ch 3 + 11 dc
    [InlineData("dc", "12 24 36")] // thesparklytoad.wordpress.com, "solid granny circle square"
    [InlineData("dc", "12 24 36 48")] // crochetbouquet.co.uk, week three square twelve (UK tr)
    [InlineData("sc", "4 12 20")] // northeytechnologies.com: how do you crochet a square in the round, +8 a round
    public void A_flat_piece_grows_by_as_many_in_each_round(string stitch, string counts)
    {
        var rounds = counts.Split(' ').Select(int.Parse).ToList();
        var more = rounds.Skip(1).Select((n, i) => $"round: {(n > 2 * rounds[i] ? "3 " + stitch + " in each st" : stitch + " inc " + (n - rounds[i]) + " evenly")} = {n}");
        var compiled = Printed.Piece("turn hdc: ch 2 counts", $"begin with ring\nround 1: {rounds[0]} {stitch} in ring = {rounds[0]}\n{string.Join('\n', more)}\nfasten off").Clean();
        Assert.Equal(rounds, compiled.Counts());
    }

    // Published hat BRC0116-035467M: 6, 12, 18, 24, 24, 30, 30, 30; PAC0116-030195M begins with 6 as well.
    [Fact]
    public void A_published_crown_has_plain_rounds_between() => Assert.Equal(
        [6, 12, 18, 24, 24, 30, 30, 30],
        Printed.Piece("", "begin with ring\nround 1: 6 sc in ring\nround 2: 2 sc in each st\nround 3: (sc, inc) around\nround 4: (sc 2, inc) around\nround 5: sc around\nround 6: (sc 3, inc) around\nround 7: sc around\nstraight 1 round\nfasten off").Clean().Counts());

    // A public hat, ch 2 not counted: 11, 22, 33, 44, then even; the larger size 48 by (2 dc in 1, 10 dc) x 4.
    [Fact]
    public void A_published_hat_of_eleven_comes_out_in_both_sizes() => Assert.Equal(
        [11, 22, 33, 44, 48, 48],
        Printed.Piece("turn dc: ch 2 does not count", "begin with ring\nround 1: 11 dc in ring\nround 2: inc 11 evenly\nround 3: inc 11 evenly\nround 4: inc 11 evenly\nround 5: (inc, dc 10) around\nround 6: dc around\nfasten off").Clean().Counts());

    // Classic granny: groups of 3 dc, corners of ch 2, ch 1 between. Round 1, 4 groups: crochetbouquet.co.uk, week three square nine; built as in
    // coffeeandvanilla.com, traditional granny square; round n has 4n groups, 4 corners and 4(n - 1) spaces at the sides: arithmetic.
    [Fact]
    public void A_granny_square_has_four_groups_more_in_each_round()
    {
        var lines = "begin with ring of 4 chains\nround 1: (3 dc, ch 2, mark corner) 4 times in ring = 12, 4 sp\n";
        for (var n = 2; n <= 7; n++)
        {
            var side = n == 2 ? string.Empty : n == 3 ? ", 3 dc in next ch-1 sp, ch 1" : $", (3 dc in next ch-1 sp, ch 1) {n - 2} times";
            lines += $"round {n}: ((3 dc, ch 2, 3 dc) in next corner, ch 1{side}) around = {12 * n}, {4 * n} sp\n";
        }

        var compiled = Printed.Piece("", lines + "fasten off").Clean();
        Assert.All(Enumerable.Range(1, 7), n => Assert.Equal((12 * n, 4 * n), (compiled.Row(n).Work!.Stitches, compiled.Row(n).Work!.Spaces)));
    }

    // Corners of 2 dc, ch 1, 2 dc: 3, 7, 11, 15 a side: octojellycrochetstudio.com, 2021/02/16, "double crochet square".
    [Theory]
    [InlineData("((2 dc, ch 1, 2 dc) in corner, dc to corner) around", "")]
    [InlineData("(dc to corner, (2 dc, ch 1, 2 dc) in corner) around, dc around", "")]
    public void A_solid_square_has_four_more_on_each_side(string words, string first)
    {
        var rounds = string.Concat(Enumerable.Range(2, 3).Select(n => $"round {n}: {first}{words}\n".Replace("corner) around, dc around", n == 2 ? "corner) around" : "corner) around, dc around", StringComparison.Ordinal)));
        Assert.Equal([12, 28, 44, 60], Printed.Piece("", $"begin with ring\nround 1: (3 dc, ch 1, mark corner) 4 times in ring\n{rounds}fasten off").Clean().Counts());
    }

    // 3 sc in each corner, in a spiral: northeytechnologies.com, "how do you crochet a square in the round".
    [Fact]
    public void A_square_of_sc_in_a_spiral_grows_by_eight() => Assert.Equal(
        [4, 12, 20, 28],
        Printed.Piece("rounds are spiral", "begin with ring\nround 1: (sc, mark corner) 4 times in ring\nround 2: (3 sc in corner) 4 times\nround 3: (sc to corner, 3 sc in corner) around, sc around\nround 4: (sc to corner, 3 sc in corner) around, sc around\nfasten off").Clean().Counts());

    // Corner of dc, ch 1, dc; the ch 1 is counted: 6 sides of 2n - 1 dc, 12, 24, 36, 48, 60 in all: "DC motif and a half", sites.google.com/site/crochetbtf.
    [Fact]
    public void A_hexagon_has_two_more_on_each_side()
    {
        const string more = "(dc to corner, (dc, ch 1, dc) in corner) around";
        var compiled = Printed.Piece("claims with chains", $"begin with ring\nround 1: (dc, ch 1, mark corner) 6 times in ring = 12\nround 2: {more} = 24\nround 3: {more}, dc around = 36\nround 4: {more}, dc around = 48\nround 5: {more}, dc around = 60\nfasten off").Clean();
        Assert.Equal([6, 18, 30, 42, 54], compiled.Counts());
    }

    // The half hexagon of the same page, in rows: 9, 15, 21.
    [Fact]
    public void A_half_hexagon_grows_by_six_in_each_row() => Printed.Piece(
        "claims with chains",
        "begin with ring\nrow 1: (dc, ch 1, mark corner, dc) 3 times in ring = 9\nrow 2: (dc to corner, (dc, ch 1, dc) in corner) across, dc across = 15\nrow 3: (dc to corner, (dc, ch 1, dc) in corner) across, dc across = 21\nfasten off").Clean();

    // The middle of a circle in a square: 12, 24, 36, then 8 dc and a corner of 2 tr, ch 2, 2 tr on each side: zootyowlcards.blogspot.com, 2013/08.
    [Fact]
    public void A_circle_becomes_a_square() => Assert.Equal(
        [12, 24, 36, 48],
        Printed.Piece("", "begin with ring\nround 1: 12 dc in ring\nround 2: 2 dc in each st\nround 3: (dc, inc) around\nround 4: (dc 8, (2 tr, ch 2, 2 tr) in next) 4 times\nfasten off").Clean().Counts());

    // Any border of 3 in each corner grows by 8 a round: Simply Crochet (UK), 22 June 2017; one of 5 dc in each corner by 16: a published book of borders.
    [Theory]
    [InlineData(3, 8)]
    [InlineData(5, 16)]
    public void A_border_round_a_square_grows_by_its_corners(int inCorner, int more) => Assert.Equal(
        [40, 40 + more],
        Printed.Piece("", $"begin with 40 stitches\nround 1: (dc 10, mark corner) 4 times\nround 2: (dc to corner, {inCorner} dc in corner) 4 times\nfasten off").Clean().Counts());
}
