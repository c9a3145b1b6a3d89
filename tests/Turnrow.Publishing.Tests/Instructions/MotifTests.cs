using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Tests.Reader;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Motifs and their sides as a maker reads them.</summary>
public sealed class MotifTests
{
    private const string Tiles = """
        pattern "Tiles"
        terms US
        piece tile
          begin with ring
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
          fasten off
        piece other
          begin with ring
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around
          fasten off
        piece strip picked up along tile second side: sc
          row 2: sc across
        seam tile first side with other fourth side: 1 sc in each st
        weave in ends
        """;

    [Theory]
    [InlineData(Terms.US)]
    [InlineData(Terms.UK)]
    public void Sides_read_back(Terms terms)
    {
        var pattern = Compilation.Of(new SourceText("tiles.turnrow", Tiles)).Pattern;
        Assert.Equal(0, pattern.Errors);
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, terms)));
    }

    [Fact]
    public void A_side_is_named_and_what_it_is_stands_in_the_notes()
    {
        var page = WrittenInstructions.Write(Compilation.Of(new SourceText("tiles.turnrow", Tiles)).Pattern, Terms.US);
        Assert.Contains("**First side of Tile to fourth side of Other:** Lay the two edges together, RS facing each other. Match them st for st, from corner to corner. ", page, StringComparison.Ordinal);
        Assert.Contains("join yarn with sl st at the second side of Tile, from corner to corner, in the corner at its beginning", page, StringComparison.Ordinal);
        Assert.Contains("the first begins at the first corner of the last round", page, StringComparison.Ordinal);
    }
}
