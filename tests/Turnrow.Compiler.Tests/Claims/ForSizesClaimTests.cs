using Xunit;

namespace Turnrow.Compiler.Tests.Claims;

/// <summary>Claims that lines for some sizes could have.</summary>
public sealed class ForSizesClaimTests
{
    [Theory]
    [InlineData("for L: straight 2 rows", " = 20")]
    [InlineData("for S to L: straight 2 rows", " = 20")]
    [InlineData("for L: row: inc, dc across", " = 21")]
    [InlineData("for L: leave 2 at both edges", null)]
    [InlineData("for L: straight 2 rows = 20", null)]
    [InlineData("for L: row: dc, (ch 1, skip 1, dc) 9 times, dc", null)]
    public void One_that_makes_rows_and_says_none_is_proposed_one(string line, string? claim)
    {
        var proposed = Compiled.Piece(line + "\n").Compilation.MissingClaims;
        Assert.Equal(claim is null ? [" = 20"] : [" = 20", claim], proposed.Select(c => c.Text));
    }

    [Fact]
    public void Where_its_sizes_differ_every_size_has_a_number()
    {
        var compiled = Compiled.Of("piece back\nbegin with 20 (24) stitches\nrow 1 RS: dc across\nfor S, L: straight 1 row\n");
        Assert.Equal([" = 20 (24)", " = 20 (24)"], compiled.Compilation.MissingClaims.Select(c => c.Text));
    }
}
