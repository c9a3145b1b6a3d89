using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>The name of an edge that begins within a piece stands above the rows under it.</summary>
public sealed class HeadingTests
{
    [Fact]
    public void A_name_of_some_sizes_is_a_heading_in_those()
    {
        var page = Written.Of(
            "pattern \"Panel\"\nterms US\nsizes S, M, L\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\nfor L: from here right edge is neck\nfor S: straight 2 rows\nfor L: straight 3 rows\nstraight 2 rows\nfrom here left edge is side\nstraight 1 row\n");
        Assert.Contains("*Size L only:* *Neck*", page, StringComparison.Ordinal);
        Assert.Contains("\n\n*Side*\n\n", page, StringComparison.Ordinal);
        Assert.True(page.IndexOf("*Size S only:*", StringComparison.Ordinal) < page.IndexOf("*Neck*", StringComparison.Ordinal));
    }
}
