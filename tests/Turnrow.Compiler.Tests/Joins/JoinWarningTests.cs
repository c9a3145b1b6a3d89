using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>What is likely a slip where pieces are joined, and what only looks like one.</summary>
public sealed class JoinWarningTests
{
    private const string Body = """
        piece back
        begin with 20 stitches
        both edges are side
        row 1 RS: dc across
        straight 9 rows
        from here both edges are armhole
        straight 10 rows
        piece back-right from back: 6 stitches at right edge
        row: dc across
        fasten off
        piece back-left is back-right mirrored
        piece front
        begin with 20 stitches
        both edges are side
        row 1 RS: dc across
        straight 9 rows
        from here both edges are armhole
        straight 10 rows
        piece front-left from front: 6 stitches at left edge
        row: dc across
        fasten off
        piece front-right is front-left mirrored

        """;

    private const string Shoulders = """
        seam back-right last row with front-left last row
        seam back-left last row with front-right last row

        """;

    private const string Sides = """
        seam back right side with front left side
        seam back left side with front right side

        """;

    [Theory]
    [InlineData("right edge is side\nleft edge is side")]
    [InlineData("right edge is Side\nleft edge is side")]
    public void An_edge_left_open_is_found_whatever_its_capitals(string names)
    {
        var body = Body.Replace("both edges are side", names, StringComparison.Ordinal);
        Assert.Contains("edge-open", Compiled.Of($"{body}{Shoulders}seam back right side with front left side\nweave in ends\n").Found);
    }

    [Theory]
    [InlineData("back right armhole and back-right right edge and front-left left edge and front left armhole: sc")]
    [InlineData("front left armhole and front-left left edge and back-right right edge and back right armhole, WS facing: sc")]
    [InlineData("back last row and back-left right edge and front-right left edge and front last row and front-left right edge and back-right left edge: sc")]
    [InlineData("back right edge and back-right right edge: sc")]
    [InlineData("front left side, last 4 rows and front left edge, rows 1 to 6: sc")]
    [InlineData("front left side, last 4 rows and front left edge, rows 1 to 5: sc", "pick-up-apart")]
    [InlineData("back right armhole and front left armhole: sc", "pick-up-apart")]
    [InlineData("front left armhole and front-left left edge: sc", "pick-up-apart")]
    [InlineData("back right armhole and back-right left edge: sc", "pick-up-apart")]
    [InlineData("back right edge and back left edge: sc", "pick-up-apart")]
    public void A_walk_goes_on_where_the_edge_before_it_ends(string walk, string? warning = null)
    {
        var found = Compiled.Of($"{Body}{Shoulders}piece band picked up along {walk}").Found.Distinct().Where(n => n != "edge-twice");
        Assert.Equal(warning is null ? [] : [warning], found);
    }

    [Fact]
    public void Without_the_seam_between_them_two_edges_do_not_meet() =>
        Assert.Contains("pick-up-apart", Compiled.Of(Body + "piece band picked up along back-right right edge and front-left left edge: sc").Found);

    [Fact]
    public void A_row_over_several_last_rows_joins_them() => Compiled.Of("""
        piece front
        begin with 20 stitches
        row 1 RS: dc across
        piece sleeve
        begin with 10 stitches
        row 1 RS: dc across
        piece yoke picked up along front last row and sleeve last row: 1 dc in each st
        """).Clean();

    [Theory]
    [InlineData(Sides)]
    [InlineData("seam back right side with front left side\nseam back left side, first 3 rows, with front right side, first 3 rows\n")]
    [InlineData("seam back right side with front left side\n", "edge-open", "edge-open")]
    [InlineData("")]
    public void Of_two_sides_both_are_joined(string seams, params string[] warnings) =>
        Assert.Equal(warnings, Compiled.Of(Body + Shoulders + seams + "weave in ends").Found);

