using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>What <c>leave</c> and <c>add</c> do: no row of their own, but another start and end of the next one.</summary>
public sealed class StepTests
{
    private static (StretchKind, int, int, string?)[] Stretches(PieceBuilder builder, Hand hand) =>
        [.. builder.Finish().At(hand).Stretches.Select(s => (s.Kind, s.FirstRow, s.Count, s.Name))];

    [Fact]
    public void A_step_makes_no_row_and_changes_what_is_ahead()
    {
        var builder = Made.Begun(77, 20).Leave(Hand.Right, 4).Leave(Hand.Left, 4);
        Assert.Equal((20, 69), (builder.RowCount, builder.Ahead!.Count));
        builder.Plain(1);
        Assert.Equal((21, 69), (builder.RowCount, builder.Last()));
    }

    [Fact]
    public void What_is_left_is_at_the_start_of_the_row_at_one_edge_and_at_its_end_at_the_other()
    {
        var row = Made.Begun(20, 2).Leave(Hand.Right, 3).Leave(Hand.Left, 5).Plain(1).Rows[^1];
        Assert.Equal((3, 5), (row.Start!.Count, row.End!.Count));
        Assert.Same(row.Start, row.StepAt(Hand.Right));
    }

    [Fact]
    public void Added_chains_where_the_row_starts_are_its_foundation()
    {
        var row = Made.Begun(20, 2).Add(Hand.Right, 6).Plain(1).Rows[^1];
        Assert.Equal((26, 8, 4), (row.Work!.Stitches, row.Work.Opening.Chains, row.Work.Opening.FirstStitchIn));
    }

    [Fact]
    public void Added_chains_at_the_other_end_are_a_separate_length_of_exactly_so_many()
    {
        var row = Made.Begun(20, 2).Add(Hand.Left, 6).Plain(1).Rows[^1];
        Assert.Equal((26, 3, 6), (row.Work!.Stitches, row.Work.Opening.Chains, row.End!.Count));
    }

    [Fact]
    public void One_row_apart_both_are_where_a_row_starts()
    {
        var builder = Made.Begun(20, 2);
        builder.AddChainsApart(6, default);
        builder.Plain(2);
        Assert.Equal([26, 32], builder.Rows.Skip(2).Select(r => r.Work!.Stitches));
        Assert.All(builder.Rows.Skip(2), r => Assert.True(r.Start is { Adds: true, Count: 6 } && r.End is null));
    }

    [Fact]
    public void A_step_of_none_is_none()
    {
        var row = Made.Begun(20, 2).Leave(Hand.Right, 0).Add(Hand.Left, 0).Plain(1).Rows[^1];
        Assert.Null(row.Start);
        Assert.Null(row.End);
    }

    [Fact]
    public void Two_steps_at_one_place_are_one() => Assert.Equal(5, Made.Begun(20, 2).Leave(Hand.Right, 2).Leave(Hand.Right, 3).Plain(1).Rows[^1].Start!.Count);

    [Fact]
    public void Two_steps_at_one_place_under_two_names_are_two_stretches()
    {
        var builder = Made.Begun(20, 2).Add(Hand.Right, 2);
        builder.NameEdge(Hand.Right, "neck");
        builder.Add(Hand.Right, 4).Add(Hand.Right, 1).Plain(1);
        Assert.Equal(7, builder.Rows[^1].Start!.Count);
        Assert.Equal(
            [(StretchKind.RowEnds, 1, 2, null), (StretchKind.AddedChain, 2, 2, null), (StretchKind.AddedChain, 2, 5, "neck"), (StretchKind.RowEnds, 3, 1, "neck")],
            Stretches(builder, Hand.Right));
    }

    [Fact]
    public void Words_that_slip_over_and_leave_make_the_same_steps()
    {
        var words = Made.Begun(20, 2).Row(new SlipOver(3), Words.Say.Stitches(Amount.Until(5)), new Leave(5));
        var stated = Made.Begun(20, 2).Leave(Hand.Right, 3).Leave(Hand.Left, 5).Plain(1);
        Assert.Equal(Stretches(stated, Hand.Right), Stretches(words, Hand.Right));
        Assert.Equal(Stretches(stated, Hand.Left), Stretches(words, Hand.Left));
        Assert.Equal(12, words.Last());
    }

    [Fact]
    public void Words_that_slip_over_chains_just_added_leave_these()
    {
        var builder = Made.Begun(20, 2).Add(Hand.Right, 8).Row(new SlipOver(2), Words.Say.Stitches(Amount.Across));
        Assert.Equal(26, builder.Last());
        Assert.Equal(
            [(StretchKind.RowEnds, 1, 2, (string?)null), (StretchKind.AddedChain, 2, 8, null), (StretchKind.LeftStitches, 2, 2, null), (StretchKind.RowEnds, 3, 1, null)],
            Stretches(builder, Hand.Right));
    }

    [Fact]
    public void Leaving_more_than_there_is_is_a_fault()
    {
        var builder = Made.Begun(5, 1).Leave(Hand.Right, 3).Leave(Hand.Left, 3);
        Assert.Equal(RowFaultKind.NotEnough, builder.WorkRow(Made.PlainDc, default, 0)?.Kind);
        Assert.Null(builder.Rows[^1].Work);
    }

    [Fact]
    public void An_edge_is_a_walk_of_stretches_each_with_its_name()
    {
        var builder = Made.Begun(77);
        builder.NameEdge(Hand.Right, "side-seam");
        builder.Plain(20);
        builder.NameEdge(Hand.Right, "armhole");
        builder.Leave(Hand.Right, 4).Plain(16);
        Assert.Equal(
            [(StretchKind.RowEnds, 1, 20, "side-seam"), (StretchKind.LeftStitches, 20, 4, "armhole"), (StretchKind.RowEnds, 21, 16, "armhole")],
            Stretches(builder, Hand.Right));
        Assert.Equal([(StretchKind.RowEnds, 1, 36, (string?)null)], Stretches(builder, Hand.Left));
        Assert.Equal(["side-seam", "armhole"], builder.Finish().Right.Names);
    }

    [Fact]
    public void A_step_has_the_name_that_held_where_it_was_said()
    {
        var builder = Made.Begun(30);
        builder.NameEdge(Hand.Right, "armhole");
        builder.Plain(4).Add(Hand.Right, 4);
        builder.NameEdge(Hand.Right, "side-seam");
        builder.Plain(2);
        Assert.Equal(
            [(StretchKind.RowEnds, 1, 4, "armhole"), (StretchKind.AddedChain, 4, 4, "armhole"), (StretchKind.RowEnds, 5, 2, "side-seam")],
            Stretches(builder, Hand.Right));
    }

    [Fact]
    public void Row_ends_of_another_stitch_are_another_stretch()
    {
        var builder = Made.Begun(10, 2).Rows(3, ShapedPlan.Plain(Turnrow.Fabric.Stitches.StitchBook.Single));
        Assert.Equal([2, 3], builder.Finish().Left.Stretches.Select(s => s.Count));
    }
}
