using Xunit;

namespace Turnrow.Compiler.Tests.Header;

/// <summary>Counts by length: the nearest allowed count, in one step.</summary>
public sealed class CountTests
{
    private const string Waistcoat = "terms US\nsizes XS, S, M, L, 1X, 2X, 3X\ngauge dc: 19 stitches and 10 rows to 10 cm\nmeasure bust is 76 (86, 97, 107, 117, 127, 137) cm\n";

    private static string Of(string count)
    {
        var fitted = Compiled.Whole(Waistcoat + "count n is " + count).Clean().Pattern.FittedCounts.Single();
        return Annotated.InSizes.Text(fitted.Counts);
    }

    [Theory]
    [InlineData("stitches for bust / 2 + 2 cm, odd", "77 (85, 95, 105, 115, 125, 133)")]
    [InlineData("stitches for bust / 2 + 2 cm", "76 (86, 96, 105, 115, 124, 134)")]
    [InlineData("stitches for bust / 2 + 2 cm, even", "76 (86, 96, 106, 114, 124, 134)")]
    [InlineData("stitches for bust / 2 + 2 cm, multiple of 6 + 1", "79 (85, 97, 103, 115, 127, 133)")]
    [InlineData("stitches for bust / 2 + 2 cm, multiple of 3, odd", "75 (87, 93, 105, 117, 123, 135)")]
    [InlineData("stitches for bust / 2 + 2 cm, rounded up", "76 (86, 96, 106, 115, 125, 134)")]
    [InlineData("stitches for bust / 2 + 2 cm, rounded down", "76 (85, 95, 105, 114, 124, 133)")]
    [InlineData("rows for 16.5 (17.5, 18.5, 19.5, 20.5, 21.5, 22.5) cm, even", "16 (18, 18, 20, 20, 22, 22)")]
    [InlineData("stitches for 10 (10.5, 11.5, 12, 12.5, 13, 13.5) cm", "19 (20, 22, 23, 24, 25, 26)")]
    public void A_length_becomes_the_nearest_allowed_count(string count, string expected) => Assert.Equal(expected, Of(count));

    [Fact]
    public void On_a_tie_it_is_the_larger() => Assert.Equal("17", Of("rows for 16 cm, odd"));

    [Theory]
    [InlineData("count n is stitches for 10 cm, odd, even", "fixes-conflict")]
    [InlineData("count n is hdc stitches for 10 cm", "gauge-missing")]
    [InlineData("count n is stitches for 10", "unit-missing")]
    public void What_can_not_be_a_count_is_told(string line, string name) => Assert.Equal([name], Compiled.Whole(Waistcoat + line).Found);

    [Fact]
    public void With_two_gauges_the_stitch_is_named() => Assert.Equal(["gauge-unclear"], Compiled.Of("count n is stitches for 10 cm").Found);

    [Fact]
    public void Stitches_and_rows_may_have_spans_of_their_own()
    {
        var pattern = Compiled.Whole("terms US\ngauge sc: 18 stitches to 4 in, 11 rows to 3 in\ncount n is stitches for 10 in\ncount k is rows for 6 in").Clean().Pattern;
        Assert.Equal([45, 22], pattern.FittedCounts.Select(f => f.Counts[0]));
        Assert.True(pattern.InInches);
    }
}
