using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Compiler.Tests.Grading;

/// <summary>The finished sample: what it measures, the gauge that it was really worked to, and what follows for the other sizes.</summary>
public sealed class MadeTests
{
    /// <summary>Two sizes of a piece in dc, 40 and 60 stitches, 20 rows: 20 and 30 cm wide, 20 cm high.</summary>
    private const string Back = """
        piece back
          begin with 40 (60) stitches
          row 1 RS: dc across
          straight 19 rows

        """;

    [Fact]
    public void A_sample_as_planned_says_nothing_and_is_in_the_model()
    {
        var made = Assert.Single(Compiled.Of(Back + "made L: back 30 cm wide, 20.4 cm high").Clean().Pattern.Made);
        Assert.Equal(("back", 1), (made.Piece, made.Size));
        Assert.Equal((30, 30), (made.Width!.Measured, made.Width.Planned));
        Assert.Equal((Rational.Of(204, 10)!.Value, 20), (made.Height!.Measured, made.Height.Planned));
        Assert.Equal(StitchBook.Double, made.Height.Fabric);
    }

    [Theory]
    [InlineData("made S: back 20 cm wide")]
    [InlineData("made S: back 20 cm high")]
    [InlineData("made s: BACK 200 mm high, 20 cm wide")]
    public void Either_length_alone_will_do_in_any_order_and_unit(string line) => Assert.Single(Compiled.Of(Back + line).Clean().Pattern.Made);

    [Theory]
    [InlineData("20.5", false)]
    [InlineData("20.6", true)]
    [InlineData("19.5", false)]
    [InlineData("19.4", true)]
    public void Of_a_small_piece_half_a_centimetre_is_not_off(string wide, bool off) => IsOff(off, $"made S: back {wide} cm wide");

    [Theory]
    [InlineData("30.6", false)]
    [InlineData("30.7", true)]
    public void Of_a_large_piece_two_in_a_hundred_are_not_off(string wide, bool off) => IsOff(off, $"made L: back {wide} cm wide");

    [Fact]
    public void The_warning_shows_the_true_gauge_and_the_size()
    {
        var found = Assert.Single(Compiled.Of(Back + "made S: back 22 cm wide").Compilation.Diagnostics);
        Assert.Equal("the sample's back is 22 cm wide in S, 2 cm wider than the 20 cm by the gauge", found.Message);
        Assert.Equal("so the sample has 18.2 stitches of dc to 10 cm, where the gauge line says 20", Assert.Single(found.Ledger));
        Assert.Equal("S", Assert.Single(found.Sizes));
    }

