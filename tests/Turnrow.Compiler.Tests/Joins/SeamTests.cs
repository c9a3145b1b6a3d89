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

    [Theory]
    [InlineData("seam back last row with itself", 1, 20, 10, 11, null)]
    [InlineData("seam back foundation with itself", 1, 20, 10, 11, null)]
    [InlineData("seam tube last row with itself, from stitch 4", 4, 3, 6, 1, 7)]
    [InlineData("seam tube last row with itself", 1, 7, 3, 5, 4)]
    public void A_row_with_itself_is_folded_and_its_stitches_meet(string line, int first, int second, int lastFirst, int lastSecond, int? alone)
    {
        var fold = Joined($"piece tube\nbegin with 7 stitches\nround 1: dc around\n{line}").Seam(0).Fold!;
        Assert.Equal(((first, second), (lastFirst, lastSecond), alone), (fold.Pair(0), fold.Pair(fold.Pairs - 1), fold.Alone));
    }

    [Theory]
    [InlineData("seam back last row with back last row")]
    [InlineData("seam back last row with itself, from stitch 2")]
    [InlineData("seam back right edge with itself")]
    [InlineData("seam back last row with itself, easing")]
    [InlineData("seam back last row with itself, in the same order")]
    [InlineData("seam back last row and back left edge with itself")]
    [InlineData("seam back last row with front last row, from stitch 2")]
    public void What_can_not_lie_on_itself_is_told(string line) => Assert.Equal(["seam-itself"], Joined(line).Found.Where(f => f.StartsWith("seam", StringComparison.Ordinal)));

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

    [Theory]
    [InlineData("seam back right edge and back last row with front foundation and front side, first 10 rows", "")]
    [InlineData("seam back right edge and back last row with front foundation and front side", "seam-length")]
    [InlineData("seam back right edge and back neck with front side", "edge-unknown")]
    [InlineData("seam back right edge and back with front side", "edge-unsaid")]
    public void Edges_end_to_end_are_counted_together(string line, string name)
    {
        var found = Joined(line).Found.Where(f => f.StartsWith("seam", StringComparison.Ordinal) || f.StartsWith("edge", StringComparison.Ordinal)).ToList();
        Assert.Equal(name.Length == 0 ? [] : [name], found);
    }

    [Fact]
    public void Several_edges_are_a_seam_s_parts_in_the_order_named()
    {
        var seam = Joined("seam back right edge and back last row and back left edge with front foundation and front side, easing").Seam(0);
        Assert.Equal([(10, 0), (0, 20), (10, 0)], seam.WholeFirst.Select(s => (s.RowEnds, s.Stitches)));
        Assert.Equal([(0, 20), (10, 0)], seam.WholeSecond.Select(s => (s.RowEnds, s.Stitches)));
        Assert.Null(seam.Lengths);
    }

    // Ten rows are 10 cm high, and 20 stitches 10 cm wide: the first edge is 10 cm longer than the second.
    [Theory]
    [InlineData("easing 10 to 12 (13) cm", "", "")]
    [InlineData("easing 0 to 2 cm", "seam-easing", "S, L")]
    [InlineData("easing 9.5 (10.2) to 20 cm", "seam-easing", "L")]
    [InlineData("easing 0 to 9 (10) cm", "seam-easing", "S")]
    public void An_eased_seam_says_by_how_much_its_first_edge_is_longer(string easing, string name, string sizes)
    {
        var compiled = Compiled.Piece($"straight 9 rows\nseam back right edge and back last row with back left edge, {easing}");
        var found = compiled.Compilation.Diagnostics.Where(d => d.Kind.Name.StartsWith("seam", StringComparison.Ordinal)).ToList();
        Assert.Equal(name, string.Join(", ", found.Select(d => d.Kind.Name)));
        Assert.Equal(sizes, string.Join(", ", found.SelectMany(d => d.Sizes.Count == 0 ? ["S", "L"] : d.Sizes)));
        Assert.Equal((20, 10), (compiled.Seam(0).Lengths!.First.ToDouble(), compiled.Seam(0).Lengths!.Second.ToDouble()));
    }

    [Fact]
    public void Without_a_gauge_nothing_is_measured()
    {
        var compiled = Compiled.Of("piece back\nbegin with 20 stitches\nrow 1 RS: tr across\nseam back right edge with back left edge, easing 0 to 2 cm");
        Assert.Contains("gauge-missing", compiled.Found);
        Assert.Null(compiled.Seam(0).Lengths);
    }
}
