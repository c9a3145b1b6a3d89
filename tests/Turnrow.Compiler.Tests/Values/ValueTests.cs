using Xunit;

namespace Turnrow.Compiler.Tests.Values;

/// <summary>Numbers in sizes, sums, units and names.</summary>
public sealed class ValueTests
{
    private static string Last(string count) => Compiled.Of($"count n is {count}\npiece back\nbegin with n stitches\nrow 1: sc across").Clean().Last();

    [Theory]
    [InlineData("12", "12")]
    [InlineData("12 (14)", "12 (14)")]
    [InlineData("12 (14) + 3", "15 (17)")]
    [InlineData("2 x 12 (14) - 1", "23 (27)")]
    [InlineData("2 × 6", "12")]
    [InlineData("(2 + 3) x 4", "20")]
    [InlineData("2 + 3 x 4", "14")]
    [InlineData("24 / 4 / 2", "3")]
    [InlineData("7 1/2 x 2", "15")]
    [InlineData("7½ x 2", "15")]
    public void A_count_may_be_a_sum_in_sizes(string count, string expected) => Assert.Equal(expected, Last(count));

    [Fact]
    public void Names_stand_for_their_values_whatever_their_case() =>
        Assert.Equal("30 (34)", Compiled.Of("count drop is 4 (6)\ncount hem is 22 + 2 x Drop\npiece back\nbegin with HEM stitches\nrow 1: sc across").Clean().Last());

    [Theory]
    [InlineData("10 cm", "20")]
    [InlineData("100 mm", "20")]
    [InlineData("4 in", "20")]
    [InlineData("1 m", "200")]
    [InlineData("1 yd", "183")]
    [InlineData("10 (12) cm", "20 (24)")]
    [InlineData("10 cm + 1 in", "25")]
    [InlineData("20 cm / 2 - 1 cm", "18")]
    public void A_length_becomes_stitches_by_the_gauge(string length, string expected) => Assert.Equal(
        expected, Compiled.Of($"count n is dc stitches for {length}\npiece back\nbegin with n stitches\nrow 1: sc across").Clean().Last());

    [Theory]
    [InlineData("count n is 12 (14, 16)", "sizes-list")]
    [InlineData("count n is 1 / 0", "division-by-zero")]
    [InlineData("count n is 10 cm", "length-for-count")]
    [InlineData("measure girth is 10", "unit-missing")]
    [InlineData("measure girth is 10 cm + 1", "unit-mix")]
    [InlineData("measure girth is 10 cm x 2 cm", "unit-mix")]
    [InlineData("count n is 7 / 2", "not-whole")]
    [InlineData("count n is 3 - 5", "too-small")]
    [InlineData("count n is 999999 x 999999", "too-large")]
    [InlineData("count n is k", "unknown-name")]
    [InlineData("count n is k\ncount k is 4", "defined-below")]
    [InlineData("count a is b\ncount b is a", "circular")]
    [InlineData("count n is 3\ncount n is 4", "defined-twice")]
    [InlineData("count dc is 3", "name-is-stitch")]
    public void A_value_that_can_not_be_is_told_once(string lines, string name) => Assert.Equal([name], Compiled.Of(lines).Found);

    [Fact]
    public void A_wrong_value_says_nothing_more_where_it_is_used() =>
        Assert.Equal(["division-by-zero"], Compiled.Of("count n is 1 / 0\npiece back\nbegin with n stitches\nrow 1: dc across = 12\nstraight n rows").Found);

    [Fact]
    public void A_thousand_terms_are_no_harder_than_two() =>
        Assert.Equal("1001", Last(string.Join(" + ", Enumerable.Repeat("1", 1001))));
}
