using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Xunit;

namespace Turnrow.Compiler.Tests.Grading;

/// <summary>Yarn, from weighed swatches to balls.</summary>
public sealed class YarnTests
{
    // sdrta.net: 30 stitches and 10 rows are 300 stitches; a stitch weighs the swatch / 300, all decimals kept; times 18,144 stitches.
    [Fact]
    public void A_stitch_weighs_the_swatch_divided_by_its_stitches_and_rows()
    {
        var need = YarnNeed.Of(Compiled.Whole("yarn main, 100 g, 200 m\ngauge dc: 18 stitches and 9 rows to 10 cm\nswatch dc: 30 stitches and 10 rows weigh 14 g\npiece blanket\nbegin with 144 stitches\nrow 1: dc across\nstraight 125 rows\n").Clean().Pattern)!;
        Assert.Equal(Rational.Of(14 * 18_144, 300), need.Grams!.Single());
        Assert.Equal([9L], need.Balls!);
    }

    // Balls are rounded up. LoveKnitting help, "Substituting yarn": 600 m are 4 balls of 150 m, and 7 of 90 m (6.67, printed as 6.6);
    // cebuana80.blogspot.com, January 2015: 1690 m in balls of 124 m are 14; agoodyarn.biz: 1800 yd in balls of 109 yd are 17.
    // Yarnspirations CAC0129-035073M prints 2 cakes of 481 yd for 979 yd: a published error, it takes 3.
    [Theory]
    [InlineData(600, 150, 4)]
    [InlineData(600, 90, 7)]
    [InlineData(1690, 124, 14)]
    [InlineData(1800, 109, 17)]
    [InlineData(780, 481, 2)]
    [InlineData(979, 481, 3)]
    [InlineData(1360, 481, 3)]
    public void Balls_are_whole_and_never_too_few(int length, int ball, int balls)
    {
        // A gram a metre, so that lengths stand for weights.
        var yarn = new Yarn("main", null, null, ball, ball);
        Assert.Equal([(long)balls], new YarnNeed(yarn, [length], []).Balls!);
        Assert.Equal([(Rational)length], new YarnNeed(yarn, [length], []).Metres!);
    }

    // neisripplealong.blogspot.com, May 2007: a swatch of 49 stitches and 6 rows, 42.12 square inches, took 35 yd; a blanket of 4320 square
    // inches is then printed as 103 x 35 = 3605 yd, the number of swatches rounded up before; exactly it is 3590 yd. A gram stands for a yard.
    [Fact]
    public void Nothing_is_rounded_before_the_end()
    {
        var swatch = new Swatch(Fabric.Stitches.StitchBook.Double, 49, 6, 35, null);
        var perSquareInch = (swatch.GramsPerStitch!.Value * (Rational)(49 * 6))!.Value / Rational.Of(4212, 100)!.Value;
        Assert.Equal(3589, (perSquareInch!.Value * (Rational)4320)!.Value.Floor());
    }

    [Fact]
    public void Each_stitch_is_weighed_by_its_own_swatch_and_the_extra_is_added()
    {
        var need = Need("yarn main, 50 g, 10 % extra", "swatch dc: 10 stitches and 10 rows weigh 10 g", "swatch sc: 10 stitches and 10 rows weigh 5 g");
        Assert.Equal(Rational.Of(110 * ((20 * 10) + (20 * 5)), 100 * 100), (need.Grams![0] / 10)!.Value);
    }

    private const string Net = "yarn main, 50 g\nstitch pattern net over multiple of 4 + 3\nrow 1: sc 3, (ch 1, skip 1, sc 3) across\nrow 2: sc in each st and sp\n";

    // A repeat of a row weighs the swatch / (repeats x rows); a row of 23 stitches is 23 / 4 repeats wide.
    [Theory]
    [InlineData("swatch net: 8 repeats and 10 rows weigh 4 g")]
    [InlineData("swatch net: 32 stitches and 10 rows weigh 4 g")]
    public void Rows_in_a_stitch_pattern_weigh_what_their_width_weighs_in_its_swatch(string swatch)
    {
        var need = YarnNeed.Of(Compiled.Whole($"{Net}{swatch}\npiece cloth\nbegin with 23 stitches\nstraight 20 rows, in net\n").Clean().Pattern)!;
        Assert.Equal(Rational.Of(4 * 23 * 20, 8 * 10 * 4), need.Grams!.Single());
    }

