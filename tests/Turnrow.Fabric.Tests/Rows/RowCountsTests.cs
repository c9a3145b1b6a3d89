using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Pieces;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Rows;

/// <summary>What a count takes in: the trade's way, without the turning chain, or with the chains of spaces.</summary>
public sealed class RowCountsTests
{
    // 1 dc and 6 times a space of 2 chains and a dc: 7 dc, of which the first is the turning chain, and 12 chains.
    private static RowWork Mesh =>
        Made.Begun(19, 1).Row(Say.Stitches(1), Say.Times(Amount.Across, new Chains(2), new Skip(2), Say.Stitches(1))).Rows[1].Work!;

    private static RowWork Mixed => Made.Begun(19, 1).Row(Say.Stitches(4), Work.Plain(StitchBook.Single, Amount.Across)).Rows[1].Work!;

    [Fact]
    public void A_turning_chain_that_counts_is_counted_and_chains_of_spaces_are_not()
    {
        Assert.Equal((7, 6), (Mesh.Stitches, Mesh.Spaces));
        Assert.Equal(7, Mesh.Count(Counting.Usual));
        Assert.Equal(7, Mesh.Count(Counting.Usual, StitchBook.Double));
    }

    [Fact]
    public void A_count_can_leave_the_turning_chain_out()
    {
        Assert.Equal(6, Mesh.Count(Counting.WithoutTurningChain));
        Assert.Equal(6, Mesh.Count(Counting.WithoutTurningChain, StitchBook.Double));
    }

    [Fact]
    public void A_count_can_take_the_chains_in_but_a_count_of_one_stitch_does_not()
    {
        Assert.Equal(19, Mesh.Count(Counting.WithChains));
        Assert.Equal(7, Mesh.Count(Counting.WithChains, StitchBook.Double));
    }

    [Fact]
    public void The_turning_chain_is_one_of_its_own_stitch_alone()
    {
        Assert.Equal(4, Mixed.Count(Counting.Usual, StitchBook.Double));
        Assert.Equal(3, Mixed.Count(Counting.WithoutTurningChain, StitchBook.Double));
        Assert.Equal(15, Mixed.Count(Counting.WithoutTurningChain, StitchBook.Single));
        Assert.Equal(0, Mixed.Count(Counting.Usual, StitchBook.Treble));
    }

    [Fact]
    public void A_turning_chain_that_does_not_count_is_in_no_count()
    {
        var row = Made.Begun(19, 1).Rows(1, ShapedPlan.Plain(StitchBook.Single)).Rows[1].Work!;
        Assert.Equal(19, row.Count(Counting.Usual));
        Assert.Equal(19, row.Count(Counting.WithoutTurningChain));
        Assert.Equal(19, row.Count(Counting.WithChains));
    }
}
