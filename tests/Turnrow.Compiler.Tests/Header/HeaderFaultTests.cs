using Xunit;

namespace Turnrow.Compiler.Tests.Header;

/// <summary>What a header line says is taken as it is said, in every size, or refused.</summary>
public sealed class HeaderFaultTests
{
    [Theory]
    [InlineData("2.5")]
    [InlineData("8")]
    public void A_weight_that_no_band_bears_is_told(string weight) =>
        Assert.Equal(["yarn-weight"], Compiled.Of($"yarn main \"wool\", weight {weight}\npiece a\nbegin with 5 stitches\nrow 1: dc across").Found);

    [Fact]
    public void A_multiple_may_be_another_one_in_each_size()
    {
        var compiled = Compiled.Of("count repeats is 6 (8)\ncount width is dc stitches for 50 cm, multiple of repeats\npiece a\nbegin with width stitches\nrow 1: dc across").Clean();
        Assert.Equal([102, 104], [compiled.Piece("a", 0).LastStitches, compiled.Piece("a", 1).LastStitches]);
    }

    [Fact]
    public void A_line_of_acceptance_that_can_not_be_read_hides_nothing() =>
        Assert.Contains("unknown-name", Compiled.Of("accept grade-falls \"no colon\"\npiece a\nbegin with hem stitches\nrow 1: dc across").Found);
}