    [Fact]
    public void Plain_rows_and_edges_beside_a_stitch_pattern_are_weighed_by_their_stitch()
    {
        const string Piece = "piece cloth\nbegin with 25 stitches\nrow 1: sc across\nstraight 20 rows, in net, edges in sc\n";
        var need = YarnNeed.Of(Compiled.Whole($"{Net}swatch net: 32 stitches and 10 rows weigh 4 g\nswatch sc: 20 stitches and 10 rows weigh 2 g\n{Piece}").Clean().Pattern)!;
        Assert.Equal(Rational.Of((23 * 20 * 4 * 200) + ((25 + (2 * 20)) * 2 * 320), 320 * 200), need.Grams!.Single());
        var missing = YarnNeed.Of(Compiled.Whole($"{Net}swatch net: 32 stitches and 10 rows weigh 4 g\n{Piece}").Clean().Pattern)!;
        Assert.Null(missing.Grams);
        Assert.Equal(["sc"], missing.Unknown.Select(static stitch => stitch.Id));
    }

    [Fact]
    public void Only_a_stitch_pattern_has_repeats() =>
        Assert.Equal(["gauge-repeats"], Compiled.Whole("yarn main, 50 g\nswatch dc: 8 repeats and 10 rows weigh 4 g\npiece cloth\nbegin with 20 stitches\nrow 1: dc across\n").Found);

    [Fact]
    public void Without_a_swatch_there_is_no_number_but_what_is_missing()
    {
        var need = Need("yarn main, 50 g", "swatch dc: 10 stitches and 10 rows weigh 10 g");
        Assert.Null(need.Grams);
        Assert.Null(need.Balls);
        Assert.Equal("sc", Assert.Single(need.Unknown).Id);
    }

    [Fact]
    public void Chains_of_spaces_are_weighed_as_chains()
    {
        var lines = "yarn main, 50 g\nswatch dc: 10 stitches and 10 rows weigh 10 g\nSWATCH\npiece net\nbegin with 21 stitches\nrow 1: dc, (ch 1, skip 1, dc) across\n";
        var without = YarnNeed.Of(Compiled.Whole(lines.Replace("SWATCH\n", "", StringComparison.Ordinal)).Clean().Pattern)!;
        Assert.Equal("ch", Assert.Single(without.Unknown).Id);
        Assert.Equal(Rational.Of(11 * 10, 100), without.Grams!.Single());
        var known = YarnNeed.Of(Compiled.Whole(lines.Replace("SWATCH", "swatch ch: 100 stitches and 1 row weigh 2 g", StringComparison.Ordinal)).Clean().Pattern)!;
        Assert.Equal(Rational.Of((11 * 10) + (10 * 2), 100), known.Grams!.Single());
    }

    [Theory]
    [InlineData("swatch dc: 0 stitches and 10 rows weigh 10 g", "swatch-zero")]
    [InlineData("swatch dc: 10 stitches and 10 rows weigh 10 g, other", "swatch-yarn")]
    [InlineData("swatch dc: 10 stitches and 10 rows weigh 10 g\nswatch dc: 10 stitches and 10 rows weigh 11 g", "defined-twice")]
    [InlineData("swatch dx: 10 stitches and 10 rows weigh 10 g", "unknown-stitch")]
    public void A_swatch_that_can_not_be_used_is_told_once(string line, string name) =>
        Assert.Equal([name], Compiled.Whole($"yarn main, 50 g\n{line}\npiece a\nbegin with 20 stitches\nrow 1: dc across\n").Found);

    private static YarnNeed Need(params string[] lines) =>
        YarnNeed.Of(Compiled.Whole(string.Join('\n', lines) + "\npiece a\nbegin with 20 stitches\nrow 1: dc across\nstraight 9 rows\nrow: sc across\nstraight 9 rows\n").Clean().Pattern)!;
}
