using Turnrow.Publishing.Tests.Instructions;
using Xunit;

namespace Turnrow.Publishing.Tests.Facts;

/// <summary>Lengths that are printed in both units: centimetres to the nearest half, inches to the quarter.</summary>
public sealed class WrittenLengthFacts
{
    private static void Prints(string length, string expected) =>
        Assert.Contains($"- Bust: {expected}\n", Written.Of($"pattern \"P\"\nmeasure bust is {length}\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across"), StringComparison.Ordinal);

    // "To fit bust" of published leaflets, CAC0129-028772M and CAC0129-029305M.
    [Theory]
    [InlineData("28", "71")]
    [InlineData("34", "86.5")]
    [InlineData("36", "91.5")]
    [InlineData("38", "96.5")]
    [InlineData("40", "101.5")]
    [InlineData("42", "106.5")]
    [InlineData("44", "112")]
    [InlineData("46", "117")]
    [InlineData("48", "122")]
    [InlineData("54", "137")]
    [InlineData("56", "142")]
    [InlineData("62", "157.5")]
    public void A_bust_in_inches_is_printed_in_half_centimetres(string inches, string centimetres) => Prints($"{inches} in", $"{inches} in ({centimetres} cm)");

    // Finished measurements of published leaflets, the rounding seen in all correct lines.
    [Theory]
    [InlineData("50", "127")]
    [InlineData("52", "132")]
    [InlineData("64", "162.5")]
    [InlineData("68", "172.5")]
    public void A_finished_width_is_rounded_the_same_way(string inches, string centimetres) => Prints($"{inches} in", $"{inches} in ({centimetres} cm)");

    // A child's chest and the finished chest: published leaflet CAK0329-008157M.
    [Theory]
    [InlineData("21", "53.5")]
    [InlineData("23", "58.5")]
    [InlineData("25", "63.5")]
    [InlineData("26 1/2", "67.5")]
    [InlineData("26", "66")]
    [InlineData("30", "76")]
    [InlineData("32", "81.5")]
    public void A_childs_chest_is_rounded_the_same_way(string inches, string centimetres) => Prints($"{inches} in", $"{inches} in ({centimetres} cm)");

    // Published leaflet BRC0502-027780M: a blanket of 48 1/2 by 52 in, 123 by 132 cm; it is 209 stitches and 170 rows of 16 and 14 to 4 in.
    [Fact]
    public void A_blanket_is_as_large_as_printed()
    {
        var text = Written.Of("pattern \"P\"\ngauge sc: 16 stitches and 14 rows to 4 in\npiece blanket\nbegin with 209 stitches\nrow 1 RS: sc across\nstraight 169 rows");
        Assert.Contains("- Blanket: 52 1/4 in (132.5 cm) wide, 48 1/2 in (123.5 cm) long", text, StringComparison.Ordinal);
        Prints("48 1/2 in", "48 1/2 in (123 cm)");
        Prints("52 in", "52 in (132 cm)");
    }

    // 10 cm stands for 4 in (10.16): published leaflets.
    [Fact]
    public void Ten_centimetres_stand_for_four_inches()
    {
        Prints("4 in", "4 in (10 cm)");
        Prints("10 cm", "10 cm (4 in)");
    }

    // Published leaflet CAC0129-035073M prints 755, 820, 890, 975, 1090 and 1235 m beside 780, 905, 979, 1075, 1200 and 1360 yd: only
    // roughly equal. A yard is 0.9144 m by definition.
    [Theory]
    [InlineData("780", "713", "755")]
    [InlineData("905", "828", "820")]
    [InlineData("979", "895", "890")]
    [InlineData("1075", "983", "975")]
    [InlineData("1200", "1097", "1090")]
    [InlineData("1360", "1244", "1235")]
    public void Yards_are_printed_in_exact_metres_and_not_in_those_of_the_leaflet(string yards, string metres, string printed)
    {
        var text = Written.Of($"pattern \"P\"\nmeasure bust is 34 in\nyarn main, {yards} yd\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across");
        Assert.Contains($"{yards} yd ({metres} m) a ball", text, StringComparison.Ordinal);
        Assert.DoesNotContain(printed, text, StringComparison.Ordinal);
    }

    // Bust and hip of the Craft Yarn Council's chart, from memory. It prints 81, 86, 147, 152 and 158 where the nearest half is another;
    // the leaflets above print the nearest half of 34 and 62.
    [Theory]
    [InlineData("30", "76")]
    [InlineData("33 1/2", "85")]
    [InlineData("32", "81.5")]
    [InlineData("34", "86.5")]
    [InlineData("58", "147.5")]
    [InlineData("60", "152.5")]
    [InlineData("62", "157.5")]
    public void A_chart_that_rounds_otherwise_is_not_followed(string inches, string centimetres) => Prints($"{inches} in", $"{inches} in ({centimetres} cm)");

    // For 44 in the Craft Yarn Council prints 111.5 cm (from memory), Yarnspirations 112; exactly it is 111.76.
    [Fact]
    public void Forty_four_inches_are_the_nearer_half() => Prints("44 in", "44 in (112 cm)");
}
