using Xunit;

namespace Turnrow.Compiler.Tests.Claims;

public sealed class ClaimTests
{
    private const string Mesh = "piece back\nbegin with 19 stitches\nrow 1: dc, (ch 2, skip 2, dc) across";

    [Theory]
    [InlineData("= 7")]
    [InlineData("= 7 sts")]
    [InlineData("= 7 dc")]
    [InlineData("= 6 sp")]
    [InlineData("= 7 dc, 6 sp")]
    [InlineData("= 7 (7) sts")]
    [InlineData("= 0 sc, 7 dc")]
    [InlineData("= 6 dc without turning chain")]
    [InlineData("= 6 without turning chain")]
    [InlineData("= 19 sts with chains")]
    [InlineData("= 5 + 2")]
    public void A_claim_that_holds_says_nothing(string claim) => Compiled.Of($"{Mesh} {claim}").Clean();

    [Theory]
    [InlineData("= 8")]
    [InlineData("= 7 sc")]
    [InlineData("= 7 sp")]
    [InlineData("= 7 (8)")]
    [InlineData("= 7 without turning chain")]
    [InlineData("= 7 with chains")]
    public void A_claim_that_does_not_hold_is_an_error(string claim) => Assert.Equal(["row-count"], Compiled.Of($"{Mesh} {claim}").Found);

    [Fact]
    public void It_says_in_which_sizes() =>
        Assert.Equal(["L"], Assert.Single(Compiled.Of($"{Mesh} = 7 (8)").Compilation.Diagnostics).Sizes);

    [Fact]
    public void A_claim_on_several_rows_is_the_last_one_s() =>
        Compiled.Piece("shape 4 rows: inc 1 at both edges every row = 28\nrows 6 to 8: dc across = 28\nrepeat row 8, 2 more times = 28\nstraight 2 rows = 28").Clean();

    [Fact]
    public void One_cause_is_told_once_and_what_is_off_by_the_same_is_counted()
    {
        var found = Assert.Single(Compiled.Piece("row 2: inc, dc across = 22\nrow 3: dc across = 22\nrow 4: dc across = 22").Compilation.Diagnostics);
        Assert.Equal("row-count", found.Kind.Name);
        Assert.Contains("2 more claims below are off by the same 1", string.Join("\n", found.Ledger.Append(found.Help)), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_difference_is_another_cause() =>
        Assert.Equal(["row-count", "row-count"], Compiled.Piece("row 2: inc, dc across = 22\nrow 3: dc across = 20").Found);

    [Fact]
    public void Where_a_line_is_broken_a_claim_is_believed() =>
        Assert.DoesNotContain("row-count", Compiled.Piece("row 2: dc acros = 24\nrow 3: dc across = 24\nrow 4: (dc 3, inc) across = 30").Found);

    // 10 dc of a mesh are not all of its places, and 5 shells are 25 stitches: what follows is worked over as many as nobody has told.
    [Theory]
    [InlineData("row 2: dc, (ch 1, skip 1, dc) 8 times = 10 dc\nrow 3: dc in each st and sp = 20")]
    [InlineData("row 2: dc, (ch 1, skip 1, dc) 8 times = 10\nrow 3: dc in each st and sp = 20")]
    [InlineData("row 2: (skip 1, shell in next) 7 times, sc = 7 shell\nrow 3: dc across = 36")]
    public void After_a_slip_a_claim_of_some_places_is_not_believed_as_all(string lines) =>
        Assert.DoesNotContain("row-count", Compiled.Piece(lines).Found);

    [Theory]
    [InlineData("row 2: dc 19 = 24 dc\nrow 3: dc across = 25")]
    [InlineData("row 2: (dc 5, inc) 5 times = 24\nrow 3: dc across = 25")]
    public void After_a_slip_a_claim_of_all_places_is_believed(string lines) =>
        Assert.Contains("row-count", Compiled.Piece(lines).Found);

    [Fact]
    public void What_has_no_claim_can_be_given_one() =>
        Assert.Equal([" = 20", " = 20 (22)"], Compiled.Piece("shape 2 rows: inc 0 (1) at right edge every row").Compilation.MissingClaims.Select(m => m.Text));
}
