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
        piece strip picked up along tile second side: 1 sc in each st and sp
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

    [Theory]
    [InlineData(Terms.US)]
    [InlineData(Terms.UK)]
    public void Joins_read_back(Terms terms)
    {
        var pattern = Compilation.Of(new SourceText("joined.turnrow", Joined)).Pattern;
        Assert.Equal(0, pattern.Errors);
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, terms)));
    }

    [Fact]
    public void A_join_says_where_it_goes_and_the_piece_along_what()
    {
        var page = WrittenInstructions.Write(Compilation.Of(new SourceText("joined.turnrow", Joined)).Pattern, Terms.US);
        Assert.Contains("Joined as it is worked to the right edge of Front, RS of both up, from its first row up: 8 (10) row-ends.", page, StringComparison.Ordinal);
        Assert.Contains("sc in each sc across, sl st in next row-end of the right edge of Front. [6 sc]", page, StringComparison.Ordinal);
        Assert.Contains("skip next 1 row-end and sl st in next row-end of the left edge of Front", page, StringComparison.Ordinal);
        Assert.Contains("Joined as it is worked to the first side of Tile, RS of both up, from its last corner back to its first: 13 sts and sps.", page, StringComparison.Ordinal);
        Assert.Contains("(3 dc, ch 1, sl st in corner of the first side of Tile, ch 1, 3 dc) in next ch-2 sp, move the marker to this ch-2 sp, sl st in next sp of the first side of Tile", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around", "join in each sp")]
    [InlineData("round 2: ((3 dc, ch 3, 3 dc) in next corner, ch 3) around", "join with sc in each ch-3 sp")]
    [InlineData("round 2: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around", "join in each st")]
    [InlineData("round 2: (dc to corner, 3 dc in corner) around", "join in each corner")]
    [InlineData("round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) around", "join in each st and sp")]
    public void A_blanket_reads_back(string round, string join)
    {
        var pattern = Compilation.Of(new SourceText("blanket.turnrow", $"""
            pattern "Blanket"
            terms US
            sizes S, M, L
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              {round}
              fasten off
            blanket throw of tile: 4 (1, 3) across, 3 (5, 3) down, {join}
            piece edging picked up around throw last row: 1 sc in each st and sp, 3 sc in each corner
              fasten off
            """)).Pattern;
        Assert.Equal(0, pattern.Errors);
        foreach (var terms in new[] { Terms.US, Terms.UK }) Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, terms)));
    }

    [Theory]
    [InlineData("round 2: ((2 dc, ch 2, 2 dc) in next corner, ch 1) around", "join in each sp")]
    [InlineData("round 2: (dc to corner, (dc, ch 2, dc) in corner) around", "join with sc in each st")]
    [InlineData("round 2: ((2 dc, ch 2, 2 dc) in next corner, ch 1, (2 dc, ch 2, 2 dc) in next corner, ch 1, dc, ch 1, (2 dc, ch 2, 2 dc) in next corner, ch 1) 2 times", "join in each ch-1 sp")]
    public void A_blanket_of_hexagons_reads_back(string round, string join)
    {
        var pattern = Compilation.Of(new SourceText("blanket.turnrow", $"""
            pattern "Blanket"
            terms US
            sizes S, M, L, XL
            piece tile
              begin with ring
              round 1: (2 dc, ch 2, mark corner) 6 times in ring
              {round}
              fasten off
            blanket throw of tile: 4 (1, 3, 2) and 3 (1, 4, 2) across, 3 (5, 4, 1) down, {join}
            piece edging picked up around throw last row: 1 sc in each st and sp, 3 sc in each corner
              fasten off
            """)).Pattern;
        Assert.Equal(0, pattern.Errors);
        foreach (var terms in new[] { Terms.US, Terms.UK }) Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, terms)));
    }

    private const string Joined = """
        pattern "Joined"
        terms US
        sizes S, L
        piece front
          begin with 20 stitches
          row 1 RS: sc across
          straight 7 (9) rows
          fasten off
        piece band
          begin with 6 stitches
          row 1 RS: sc across, join to front right edge
          row 2: sc across
          repeat rows 1 to 2, 7 (9) more times
          fasten off
        piece other
          begin with 6 stitches
          row 1 RS: sc across
          row 2: sc across, join skipping 1 to front left edge
          repeat rows 1 to 2, 3 (4) more times
          fasten off
        piece tile
          begin with ring
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
          round 3: ((3 dc, ch 2, 3 dc) in next corner, ch 1, 3 dc in next sp, ch 1) around = 36, 12 sp
          fasten off
        piece second
          begin with ring
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
          round 3: ((3 dc, ch 2, 3 dc) in next corner, ch 1, 3 dc in next sp, ch 1) 2 times, (3 dc, ch 1, join to tile first side in corner, ch 1, 3 dc) in next corner, join to tile first side in next sp, 3 dc in next sp, join to tile first side in next sp, (3 dc, ch 1, join to tile first side in next corner, ch 1, 3 dc) in next corner, ch 1, 3 dc in next sp, ch 1 = 36, 10 sp
          fasten off
        piece hem
          begin with 30 stitches
          round 1: (sc, join with sc to front foundation) 20 times, sc across
          fasten off
        """;

    [Fact]
    public void A_side_is_named_and_what_it_is_stands_in_the_notes()
    {
        var page = WrittenInstructions.Write(Compilation.Of(new SourceText("tiles.turnrow", Tiles)).Pattern, Terms.US);
        Assert.Contains("**First side of Tile to fourth side of Other:** Lay the two edges together, RS facing each other. Match them st for st, from corner to corner. ", page, StringComparison.Ordinal);
        Assert.Contains("join yarn with sl st at the second side of Tile, from corner to corner, in the corner at its beginning", page, StringComparison.Ordinal);
        Assert.Contains("the first begins at the first corner of the last round", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_square_that_motifs_are_worked_around_says_how_many_and_which_edge_lies_below()
    {
        var page = Written.Of("""
            pattern "P"
            sizes S, M
            piece square
              begin with 9 stitches
              row 1 RS: sc across
              straight 6 rows
              fasten off
            piece patch picked up around square right edge and square last row and square left edge and square foundation: 1 sc in each row, 1 sc in each st, 3 sc in each corner
              round 2: (sc to corner, (sc, ch 2, sc) in corner) around, sc around
              fasten off
            blanket throw of patch: 3 (4) across, 4 (5) down, join in each st
            """);
        Assert.Contains("### Square\n\nMake 12 (20), one for each motif of Throw.\n", page, StringComparison.Ordinal);
        Assert.Contains("Each stands upright: the beginning edge of Square lies at its bottom.", page, StringComparison.Ordinal);
    }
}
