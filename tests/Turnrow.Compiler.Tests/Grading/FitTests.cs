using Xunit;

namespace Turnrow.Compiler.Tests.Grading;

/// <summary>What is finished, held against the body.</summary>
public sealed class FitTests
{
    // Ranges of armhole, sleeve, cuff and cross back: common practice, no source. Half a centimetre is let pass.
    [Theory]
    [InlineData("armhole-depth", "armhole-depth", "19", "18.4", "fit-armhole")]
    [InlineData("armhole-depth", "armhole-depth", "19", "18.5")]
    [InlineData("armhole-depth", "armhole-depth", "19", "27.1")]
    [InlineData("armhole-depth", "armhole-depth", "19", "27.2", "fit-armhole")]
    [InlineData("upper-arm", "upper-arm", "30", "29.4", "fit-upper-arm")]
    [InlineData("upper-arm", "upper-arm", "30", "45.7")]
    [InlineData("upper-arm", "upper-arm", "30", "45.8", "fit-upper-arm")]
    [InlineData("upper-arm", "upper-arm", "30", "27, stretches by 10 %")]
    [InlineData("upper-arm", "upper-arm", "30", "27, stretches by 9 %", "fit-upper-arm")]
    [InlineData("wrist", "wrist", "16", "15.4", "fit-wrist")]
    [InlineData("wrist", "wrist", "16", "26.6")]
    [InlineData("wrist", "wrist", "16", "26.7", "fit-wrist")]
    [InlineData("wrist", "wrist", "16", "26.7, opens", "fit-wrist")]
    [InlineData("wrist", "hand", "19", "18.4", "fit-wrist")]
    [InlineData("wrist", "hand", "19", "18.4, opens")]
    [InlineData("wrist", "hand", "19", "17, stretches by 10 %")]
    [InlineData("wrist", "hand", "19", "60")]
    [InlineData("cross-back", "cross-back", "40", "36.9", "fit-cross-back")]
    [InlineData("cross-back", "cross-back", "40", "37")]
    [InlineData("cross-back", "cross-back", "40", "45.5")]
    [InlineData("cross-back", "cross-back", "40", "45.6", "fit-cross-back")]
    [InlineData("neck-opening", "head", "57", "56.4", "fit-neck")]
    [InlineData("neck-opening", "head", "57", "56.5")]
    [InlineData("neck-opening", "head", "57", "50, opens")]
    [InlineData("neck-opening", "head", "57", "50, stretches by 13 %")]
    [InlineData("neck-opening", "head", "57", "50, stretches by 12 1/2 %", "fit-neck")]
    [InlineData("neck-opening", "head", "57", "90")]
    [InlineData("hip-length", "hip-length", "58", "52.4", "fit-length")]
    [InlineData("hip-length", "hip-length", "58", "63.5")]
    [InlineData("length", "length", "58", "63.6", "fit-length")]
    [InlineData("arm-length", "arm-length", "43", "37", "fit-length")]
    public void What_is_finished_is_held_against_the_body(string finished, string body, string of, string garment, params string[] found)
    {
        var value = garment.Contains(',', StringComparison.Ordinal) ? garment.Replace(",", " cm,", StringComparison.Ordinal) : garment + " cm";
        Assert.Equal(found, Found($"measure {body} is {of} cm", $"finished {finished} is {value}"));
    }

    [Theory]
    [InlineData("measure upper-arm is 30 cm", "finished bust is 98 cm")]
    [InlineData("", "finished upper-arm is 20 cm")]
    [InlineData("measure upper-arm is 30 cm\nease upper-arm is 2 cm less", "finished upper-arm is 28 cm")]
    [InlineData("measure upper-arm is 30 cm\nmeasure bust is 90 cm\nease bust is oversized", "finished upper-arm is 60 cm\nfinished bust is 110 cm")]
    [InlineData("measure upper-arm is 30 cm\nease upper-arm is 6 cm", "finished upper-arm is 28 cm", "ease-off")]
    [InlineData("measure upper-arm is 30 cm\nease upper-rm is 6 cm", "finished upper-arm is 36 cm", "ease-unused")]
    [InlineData("measure upper-arm is 30 cm\nmeasure bust is 90 cm\nease bust is oversized", "finished upper-arm is 20 cm\nfinished bust is 110 cm", "fit-upper-arm")]
    public void Only_what_is_stated_is_looked_at(string header, string finished, params string[] found) => Assert.Equal(found, Found(header, finished));

