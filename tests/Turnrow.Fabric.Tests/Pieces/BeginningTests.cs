using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>What a piece can begin from, and what it knows when something is in doubt.</summary>
public sealed class BeginningTests
{
    [Theory]
    [InlineData("dc", 77, 79)]
    [InlineData("sc", 77, 78)]
    [InlineData("tr", 77, 80)]
    public void A_foundation_has_the_chains_that_its_first_row_asks_for(string stitch, int stitches, int chains)
    {
        var builder = Made.Begun(stitches).Rows(1, ShapedPlan.Plain(StitchBook.Find(stitch, Terms.US)!));
        Assert.Equal(chains, Assert.IsType<FoundationStart>(builder.Finish().Start).Chains);
        Assert.Equal(stitches, builder.Last());
    }

    [Fact]
    public void Chains_give_what_the_first_stitch_makes_of_them()
    {
        var builder = Made.New();
        builder.BeginWithChains(79);
        Assert.Null(builder.Ahead);
        Assert.True(builder.WaitsForFirstStitch);
        builder.Plain(1);
        Assert.Equal(77, builder.Last());
        Assert.Equal(new FoundationStart(79, true), builder.Finish().Start);
    }

    [Fact]
    public void The_first_of_the_skipped_chains_is_worked_like_a_stitch()
    {
        var builder = Made.Begun(10, 2);
        Assert.Equal(PlaceKind.SkippedChains, builder.Rows[0].Work!.Tops.First.Kind);
        Assert.Equal(PlaceKind.SkippedChains, builder.Rows[1].Work!.Below.Last.Kind);
        Assert.Equal(PlaceKind.TurningChain, builder.Rows[1].Work!.Tops.First.Kind);
    }

    [Fact]
    public void A_part_is_worked_over_its_own_stitches_in_the_order_in_which_they_are_met()
    {
        var below = Made.Begun(10).Row(Work.Plain(StitchBook.Single, Amount.Of(4)), Say.Stitches(6)).Finish();
        var part = Made.Part(below, 0, 5, true);
        Assert.Equal([StitchBook.Double, StitchBook.Single], part.Ahead!.Kinds().Select(k => k.Place.Stitch));
        Assert.Equal([1, 4], part.Ahead!.Kinds().Select(k => k.Count));
    }

    [Fact]
    public void What_lies_beside_a_part_is_counted_from_both_edges() =>
        Assert.Equal(11, new PartStart(Made.Begun(20, 2).Finish(), 4, 5, true).FromLeft);

    [Fact]
    public void A_pick_up_has_exactly_the_stitches_said_and_its_chain_is_the_first_of_them()
    {
        var builder = Made.New("tie");
        builder.BeginPickUp(new PickUpStart([], true, true), StitchBook.Double, 6, default);
        Assert.Equal((1, 6, true), (builder.RowCount, builder.Last(), builder.Rows[0].Work!.Opening.Counts));
        Assert.Equal(RowBegins.PickedUpJoined, builder.Rows[0].Begins);
    }

    [Fact]
    public void Doubt_keeps_the_rows_and_forgets_the_count_until_it_is_told_again()
    {
        var builder = Made.Begun(20, 2);
        builder.Doubt(false);
        Assert.Null(builder.WorkRow(Made.PlainDc, default, 0));
        Assert.Null(builder.Rows[^1].Work);
        Assert.False(builder.RowsInDoubt);
        builder.Trust(24);
        builder.Plain(1);
        Assert.Equal((4, 24), (builder.RowCount, builder.Last()));
    }

    [Fact]
    public void A_row_at_fault_is_there_and_its_count_is_not_known()
    {
        var builder = Made.Begun(20, 1);
        Assert.Equal(RowFaultKind.LeftOver, builder.WorkRow(new WordsPlan([Say.Stitches(19)]), default, 0)?.Kind);
        Assert.Equal(2, builder.RowCount);
        Assert.Null(builder.Ahead);
        Assert.Null(builder.Finish().Top);
        Assert.Equal(0, builder.Finish().LastStitches);
    }

    [Fact]
    public void A_row_of_one_stitch_knows_it_and_a_mixed_one_or_one_with_holes_does_not()
    {
        Assert.Same(StitchBook.Double, Made.Begun(10, 1).PlainStitch());
        Assert.Same(StitchBook.Double, Made.Begun(10).Row(new SlipOver(2), Say.Stitches(Amount.Until(2)), new Leave(2)).PlainStitch());
        Assert.Null(Made.Begun(10).Row(Work.Plain(StitchBook.Single, Amount.Of(4)), Say.Stitches(6)).PlainStitch());
        Assert.Null(Made.Begun(10).Row(new Skip(1), Say.Stitches(9)).PlainStitch());
        Assert.Same(StitchBook.Double, Made.Begun(10).Row(Work.Increase(StitchBook.Double, 1), Say.Stitches(9)).PlainStitch());
        Assert.Null(Made.Begun(10).PlainStitch());
    }

