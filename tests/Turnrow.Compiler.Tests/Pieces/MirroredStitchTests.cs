using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Special stitches in a piece that mirrors another: their parts, the place that is meant by their name, and what stands on a stitch.</summary>
public sealed class MirroredStitchTests
{
    [Theory]
    [InlineData("(5 dc) in one place, centre is 2nd dc", 1)]
    [InlineData("(6 dc) in one place, centre is 3rd dc", 2)]
    [InlineData("(2 dc, ch 2, 2 dc) in one place, centre is 2nd dc", 1)]
    public void The_centre_is_the_other_one_from_the_other_end(string form, int behind)
    {
        var made = Compiled.Whole(
            $"terms US\nstitch cs is {form}\npiece r\nbegin with 7 stitches\nrow 1 RS: sc, skip 2, cs in next, skip 2, sc\nrow 2: sc, sc in next cs, skip {behind}, sc\npiece l is r mirrored\nseam r right edge with l left edge").Clean();
        Assert.All(made.Piece("l", 0).Rows, static row => Assert.NotNull(row.Work));
    }

    [Fact]
    public void The_order_of_what_ends_in_one_loop_turns_round()
    {
        var made = Compiled.Whole("terms US\nstitch slant is (sc, dc) together\npiece r\nbegin with 12 stitches\nrow 1 RS: sc, slant 5, sc\npiece l is r mirrored\nseam r right edge with l left edge");
        var slant = Assert.IsType<Work>(made.Row(1, "l").Work!.Words[1]).Stitch;
        Assert.Equal([StitchBook.Double, StitchBook.Single], slant.Form!.Parts.Select(static part => part.Stitch));
    }

    [Fact]
    public void A_row_that_is_lost_is_told()
    {
        var made = Compiled.Whole("terms US\nturn dc: ch 3 counts\npiece r\nbegin with 19 stitches\nrow 1 RS: dc across\nrow 2: dc, crossed 9\npiece l is r mirrored\nseam r right edge with l left edge");
        Assert.Equal(["row-lost"], made.Found);
        Assert.StartsWith("row 2 of l can't be worked: as the mirror image of r", made.Compilation.Diagnostics[0].Message);
    }
}
