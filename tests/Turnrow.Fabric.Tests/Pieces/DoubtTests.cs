using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>What a piece still knows behind an error, and what is believed again at the next claim.</summary>
public sealed class DoubtTests
{
    [Fact]
    public void In_doubt_there_is_no_last_row_and_nothing_ahead()
    {
        var builder = Made.Begun(20, 2);
        Assert.NotNull(builder.LastWork);
        builder.Doubt(false);
        Assert.Null(builder.LastWork);
        Assert.Null(builder.Ahead);
    }

    [Fact]
    public void Chains_in_doubt_wait_for_no_stitch()
    {
        var builder = Made.New();
        builder.BeginWithChains(79);
        builder.Doubt(false);
        Assert.False(builder.WaitsForFirstStitch);
        builder = Made.New();
        builder.BeginWithChains(79);
        builder.Trust(77);
        Assert.False(builder.WaitsForFirstStitch);
        Assert.Equal(77, builder.Ahead!.Count);
    }

    [Fact]
    public void Doubt_of_the_rows_stays()
    {
        var builder = Made.Begun(20, 2);
        builder.Doubt(true);
        Assert.True(builder.RowsInDoubt);
        builder.Doubt(false);
        Assert.True(builder.Finish().RowsInDoubt);
    }

    [Fact]
    public void A_row_in_doubt_may_have_taken_what_was_left_or_added_before_it()
    {
        var builder = Made.Begun(20, 2);
        builder.AddStep(Hand.Left, false, 3, new Origin("leave"));
        builder.Doubt(false);
        Assert.NotNull(builder.PendingStep(Hand.Left));
        builder.Doubt(true);
        Assert.Null(builder.PendingStep(Hand.Left));
        Assert.Empty(builder.UnworkedSteps());
        builder.Trust(17);
        builder.AddStep(Hand.Left, true, 5, new Origin("add"));
        Assert.Equal(22, builder.Ahead!.Count);
    }

    [Fact]
    public void Doubt_of_the_rows_alone_keeps_the_count()
    {
        var builder = Made.Begun(20, 2);
        builder.DoubtRows();
        Assert.True(builder.RowsInDoubt);
        Assert.Equal(20, builder.Ahead!.Count);
    }

    [Fact]
    public void Doubt_of_the_rows_goes_on_in_a_part()
    {
        var builder = Made.Begun(20, 2);
        Assert.False(Made.Part(builder.Finish(), 0, 5, false).RowsInDoubt);
        builder.DoubtRows();
        Assert.True(Made.Part(builder.Finish(), 0, 5, false).RowsInDoubt);
    }

    [Fact]
    public void What_is_claimed_is_believed_of_the_stitch_that_was_worked_last()
    {
        var builder = Made.Begun(20, 2);
        builder.Trust(24);
        Assert.Equal(Say.Plain(24), builder.Ahead);
        Assert.Null(builder.LastWork);
    }

    [Fact]
    public void Where_the_last_row_is_not_known_its_plan_says_the_stitch()
    {
        var builder = Made.Begun(20, 1);
        builder.Doubt(false);
        builder.Rows(1, ShapedPlan.Plain(StitchBook.Treble));
        builder.Trust(24);
        Assert.Equal(StitchBook.Treble, builder.Ahead!.First.Stitch);
    }

    [Fact]
    public void Where_nothing_is_known_of_the_last_row_the_one_before_says_the_stitch()
    {
        var builder = Made.Begun(20).Row(Work.Plain(StitchBook.Treble, Amount.Across));
        builder.Doubt(false);
        builder.Row(Say.Stitches(Amount.Across));
        builder.Trust(24);
        Assert.Equal(StitchBook.Treble, builder.Ahead!.First.Stitch);
    }

    [Fact]
    public void Of_a_row_of_two_stitches_the_one_worked_last_says_it()
    {
        var builder = Made.Begun(20).Row(Say.Stitches(4), Work.Plain(StitchBook.Single, Amount.Across));
        builder.Trust(24);
        Assert.Equal(StitchBook.Single, builder.Ahead!.First.Stitch);
    }

    [Fact]
    public void Where_a_row_ends_in_a_space_the_row_before_says_the_stitch()
    {
        var builder = Made.Begun(20).Row(Work.Plain(StitchBook.Treble, Amount.Across)).Row(Say.Stitches(Amount.Until(2)), new Chains(2), new Skip(2));
        builder.Trust(24);
        Assert.Equal(StitchBook.Treble, builder.Ahead!.First.Stitch);
    }

    [Fact]
    public void Where_nothing_at_all_is_known_it_is_believed_of_sc()
    {
        var builder = Made.New();
        builder.BeginUnknown();
        builder.Trust(24);
        Assert.Equal(Place.TopOf(StitchBook.Single), builder.Ahead!.First);
    }

    [Fact]
    public void A_claim_says_what_is_ahead_with_the_steps()
    {
        var builder = Made.Begun(20, 2).Leave(Hand.Right, 2).Add(Hand.Left, 5);
        builder.Trust(30);
        Assert.Equal(30, builder.Ahead!.Count);
        Assert.Equal(25, builder.Ahead.CountWhere(place => place.Kind == PlaceKind.Stitch));
    }

    [Fact]
    public void No_stitches_can_be_claimed_and_as_many_as_there_are_numbers()
    {
        var builder = Made.Begun(20, 2);
        builder.Trust(0);
        Assert.Equal(0, builder.Ahead!.Count);
        builder.Trust(int.MaxValue);
        Assert.Equal(int.MaxValue, builder.Ahead!.Count);
    }

    [Fact]
    public void A_claim_of_fewer_than_were_just_added_is_not_believed()
    {
        var builder = Made.Begun(20, 2).Add(Hand.Left, 5);
        builder.Trust(4);
        Assert.Null(builder.Ahead);
    }

    [Fact]
    public void A_first_row_at_fault_leaves_the_foundation_s_chains_unknown()
    {
        var builder = Made.Begun(20);
        Assert.NotNull(builder.WorkRow(new WordsPlan([Say.Stitches(19)]), default, 0));
        Assert.Equal(new FoundationStart(0, false), builder.Finish().Start);
    }
}
