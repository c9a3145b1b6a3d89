using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>begin with 40 foundation sc</c>: the foundation and row 1 at once.</summary>
public sealed class FoundationRowTests
{
    private static Compiled Piece(string lines) => Compiled.Whole($"notation 1\npattern \"P\"\nterms US\nsizes S, M\nhook 4 mm\npiece cuff\n{lines}\n");

    [Theory]
    [InlineData("sc", 2, false)]
    [InlineData("dc", 4, true)]
    [InlineData("tr", 5, true)]
    public void Only_the_chains_that_the_first_stitch_needs_are_made_before(string stitch, int chains, bool counts)
    {
        var row = Piece($"  begin with 40 (44) foundation {stitch} = 40 (44)\n  row 2: {stitch} across = 40 (44)").Clean().Row(1, "cuff");
        Assert.Equal((RowBegins.FoundationStitches, chains, chains, counts), (row.Begins, row.Work!.Opening.Chains, row.Work.Opening.FirstStitchIn, row.Work.Opening.Counts));
        Assert.Equal((40, true), (row.Work.Stitches, row.RightSide));
    }

    [Fact]
    public void It_is_row_1_and_has_row_ends_with_the_names_said_from_the_beginning()
    {
        var cuff = Piece("  begin with 40 foundation sc\n  both edges are side\n  row 2: sc across\n  straight 3 rows").Clean().Piece("cuff", 0);
        Assert.Equal(5, cuff.Rows.Count);
        Assert.False(cuff.Rows[1].RightSide);
        Assert.Equal([(StretchKind.RowEnds, 1, 5, "side")], cuff.Right.Stretches.Select(s => (s.Kind, s.FirstRow, s.Count, s.Name!)));
    }

    [Fact]
    public void Rounds_go_on_from_it_without_a_turn()
    {
        var cuff = Piece("  begin with 60 foundation dc\n  round 2: dc around\n  straight 3 rounds = 60").Clean().Piece("cuff", 1);
        Assert.Equal([false, true, true, true, true], cuff.Rows.Select(row => row.IsRound));
        Assert.Equal((RowBegins.Round, true), (cuff.Rows[1].Begins, cuff.Rows[1].RightSide));
        Assert.Equal(PlaceKind.SkippedChains, cuff.Rows[0].Work!.Tops.First.Kind);
    }

    [Fact]
    public void Its_stitches_are_those_that_straight_goes_on_with() =>
        Assert.Equal("sc", Piece("  begin with 20 foundation sc\n  straight 2 rows").Clean().Row(3, "cuff").Work!.Tops.First.Stitch!.Id);

    [Fact]
    public void A_claim_that_is_off_is_found() =>
        Assert.Equal(["row-count"], Piece("  begin with 40 (44) foundation sc = 42 (44)\n  row 2: sc across").Found);

    [Fact]
    public void Of_a_stitch_that_is_not_known_the_number_still_is()
    {
        var compiled = Piece("  begin with 40 foundation dv\n  row 2: sc across = 41");
        Assert.Equal(["unknown-stitch", "row-count"], compiled.Found);
    }
}
