using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Pieces that are joined to others while they are worked.</summary>
public sealed class JoinedTests
{
    private const string Front = """
        piece front
        begin with 20 stitches
        row 1 RS: sc across
        straight 7 (9) rows
        fasten off

        """;

    private const string Tile = """
        piece tile
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
        fasten off
        piece second
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring

        """;

    private static string Band(string joined, string times) =>
        $"{Front}piece band\nbegin with 6 stitches\nrow 1 RS: {joined}\nrow 2: sc across\nrepeat rows 1 to 2, {times} more times\nfasten off\n";

    [Theory]
    [InlineData("sc across, join to front right edge", "7 (9)")]
    [InlineData("sc across, join skipping 1 to front right edge", "3 (4)")]
    [InlineData("sc across, join to front right edge, join to front right edge", "3 (4)")]
    [InlineData("sc across, join with sc to front right edge in next", "7 (9)")]
    [InlineData("sc across, join to front foundation", "19")]
    [InlineData("sc across, join to front last row", "19")]
    [InlineData("sc across, join to front right edge", "6 (9)", "join-rest")]
    [InlineData("sc across, join to front right edge", "8 (9)", "join-beyond")]
    [InlineData("sc across, join skipping 2 to front right edge", "2", "join-rest", "join-beyond")]
    [InlineData("join to front right edge, sc across", "7 (9)", "join-place")]
    [InlineData("sc across, join to front right edge in next sp", "7 (9)", "join-place")]
    [InlineData("sc across, join to front right edge in each st", "7 (9)", "join-here")]
    [InlineData("sc across, join to band right edge", "7 (9)", "join-here")]
    public void Every_place_of_an_edge_is_joined_or_passed_over(string joined, string times, params string[] found) =>
        Assert.Equal(found, Compiled.Of(Band(joined, times)).Found.Distinct());

    [Fact]
    public void What_is_left_is_told_with_its_numbers() => Assert.Contains(
        Compiled.Of(Band("sc across, join to front right edge", "5 (7)")).Compilation.Diagnostics,
        d => d.Message == "band is joined to the right edge of front and ends before it: 2 row-ends of 8 are left in S");

    [Theory]
    [InlineData("row 1 RS: sc across, join to front right edge\nrow 2: sc across", true, true)]
    [InlineData("row 1 RS: sc across, join to front left edge\nrow 2: sc across", true, false)]
    [InlineData("row 1 RS: sc across\nrow 2: sc across, join to front left edge", false, true)]
    [InlineData("row 1 RS: sc across\nrow 2: sc across, join to front right edge", false, false)]
    [InlineData("row 1 RS: sc across, join to front last row\nrow 2: sc across", true, true)]
    [InlineData("row 1 RS: sc across, join to front foundation\nrow 2: sc across", true, false)]
    [InlineData("round 1: (sc, join to front last row) 6 times", false, false)]
    public void Where_the_hook_is_decides_which_way_an_edge_is_met(string rows, bool againstTheClock, bool forwards)
    {
        var joined = Assert.Single(Compiled.Of($"{Front}piece band\nbegin with 6 stitches\n{rows}\nfasten off\n").Piece("band", 0).JoinedTo);
        Assert.Equal((againstTheClock, forwards), (joined.AgainstTheClock, joined.Forwards));
    }

    [Fact]
    public void Rows_that_end_at_both_edges_are_not_joined_to_one() =>
        Assert.Contains("join-place", Compiled.Of($"{Front}piece band\nbegin with 6 stitches\nrow 1 RS: sc across, join to front right edge\nrow 2: sc across, join to front right edge\n").Found);

    [Theory]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 2 times, (3 dc, ch 1, join to tile first side in corner, ch 1, 3 dc) in next corner, join to tile first side in next sp, (3 dc, ch 1, join to tile first side in next corner, ch 1, 3 dc) in next corner, ch 1 = 24, 7 sp")]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 2 times, (3 dc, ch 1, join to tile first side in next sp, ch 1, 3 dc) in next corner, join to tile first side in next sp, (3 dc, ch 1, join to tile first side in next sp, ch 1, 3 dc) in next corner, ch 1 = 24, 7 sp")]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 2 times, (3 dc, ch 1, join to tile first side in corner, ch 1, 3 dc) in next corner, join to tile first side in next sp, (3 dc, ch 2, 3 dc) in next corner, ch 1 = 24, 7 sp", "join-rest")]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 2 times, (3 dc, ch 1, join to tile first side in corner, ch 1, 3 dc) in next corner, join to tile first side in corner, (3 dc, ch 2, 3 dc) in next corner, ch 1 = 24, 7 sp", "join-place")]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, join to tile first side in next dc) around = 24, 4 sp", "join-rest")]
    public void A_motif_is_joined_in_its_last_round(string round, params string[] found) =>
        Assert.Equal(found, Compiled.Of($"{Tile}{round}\nfasten off\n").Found);

    [Fact]
    public void Chains_on_both_sides_of_a_join_are_one_space()
    {
        var compiled = Compiled.Of($"{Tile}round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 3 times, (3 dc, ch 1, join to tile first side in corner, ch 2, 3 dc) in next corner, ch 1, join to tile first side in next corner, ch 1 = 24, 8 sp\nfasten off\n").Clean();
        Assert.Equal("2 1 2 1 2 1 3 2", string.Join(' ', Spaces(compiled.Piece("second", 0).Top!)));
    }

    [Fact]
    public void Two_neighbours_are_joined_in_one_round() => Compiled.Of($"""
        {Tile}round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
        fasten off
        piece third
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        round 2: (3 dc, ch 1, join to tile first side in corner, ch 1, 3 dc) in next corner, join to tile first side in next sp, (3 dc, ch 1, join to tile first side in next corner, join to second third side in corner, ch 1, 3 dc) in next corner, join to second third side in next sp, (3 dc, ch 1, join to second third side in next corner, ch 1, 3 dc) in next corner, ch 1, (3 dc, ch 2, 3 dc) in next corner, ch 1 = 24
        fasten off
        """).Clean();

    [Fact]
    public void What_joins_is_no_seam_and_no_open_end() =>
        Assert.DoesNotContain("piece-unjoined", Compiled.Of(Band("sc across, join to front right edge", "7 (9)") + "weave in ends\n").Found);

    private static IEnumerable<int> Spaces(Turnrow.Fabric.Places.PlaceSequence places)
    {
        foreach (var segment in places.Segments)
        {
            for (var i = 0; i < segment.Times; i++)
            {
                foreach (var run in segment.Unit.Where(run => run.Place.Chains > 0)) yield return run.Place.Chains;
            }
        }
    }
}