    [Fact]
    public void Fastening_off_is_kept()
    {
        var builder = Made.Begun(10, 1);
        Assert.False(builder.Finish().FastenedOff);
        builder.FastenOff();
        Assert.True(builder.Finish().FastenedOff);
    }

    [Fact]
    public void A_foundation_is_chains_under_which_there_is_no_space()
    {
        Assert.Equal(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), 10), Made.Begun(10).Ahead);
        Assert.Equal(new FoundationStart(0, false), Made.Begun(10).Finish().Start);
        var given = Made.New();
        given.BeginWithChains(12);
        Assert.Equal(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), 10), given.Plain(1).Rows[0].Work!.Below);
    }

    [Fact]
    public void A_piece_begins_with_its_foundation_until_there_is_a_row()
    {
        Assert.False(Made.New().BeginsWithFoundation);
        Assert.True(Made.Begun(10).BeginsWithFoundation);
        Assert.False(Made.Begun(10, 1).BeginsWithFoundation);
        Assert.False(Made.Part(Made.Begun(20, 2).Finish(), 0, 5, true).BeginsWithFoundation);
    }

    [Fact]
    public void A_piece_that_has_not_begun_would_begin_at_its_right_edge()
    {
        Assert.False(Made.New().HasBegun);
        Assert.Equal((true, Hand.Right), (Made.New().NextIsRightSide, Made.New().HookAt));
        Assert.True(Made.Begun(10).HasBegun);
    }

    [Fact]
    public void A_piece_without_rows_has_no_last_row_and_its_hook_is_at_the_right_edge()
    {
        var piece = Made.Begun(10).Finish();
        Assert.Null(piece.Top);
        Assert.Null(piece.TopFromRight);
        Assert.Equal((0, Hand.Right), (piece.LastStitches, piece.HookAt));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(3, 1)]
    [InlineData(79, 77)]
    public void Chains_too_few_for_a_stitch_give_none(int chains, int stitches)
    {
        var builder = Made.New();
        builder.BeginWithChains(chains);
        Assert.True(builder.WaitsForFirstStitch);
        Assert.Null(builder.Ahead);
        builder.Plain(1);
        Assert.Equal(stitches, builder.Last());
    }

    [Fact]
    public void A_space_after_the_first_stitch_is_made_of_the_chains_given_only_where_they_count()
    {
        Word[] words = [Say.Stitches(1), new Chains(2), new Skip(2), Say.Stitches(Amount.Across)];
        var counted = Made.New();
        counted.BeginWithChains(15);
        Assert.Equal(11, counted.Row(words).Rows[0].Work!.Below.Count);
        var uncounted = Made.New();
        uncounted.SetRule(StitchBook.Double, TurnRule.Of(3, false), false);
        uncounted.BeginWithChains(15);
        Assert.Equal(12, uncounted.Row(words).Rows[0].Work!.Below.Count);
    }

    [Fact]
    public void Chains_of_a_row_that_works_no_stitch_are_its_places()
    {
        var builder = Made.New();
        builder.BeginWithChains(15);
        Assert.Equal(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), 15), builder.Row(new Chains(3), new Skip(15)).Rows[0].Work!.Below);
    }

    [Fact]
    public void A_pick_up_is_the_first_row_of_its_line()
    {
        var builder = Made.New("tie");
        builder.BeginPickUp(new PickUpStart([], true, false), StitchBook.Double, 6, new Origin("line"));
        Assert.Equal((RowBegins.PickedUp, 0, "line"), (builder.Rows[0].Begins, builder.Rows[0].Ordinal, builder.Rows[0].Origin.Value));
        Assert.Equal(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), 6), builder.Rows[0].Work!.Below);
    }

    [Fact]
    public void A_pick_up_of_a_number_in_doubt_is_a_row_that_is_not_known()
    {
        var builder = Made.New("tie");
        builder.BeginPickUp(new PickUpStart([], true, false), StitchBook.Double, null, default);
        Assert.Null(Assert.Single(builder.Rows).Work);
    }

    [Fact]
    public void Where_a_row_came_from_makes_no_difference_to_it()
    {
        Assert.True(new Origin("a line") == new Origin("another"));
        Assert.False(new Origin("a line") != new Origin("another"));
        Assert.Equal(new Leave(2) { Origin = new Origin("a line") }, new Leave(2) { Origin = new Origin("another") });
        Assert.Equal(new Origin("a line").GetHashCode(), new Origin("another").GetHashCode());
        Assert.False(new Origin("a line").Equals("a line"));
    }
}
