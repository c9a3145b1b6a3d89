using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
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

    [Fact]
    public void Steps_made_in_words_are_the_row_s_start_and_end_and_no_words_any_more()
    {
        var builder = Made.Begun(20, 2);
        builder.NameEdge(Hand.Right, "armhole");
        builder.NameEdge(Hand.Left, "neck");
        var row = builder.Row(new SlipOver(3), Words.Say.Stitches(Amount.Until(5)), new Leave(5)).Rows[^1];
        Assert.Equal((new Step(false, 3, "armhole"), new Step(false, 5, "neck")), (row.Start, row.End));
        Assert.IsType<Work>(Assert.Single(row.Work!.Words));
        Assert.Equal(Words.Say.Plain(12), row.Work.Below);
    }

    [Fact]
    public void A_row_that_is_all_slipped_over_has_a_start_and_no_words()
    {
        var row = Made.Begun(20, 2).Row(new SlipOver(20)).Rows[^1];
        Assert.Equal((20, 0, 0), (row.Start!.Count, row.Work!.Words.Count, row.Work.Below.Count));
        Assert.Null(row.End);
        row = Made.Begun(20, 2).Row(new Leave(20)).Rows[^1];
        Assert.Equal((20, 0, 0), (row.End!.Count, row.Work!.Words.Count, row.Work.Below.Count));
        Assert.Null(row.Start);
    }

    [Fact]
    public void Nothing_over_nothing_is_a_row()
    {
        var row = Made.Begun(0).Row().Rows[0];
        Assert.Equal(0, row.Work!.Stitches);
        Assert.Null(row.Start);
        Assert.Null(row.End);
    }

    [Fact]
    public void What_words_leave_is_what_stands_at_that_end()
    {
        var builder = Made.Begun(20, 1).Row(Words.Say.Stitches(4), Work.Plain(Turnrow.Fabric.Stitches.StitchBook.Single, Amount.Across));
        var all = Words.WordGen.Flat(builder.Ahead!);
        builder.Row(new SlipOver(3), Words.Say.Stitches(Amount.Until(2)), new Leave(2));
        Assert.Equal(all.Skip(3).SkipLast(2), Words.WordGen.Flat(builder.Rows[^1].Work!.Below));
    }

    [Fact]
    public void Steps_of_none_in_words_stay_words()
    {
        var row = Made.Begun(20, 2).Row(new SlipOver(0), Words.Say.Stitches(Amount.Across), new Leave(0)).Rows[^1];
        Assert.Null(row.Start);
        Assert.Null(row.End);
    }

    [Fact]
    public void Words_that_leave_of_chains_just_added_leave_these()
    {
        var builder = Made.Begun(20, 2).Add(Hand.Left, 8).Row(Words.Say.Stitches(Amount.Until(2)), new Leave(2));
        Assert.Equal(26, builder.Last());
        Assert.Equal(
            [(StretchKind.RowEnds, 1, 2, (string?)null), (StretchKind.AddedChain, 2, 8, null), (StretchKind.LeftStitches, 2, 2, null), (StretchKind.RowEnds, 3, 1, null)],
            Stretches(builder, Hand.Left));
        Assert.Equal([(StretchKind.RowEnds, 1, 3, (string?)null)], Stretches(builder, Hand.Right));
    }

    [Fact]
    public void What_remains_ahead_is_what_was_not_left_and_no_other()
    {
        var builder = Made.Begun(20, 1).Row(Words.Say.Stitches(4), Work.Plain(Turnrow.Fabric.Stitches.StitchBook.Single, Amount.Across));
        var all = Words.WordGen.Flat(builder.Ahead!);
        Assert.Equal(all.Skip(3), Words.WordGen.Flat(builder.Leave(Hand.Right, 3).Ahead!));
        Assert.Equal(all.Skip(3).SkipLast(5), Words.WordGen.Flat(builder.Leave(Hand.Left, 5).Ahead!));
        builder = Made.Begun(20, 1).Row(Words.Say.Stitches(4), Work.Plain(Turnrow.Fabric.Stitches.StitchBook.Single, Amount.Across));
        Assert.Equal(all.SkipLast(5), Words.WordGen.Flat(builder.Leave(Hand.Left, 5).Ahead!));
    }

    [Fact]
    public void All_that_is_there_can_be_left()
    {
        var builder = Made.Begun(5, 1).Leave(Hand.Right, 3).Leave(Hand.Left, 2);
        Assert.Equal(0, builder.Ahead!.Count);
    }

    [Fact]
    public void More_left_than_there_is_says_how_many_were_to_be_left()
    {
        var builder = Made.Begun(5, 1).Leave(Hand.Right, 3).Leave(Hand.Left, 4);
        Assert.Null(builder.Ahead);
        var fault = builder.WorkRow(Made.PlainDc, default, 0)!;
        Assert.Equal((RowFaultKind.NotEnough, 7, 5, 0), (fault.Kind, fault.Needed, fault.There, fault.Before));
    }

    [Fact]
    public void Chains_added_at_one_edge_are_not_among_those_left_at_the_other()
    {
        var (add, leave) = (new Origin("add"), new Origin("leave"));
        var builder = Made.Begun(5, 2);
        builder.AddStep(Hand.Right, true, 3, add);
        builder.AddStep(Hand.Left, false, 6, leave);
        var fault = builder.WorkRow(Made.PlainDc, default, 0)!;
        Assert.Equal((6, new Leave(6), "leave"), (fault.Needed, fault.Word, fault.Word!.Origin.Value));
    }

    [Fact]
    public void Where_both_edges_leave_too_much_the_fault_is_told_where_the_row_starts()
    {
        var builder = Made.Begun(5, 2);
        builder.AddStep(Hand.Right, false, 1, new Origin("start"));
        builder.AddStep(Hand.Left, false, 6, new Origin("end"));
        Assert.Equal("start", builder.WorkRow(Made.PlainDc, default, 0)!.Word!.Origin.Value);
    }

    [Fact]
    public void Added_chains_are_chains_under_which_there_is_no_space()
    {
        var ahead = Made.Begun(20, 2).Add(Hand.Right, 6).Add(Hand.Left, 6).Ahead!;
        Assert.Equal(new Place(PlaceKind.AddedChain, null, 0), ahead.First);
        Assert.Equal(new Place(PlaceKind.AddedChain, null, 0), ahead.Last);
    }

    [Fact]
    public void A_step_is_pending_at_its_edge_until_the_row_is_there()
    {
        var builder = Made.Begun(20, 1).Leave(Hand.Right, 3);
        Assert.Equal(3, builder.PendingStep(Hand.Right)!.Count);
        Assert.Null(builder.PendingStep(Hand.Left));
        Assert.Equal(3, Assert.Single(builder.UnworkedSteps()).Count);
        builder.Plain(1);
        Assert.Null(builder.PendingStep(Hand.Right));
        Assert.Empty(builder.UnworkedSteps());
    }

    [Fact]
    public void A_name_taken_back_before_anything_was_made_under_it_never_was()
    {
        var builder = Made.Begun(20);
        builder.NameEdge(Hand.Right, "armhole");
        builder.NameEdge(Hand.Right, "side-seam");
        Assert.Equal(["side-seam"], builder.NamesOf(Hand.Right));
        builder.Plain(2);
        builder.NameEdge(Hand.Right, "neck");
        builder.NameEdge(Hand.Right, "shoulder");
        Assert.Equal(["side-seam", "shoulder"], builder.NamesOf(Hand.Right));
    }
}