    // hip: 6 in (15 cm) below a woman's waist, 2 in (5 cm) below a child's; tunic: 11 in (28 cm) and 6 in (15 cm). Craft Yarn Council
    // length chart, from memory; the child's as in "Measurements for designers: children", crochetkitten.com.
    [Theory]
    [InlineData("women", "M", "hip-length", 58.5)]
    [InlineData("women", "M", "tunic-length", 71.5)]
    [InlineData("women", "5X", "hip-length", 62)]
    [InlineData("children", "8", "hip-length", 36.5)]
    [InlineData("children", "8", "tunic-length", 46.5)]
    // A man's differs by 1 to 2 in from his back hip length: the chart again.
    [InlineData("men", "L", "hip-length", 69)]
    // Heads: theoldhooker.blogspot.com (woman 21.5-22.5 in, man 23-24); crochetkitten.blogspot.com, December 2014 (toddler 19, child 20.5);
    // calicojoy.com/size-chart (3-6 months 15, teen 20-21). Hands: purlsandpixels.com/knitwear-size-guide (woman 6-7.5 in, man 7.5-9).
    [InlineData("women", "M", "head", 57)]
    [InlineData("men", "M", "head", 61)]
    [InlineData("children", "2", "head", 48.5)]
    [InlineData("children", "6", "head", 52)]
    [InlineData("children", "14", "head", 53.5)]
    [InlineData("babies", "3 months", "head", 38)]
    [InlineData("women", "M", "hand", 19)]
    [InlineData("men", "M", "hand", 23)]
    public void Tables_have_the_lengths_heads_and_hands(string table, string size, string measure, double centimetres)
    {
        var pattern = Compiled.Whole($"sizes \"{size}\"\nbody {table}, cm\nmeasure own is {measure} + 0 cm\npiece back\nbegin with 20 stitches\nrow 1: dc across\n").Clean().Pattern;
        Assert.Equal(centimetres, pattern.Measures.Single(m => m.Name == measure).Centimetres[0].ToDouble());
        Assert.Contains(measure.EndsWith("length", StringComparison.Ordinal) ? "length chart" : "hats", pattern.Measures.Single(m => m.Name == measure).Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_are_the_waists_and_so_many_more()
    {
        foreach (var (table, hip, tunic, sizes) in new[] { ("women", 6, 11, "XS, S, M, L, 1X, 2X, 3X, 4X, 5X"), ("children", 2, 6, "2, 4, 6, 8, 10, 12, 14, 16") })
        {
            Compiled.Whole($"sizes {sizes}\nbody {table}, in\nmeasure a is hip-length - back-waist-length\nmeasure b is tunic-length - back-waist-length\npiece back\nbegin with 20 stitches\nrow 1: dc across\nexpect 2 rows are 2 rows\n")
                .Clean().Pattern.Measures.Where(m => m.Name is "a" or "b")
                .ToList().ForEach(m => Assert.All(m.Centimetres, cm => Assert.Equal((m.Name == "a" ? hip : tunic) * 2.54, cm.ToDouble(), 6)));
        }
    }

    [Fact]
    public void The_message_has_the_row_of_numbers_the_rule_and_its_source()
    {
        var warning = Assert.Single(Compiled.Whole("sizes S, M, L\nbody women, cm\npiece back\nbegin with 20 stitches\nrow 1: dc across\nfinished armhole-depth is 16 (19.5, 30) cm\naccept fit-length: \"none\"\n").Compilation.Diagnostics.Take(1));
        Assert.Equal("the finished armhole-depth is 16 cm in S, 1.5 cm shallower than the armhole-depth of 17.5 cm: it cuts in under the arm", warning.Message);
        Assert.Equal(["S"], warning.Sizes);
        Assert.Equal(
            [
                "finished:   S 16 cm, M 19.5 cm, L 30 cm",
                "armhole-depth: S 17.5 cm, M 19 cm, L 20.5 cm; by standard body measurements for women",
                "difference: S -1.5 cm, M +0.5 cm, L +9.5 cm",
                "the rule:   an armhole is 0 to 7.5 cm (3 in) deeper than the body's, an oversized garment's deeper (common practice, no published source)",
            ],
            warning.Ledger);
    }

    [Fact]
    public void A_fit_that_is_meant_is_accepted_with_its_reason()
    {
        var lines = "piece back\nbegin with 20 stitches\nrow 1: dc across\nfinished cross-back is 60 cm\nfinished armhole-depth is 30 cm\n";
        Assert.Equal(["fit-cross-back", "fit-armhole"], Compiled.Whole("sizes S\nbody women, cm\n" + lines).Found);
        var compilation = Compiled.Whole("sizes S\nbody women, cm\n" + lines + "accept fit-cross-back: \"dropped\"\naccept fit-armhole of armhole-depth: \"dropped too\"\n").Clean().Compilation;
        Assert.Equal(["dropped", "dropped too"], compilation.Accepted.Select(a => a.Reason));
    }

    [Fact]
    public void A_broken_line_may_say_another_body() =>
        Assert.DoesNotContain(Compiled.Whole("sizes S\nbody women, cm\nmeasure armhole-depth is is 10 cm\npiece back\nbegin with 20 stitches\nrow 1: dc across\nfinished armhole-depth is 12 cm\n").Found, name => name.StartsWith("fit-", StringComparison.Ordinal));

    [Fact]
    public void A_piece_may_be_called_as_a_body_measure() =>
        Assert.Equal(40, Compiled.Whole("sizes S\nbody women, cm\ngauge dc: 10 stitches and 5 rows to 10 cm\npiece head\nbegin with 40 stitches\nrow 1: dc across\nfinished width is head stitches\n").Clean().Pattern.Finished[0].Centimetres[0].ToDouble());

    private static IEnumerable<string> Found(string header, string finished) =>
        Compiled.Whole($"gauge dc: 10 stitches and 5 rows to 10 cm\n{header}\npiece back\nbegin with 40 stitches\nrow 1: dc across\n{finished}\n").Found;
}