    [Fact]
    public void An_open_side_is_told_only_of_a_whole_pattern() =>
        Compiled.Of(Body + Shoulders + "seam back right side with front left side").Clean();

    [Fact]
    public void A_mirrored_tie_uses_the_mirrored_edge()
    {
        const string Ties = "piece tie picked up along front right side: sc\npiece other-tie is tie mirrored\n";
        Compiled.Of(Body + Shoulders + Ties + "seam back right side with back left side\nweave in ends").Clean();
        Assert.Contains("edge-twice", Compiled.Of(Body + Shoulders + Sides + Ties).Found);
    }

    [Fact]
    public void Pieces_that_are_joined_to_each_other_alone_fall_apart()
    {
        Assert.Equal(["piece-unjoined"], Compiled.Of(Body + Sides.Replace("front left", "back left", StringComparison.Ordinal).Split('\n')[0] + "\nseam front right side with front left side\nweave in ends").Found);
        Compiled.Of("""
            piece palm
            begin with 20 stitches
            row 1 RS: dc across
            piece thumb from palm: 5 stitches at right edge
            row 1: dc across
            piece left-palm is palm mirrored
            piece left-thumb is thumb mirrored
            weave in ends
            """).Clean();
    }

    [Theory]
    [InlineData("row 2: sc across\nstraight 2 rows\nrow 5: dc across", "row 2: sc across\nstraight 2 rows\nrow 5: dc across", "seam a right edge with b left edge", null)]
    [InlineData("row 2: sc across\nstraight 2 rows\nrow 5: dc across", "row 2: sc across\nstraight 3 rows", "seam a right edge with b left edge", "row 5 of a is in dc, and it meets row 5 of b, which is in sc")]
    [InlineData("row 2: sc across\nstraight 2 rows\nrow 5: dc across", "row 2: sc across\nstraight 2 rows\nrow 5: dc across", "seam a right edge with b right edge", null)]
    [InlineData("row 2: sc across\nstraight 3 rows", "row 2: sc across\nstraight 3 rows", "seam a right edge with b right edge", null)] // as long
    [InlineData("row 2: sc across\nstraight 3 rows", "straight 4 rows", "seam a right edge with b right edge", "row 2 of a is in sc, and it meets row 4 of b, which is in dc")]
    [InlineData("row 2: sc across\nstraight 3 rows", "straight 4 rows", "seam a right edge with b right edge, easing", null)]
    [InlineData("row 2: sc, (skip 2, 5 dc in next, skip 2, sc in next) across", "row 2: dc across", "seam a right edge with b left edge", null)] // a row of shells
    [InlineData("row 2: sc across\nstraight 3 rows", "row 2: sc across\nstraight 3 rows", "seam a right edge, last 2 rows, with b right edge, last 2 rows", null)]
    public void Rows_that_meet_are_in_one_stitch(string first, string second, string seam, string? message)
    {
        var compiled = Compiled.Of($"turn sc: ch 1 does not count\npiece a\nbegin with 13 stitches\nrow 1 RS: dc across\n{first}\npiece b\nbegin with 13 stitches\nrow 1 RS: dc across\n{second}\n{seam}");
        Assert.Equal(message is null ? [] : [message + " in S"], compiled.Compilation.Diagnostics.Select(d => d.Message));
    }

    [Theory]
    [InlineData("seam back last row with front foundation\nseam back last row with front last row", "the last row of back is joined")]
    [InlineData("seam back foundation with front foundation\nseam front foundation with back last row", "the foundation of front is joined")]
    public void A_row_of_stitches_is_joined_once(string seams, string message) => Assert.Contains(
        Compiled.Of("piece back\nbegin with 9 stitches\nrow 1 RS: dc across\npiece front\nbegin with 9 stitches\nrow 1 RS: dc across\n" + seams).Compilation.Diagnostics,
        d => d.Kind.Name == "edge-twice" && d.Message.StartsWith(message, StringComparison.Ordinal));
}
