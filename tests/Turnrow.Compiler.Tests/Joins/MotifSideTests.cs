using Turnrow.Fabric.Joins;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Sides of motifs, counted by their corners.</summary>
public sealed class MotifSideTests
{
    private const string Tiles = """
        piece tile
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        round 2: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around
        fasten off
        piece other
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
        fasten off

        """;

    [Theory]
    [InlineData("tile", 4, "9 9 9 9")]
    [InlineData("other", 4, "9 9 9 9")]
    public void A_side_goes_from_corner_to_corner(string piece, int sides, string places)
    {
        var made = Compiled.Of(Tiles + "seam tile first side with other first side").Clean().Piece(piece, 0);
        Assert.Equal(sides, MotifSides.Count(made));
        Assert.Equal(places, string.Join(' ', Enumerable.Range(0, sides).Select(i => MotifSides.Of(made, i)!.Stitches)));
        for (var i = 0; i < sides; i++)
        {
            var side = MotifSides.PlacesOf(made, MotifSides.Of(made, i)!.Stretches[0]);
            Assert.True(side.First.IsCorner && side.Last.IsCorner);
            Assert.Equal(2, side.CountWhere(static p => p.IsCorner));
        }

        Assert.Null(MotifSides.Of(made, sides));
    }

    [Fact]
    public void All_sides_together_are_the_round_and_each_corner_again()
    {
        var made = Compiled.Of("""
            piece tile
            begin with 40 stitches
            round 1: dc 3, mark corner, dc 11, mark corner, dc 7, mark corner, dc 19
            fasten off
            """).Piece("tile", 0);
        Assert.Equal("12 8 23", string.Join(' ', Enumerable.Range(0, 3).Select(i => MotifSides.Of(made, i)!.Stitches)));
    }

    [Theory]
    [InlineData("seam tile first side with other third side")]
    [InlineData("seam tile second side with tile fourth side\nseam other first side with tile first side")]
    [InlineData("seam tile first side with other first side\npiece strip picked up along tile third side: 1 sc in each st and sp = 9")]
    [InlineData("seam tile first side with other first side\nexpect tile second side stitches are 7\nexpect other fourth side stitches are 6")]
    [InlineData("seam tile fifth side with other first side", "side-unknown")]
    [InlineData("seam tile first side with other sixth side", "side-unknown")]
    [InlineData("seam tile first side with other first side\nseam tile first side with other second side", "edge-twice")]
    [InlineData("seam tile first side with other first side\nexpect tile seventh side stitches are 3", "side-unknown")]
    [InlineData("seam tile first side with other first side\nexpect tile second side stitches are 8", "expect-equal")]
    public void Sides_stand_where_edges_are_named(string lines, params string[] found) => Assert.Equal(found, Compiled.Of(Tiles + lines).Found);

    [Fact]
    public void Both_counts_are_said_where_sides_differ() => Assert.Contains(
        Compiled.Of("""
            piece tile
            begin with ring
            round 1: (3 dc, ch 2, mark corner) 4 times in ring
            fasten off
            piece hexagon
            begin with ring
            round 1: (2 dc, ch 1, mark corner) 6 times in ring
            fasten off
            seam tile second side with hexagon sixth side
            """).Compilation.Diagnostics,
        d => d.Message.Contains("tile has 3 stitches and 2 spaces from corner to corner along this seam, and hexagon has 2 stitches and 2 spaces", StringComparison.Ordinal));

    [Fact]
    public void Of_several_made_alike_a_side_is_of_one() => Compiled.Of("""
        piece tile, make 2
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        fasten off
        seam first tile first side with second tile third side
        """).Clean();
}