    [Theory]
    [InlineData("20 in")]
    [InlineData("7 7/8 cm")]
    public void A_number_in_the_other_unit_is_recognised(string wide)
    {
        var found = Assert.Single(Compiled.Of(Back + $"made S: back {wide} wide").Compilation.Diagnostics);
        Assert.Contains("other unit", found.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_accepted_with_a_reason()
    {
        var compiled = Compiled.Of(Back + "made S: back 22 cm wide\naccept made-off: \"worked with a larger hook\"").Clean();
        Assert.Equal("made-off", Assert.Single(compiled.Compilation.Accepted).Warning.Kind.Name);
        Assert.Single(compiled.Pattern.Made);
    }

    [Theory]
    [InlineData("made M: back 20 cm wide", "made-size")]
    [InlineData("made S: bakc 20 cm wide", "unknown-piece")]
    [InlineData("made S: back 0 cm wide", "made-length")]
    [InlineData("made S: back 101 m wide", "made-length")]
    [InlineData("made S: back 20 cm wide, 20 cm wide", "made-twice")]
    [InlineData("made S: back 20 cm wide\nmade S: back 20 cm high", "made-twice")]
    public void What_is_wrong_is_told_once(string lines, string name) => Assert.Equal([name], Compiled.Of(Back + lines).Found);

    [Fact]
    public void A_slip_in_a_size_or_a_piece_is_mended()
    {
        var sizes = Compiled.Whole("terms US\nsizes Small, Large\ngauge dc: 20 stitches and 10 rows to 10 cm\n" + Back + "made Smal: back 20 cm wide");
        Assert.Equal("did you mean `Small`?", Assert.Single(sizes.Compilation.Diagnostics).Help);
        Assert.Equal("did you mean `back`?", Assert.Single(Compiled.Of(Back + "made S: bakc 20 cm wide").Compilation.Diagnostics).Help);
    }

    [Fact]
    public void A_pattern_without_sizes_is_told_how_to_name_its_one_size()
    {
        var found = Assert.Single(Compiled.Whole(
            "terms US\ngauge dc: 20 stitches and 10 rows to 10 cm\n" + Back.Replace(" (60)", "", StringComparison.Ordinal) + "made S: back 20 cm wide").Compilation.Diagnostics);
        Assert.Contains("has no sizes", found.Message, StringComparison.Ordinal);
        Assert.Contains("sizes \"one size\"", found.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_without_a_gauge_can_be_held_against_nothing()
    {
        var compiled = Compiled.Of("piece back\nbegin with 20 stitches\nrow 1 RS: tr across\nmade S: back 20 cm wide, 20 cm high");
        Assert.Equal(["gauge-missing", "gauge-missing"], compiled.Found);
        Assert.Empty(compiled.Pattern.Made);
    }

    [Fact]
    public void The_line_may_stand_above_the_piece() => Assert.Single(Compiled.Of("made S: back 20 cm wide\n" + Back).Clean().Pattern.Made);

    [Theory]
    [InlineData("  row: dc across and\n")]
    [InlineData("  straight 4 rwos\n")]
    public void Nothing_is_said_of_a_piece_that_could_not_be_read(string broken) =>
        Assert.DoesNotContain("made-off", Compiled.Of(Back + broken + "made S: back 20 cm wide, 50 cm high").Found);

    [Theory]
    [InlineData("sizes S, L", "sizes S L")]
    [InlineData("gauge dc: 20 stitches", "gauge dc: 20 stitsches")]
    [InlineData("piece back", "piec back")]
    public void A_broken_line_is_not_told_again_by_the_sample(string right, string broken)
    {
        var text = Compiled.Header + Back + "made S: back 20 cm wide, 20 cm high";
        var found = Compiled.Whole(text.Replace(right, broken, StringComparison.Ordinal)).Found;
        Assert.DoesNotContain(found, name => name.StartsWith("made", StringComparison.Ordinal) || name is "unknown-piece" or "gauge-missing");
    }

    [Fact]
    public void Every_size_follows_the_sample()
    {
        // 40 stitches are 22 cm, so 60 are 33; 20 rows are 21 cm.
        var (sample, pattern) = Sample(Back + "made S: back 22 cm wide, 21 cm high");
        var fabric = Assert.Single(sample.Fabrics);
        Assert.Equal((Rational.Of(200, 11), Rational.Of(200, 21)), (fabric.Stitches, fabric.Rows));
        Assert.Equal([22, 33], BackIn(pattern).Select(piece => sample.WidthOf(piece)!.Value));
        Assert.Equal([21, 21], BackIn(pattern).Select(piece => sample.HeightOf(piece)!.Value));
    }

    [Fact]
    public void Several_samples_of_a_fabric_are_added_up()
    {
        // 40 and 60 stitches in 20 and 31 cm: 100 stitches in 51 cm.
        var (sample, _) = Sample(Back + "made S: back 20 cm wide\nmade L: back 31 cm wide");
        Assert.Equal(Rational.Of(1000, 51), Assert.Single(sample.Fabrics).Stitches);
        Assert.Null(sample.Fabrics[0].Rows);
    }

    [Fact]
    public void The_height_of_several_fabrics_gives_no_gauge_of_rows_and_is_off_as_a_whole()
    {
        // 20 rows of dc and 20 of sc: 30 cm, measured 27.
        var (sample, pattern) = Sample(Back + "  row: sc across\n  straight 19 rows\nmade S: back 20 cm wide, 27 cm high");
        var made = Assert.Single(pattern.Made);
        Assert.Null(made.Height!.Fabric);
        Assert.Equal([(StitchBook.Double, 20), (StitchBook.Single, 20)], made.Height.Fabrics);
        Assert.All(sample.Fabrics, fabric => Assert.Null(fabric.Rows));
        Assert.All(BackIn(pattern), piece => Assert.Equal(27, sample.HeightOf(piece)!.Value));
    }

    // Published: 16 stitches and 14 rows of moss stitch are 4 in; 209 stitches and 170 rows are printed as 52 and 48 1/2 in
    // (Yarnspirations BRC0502-027780M; sc stands for the fabric).
    [Fact]
    public void A_published_blanket_has_the_gauge_that_it_says() => Published(
        "gauge sc: 16 stitches and 14 rows to 4 in", 209, 170, "52 in wide, 48.5 in high", "16.1", "14");

    // Published: 9 stitches are 4 in, and 111 stitches are 49 in (Yarnspirations CAC0502-029057M).
    [Fact]
    public void A_published_afghan_has_the_gauge_that_it_says() => Published("gauge sc: 9 stitches and 9 rows to 4 in", 111, 2, "49 in wide", "9.1", null);

    // Published: a swatch of 49 stitches and 6 rows is 13.5 by 3.12 in, 0.2755 in a stitch and 0.52 in a row: 3.6 stitches and 1.9 rows to
    // the inch (neisripplealong, 2007/05).
    [Fact]
    public void A_published_swatch_gives_its_stitches_and_rows_to_the_inch() => Published(
        "gauge sc: 4 stitches and 2 rows to 1 in", 49, 6, "13.5 in wide, 3.12 in high", "3.6", "1.9");

    private static void Published(string gauge, int stitches, int rows, string made, string trueStitches, string? trueRows)
    {
        var pattern = Compiled.Whole($"""
            terms US
            sizes one
            {gauge}

            piece blanket
              begin with {stitches} stitches
              row 1 RS: sc across
              straight {rows - 1} rows

            made one: blanket {made}
            """).Pattern;
        Assert.Equal(0, pattern.Errors);
        var fabric = Assert.Single(new SampleGauge(pattern.Gauges, pattern.Made).Fabrics);
        Assert.Equal((trueStitches, trueRows), (fabric.Stitches?.ToTenths(), fabric.Rows?.ToTenths()));
    }

    private static void IsOff(bool off, string line) => Assert.Equal(off ? ["made-off"] : [], Compiled.Of(Back + line).Found);

    private static IReadOnlyList<Piece> BackIn(Pattern pattern) => pattern.Pieces.Single().InSizes;

    private static (SampleGauge Sample, Pattern Pattern) Sample(string lines)
    {
        var pattern = Compiled.Of(lines).Pattern;
        Assert.Equal(0, pattern.Errors);
        return (new SampleGauge(pattern.Gauges, pattern.Made), pattern);
    }
}
