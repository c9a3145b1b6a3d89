using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>A piece with corners keeps its counts when it is mirrored, wherever a marker stands in what is worked into a corner.</summary>
public sealed class MirroredCornerTests
{
    [Theory]
    [InlineData("dc in corner", 20)]
    [InlineData("3 dc in corner", 22)]
    [InlineData("(2 dc, mark corner, dc) in corner", 22)]
    [InlineData("(dc, mark corner, 2 dc) in corner", 22)]
    [InlineData("(3 dc, mark corner, dc) in corner", 23)]
    [InlineData("(2 dc, ch 2, 2 dc) in corner", 23)]
    public void It_keeps_its_counts(string corner, int stitches)
    {
        var compiled = Compiled.Of($"""
            piece a
            begin with 20 stitches
            row 1: dc 8, mark corner, dc across
            row 2: dc to corner, {corner}, dc across
            row 3: dc to corner, dc in corner, dc across
            piece b is a mirrored
            seam a right edge with b left edge
            """).Clean();
        Assert.Equal(stitches, compiled.Counts("b").ElementAt(1));
        Assert.Equal(compiled.Counts("a"), compiled.Counts("b"));
    }
}
