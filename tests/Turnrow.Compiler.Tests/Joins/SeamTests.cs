using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

public sealed class SeamTests
{
    private static Compiled Joined(string seam) => Compiled.Of($"""
        piece back
        begin with 20 stitches
        row 1 RS: dc across
        straight 9 rows
        piece front
        begin with 20 stitches
        left edge is side
        row 1 RS: dc across
        straight 9 (11) rows
        piece sleeve
        begin with 20 stitches
        row 1 RS: dc across
        {seam}
        """);

    [Theory]
    [InlineData("seam back right edge with sleeve right edge, easing", 10, 1, true)]
    [InlineData("seam back right edge, first 1 rows, with sleeve right edge", 1, 1, true)]
    [InlineData("seam back left edge, rows 2 to 2, with sleeve right edge: 2 sc in each row", 1, 1, false)]
    [InlineData("seam back right edge, all but first 2 rows, with front side, rows 1 to 8", 8, 8, false)]
    [InlineData("seam back right edge with front side, first 10 rows, in the same order", 10, 10, false)]
    [InlineData("seam back right edge with front right edge, first 10 rows, in opposite order", 10, 10, true)]
    public void Row_ends_meet_row_for_row_and_the_order_is_derived(string line, int first, int second, bool opposite)
    {
        var compiled = Joined(line);
        Assert.DoesNotContain(compiled.Compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        var seam = compiled.Seam(0);
        Assert.Equal((first, second, opposite), (seam.First.RowEnds, seam.Second.RowEnds, seam.OppositeOrder));
    }

    [Fact]
    public void Stitches_meet_stitch_for_stitch()
    {
        var seam = Joined("seam back last row with front foundation: 1 sc in each st").Seam(0);
        Assert.Equal((20, 20, 0), (seam.First.Stitches, seam.Second.Stitches, seam.First.RowEnds));
    }

    [Theory]
    [InlineData("seam back right edge with sleeve right edge", "seam-length")]
    [InlineData("seam back right edge with front side", "seam-length")]
    [InlineData("seam back right edge with front side, first 10 rows, in opposite order", "seam-order")]
    [InlineData("seam back right edge with front right edge, first 10 rows, in the same order", "seam-order")]
    [InlineData("seam back right edge with front neck", "edge-unknown")]
    [InlineData("seam back with front side", "edge-unsaid")]
    [InlineData("seam back right edge, last 11 rows, with front side", "selection-rows")]
    public void Edges_that_do_not_meet_are_an_error(string line, string name) => Assert.Contains(name, Joined(line).Found);

    [Fact]
    public void Unequal_lengths_are_told_in_the_sizes_they_concern() => Assert.Equal(
        ["L"], Joined("seam back right edge with front side").Compilation.Diagnostics.Single(d => d.Kind.Name == "seam-length").Sizes);

    [Fact]
    public void An_edge_used_twice_and_a_piece_never_joined_are_warnings()
    {
        var found = Joined("seam back right edge with front side, first 10 rows\nseam back right edge, first 1 rows, with front right edge, first 1 rows").Found.ToList();
        Assert.Contains("edge-twice", found);
        Assert.Contains("piece-unjoined", found);
    }
}
