using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Pieces that go on from part of a row, and rows that are divided whole.</summary>
public sealed class PartTests
{
    // From the top down the left front comes first, read from the right edge of a right side that faces.
    private const string Yoke = """
        piece yoke
        begin with 110 (120) stitches
        row 1 RS: dc across
        row 2: dc across
        divide: 22 (24) for left, skip 8, 50 (56) for back, skip 8, 22 (24) for right
        piece left from yoke: left
        row 1: dc across = 22 (24)
        piece back from yoke: back
        row 1: dc across = 50 (56)
        piece right from yoke: right
        row 1: dc across = 22 (24)

        """;

    [Fact]
    public void A_divided_yoke_comes_out_and_only_the_part_at_the_hook_goes_on()
    {
        var compiled = Compiled.Of(Yoke).Clean();
        Assert.Equal((false, true, true), (Joined(compiled, "left"), Joined(compiled, "back"), Joined(compiled, "right")));
        Assert.Equal((0, 30, 88), (From(compiled, "left"), From(compiled, "back"), From(compiled, "right")));
    }

    [Fact]
    public void After_an_odd_number_of_rows_it_is_the_part_at_the_other_edge()
    {
        var compiled = Compiled.Of(Yoke.Replace("row 2: dc across\n", "", StringComparison.Ordinal)).Clean();
        Assert.Equal((true, true, false), (Joined(compiled, "left"), Joined(compiled, "back"), Joined(compiled, "right")));
        Assert.False(compiled.Row(1, "left").RightSide);
    }

    [Theory]
    [InlineData("skip 8, 50 (56)", "skip 8, 50", "divide-sum")]
    [InlineData("from yoke: right", "from yoke: middle", "part-unknown")]
    [InlineData("24) for right", "24) for left", "defined-twice")]
    public void What_does_not_come_out_is_told(string good, string bad, string name) =>
        Assert.Contains(name, Compiled.Of(Yoke.Replace(good, bad, StringComparison.Ordinal)).Found);

    [Fact]
    public void A_part_that_is_never_used_is_a_warning() => Assert.Equal(
        ["part-unused"], Compiled.Of(Yoke.Replace("piece right from yoke: right\nrow 1: dc across = 22 (24)\n", "", StringComparison.Ordinal)).Found);

    [Theory]
    [InlineData("5", "right", 0, 15, true)]
    [InlineData("5", "left", 15, 0, false)]
    public void A_part_at_an_edge_begins_there(string stitches, string edge, int fromRight, int fromLeft, bool joined)
    {
        var compiled = Compiled.Piece($"piece front from back: {stitches} stitches at {edge} edge = 5\nrow 1: dc across = 5").Clean();
        var part = (PartStart)compiled.Piece("front", 0).Start!;
        Assert.Equal((fromRight, fromLeft, joined), (part.FromRight, part.FromLeft, part.Joined));
    }

    [Fact]
    public void The_yarn_goes_on_once_only()
    {
        var compiled = Compiled.Piece("straight 1 rows\npiece a from back: 4 stitches at right edge\nrow 1: dc across\npiece b from back: 4 stitches at left edge\nrow 1: dc across").Clean();
        Assert.Equal((RowBegins.Turned, RowBegins.Joined), (compiled.Row(1, "a").Begins, compiled.Row(1, "b").Begins));
    }

    [Fact]
    public void Yarn_that_was_fastened_off_is_joined_anew() =>
        Assert.True(Joined(Compiled.Piece("straight 1 rows\nfasten off\npiece front from back: 4 stitches at right edge\nrow 1: dc across").Clean(), "front"));

    [Theory]
    [InlineData("piece a from back: 25 stitches at right edge\nrow: dc across", "part-too-wide")]
    [InlineData("piece a from back: 5 stitches at both edges\nrow: dc across", "part-both-edges")]
    [InlineData("piece a from front: 5 stitches at right edge\nrow: dc across", "unknown-piece")]
    [InlineData("piece a from back: 12 stitches at right edge\nrow: dc across\npiece b from back: 12 stitches at left edge\nrow: dc across", "part-overlap")]
    [InlineData("begin with 4 stitches", "begun-twice")]
    public void What_can_not_be_is_told(string lines, string name) => Assert.Contains(name, Compiled.Piece(lines).Found);

    [Fact]
    public void A_piece_in_a_circle_or_from_below_is_an_error()
    {
        Assert.Contains("piece-below", Compiled.Of("piece a from b: 4 stitches at right edge\npiece b from a: 4 stitches at right edge").Found);
        Assert.Contains("piece-below", Compiled.Of("piece a is b mirrored\npiece b is a mirrored").Found);
    }

    private static bool Joined(Compiled compiled, string piece) => ((PartStart)compiled.Piece(piece, 0).Start!).Joined;

    private static int From(Compiled compiled, string piece) => ((PartStart)compiled.Piece(piece, 0).Start!).FromRight;
}
