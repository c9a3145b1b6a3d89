using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Corners: where they are after a row, and what becomes of them on the way.</summary>
public sealed class CornerTests
{
    private static readonly Place _corner = Say.Dc with { IsCorner = true };
    private static readonly Work _together = new(StitchBook.Double, 3, 1, Amount.Once, Target.Next, HookInto.BothLoops);

    private static Work ToCorner(int remain = 0) => Say.Stitches(Amount.ToCorner(remain));

    private static Work In(int many) => Work.Plain(StitchBook.Double, Amount.Once) with { Makes = many, Target = Target.Corner };

    private static Work Across => Say.Stitches(Amount.Across);

    private static PlaceSequence At(params int[] between) =>
        Say.Of([.. between.SelectMany((count, i) => i == 0 ? [(Say.Dc, count)] : new[] { (_corner, 1), (Say.Dc, count) })]);

    private static string Corners(PlaceSequence places) =>
        string.Join(' ', Enumerable.Range(1, places.Count).Where(n => places.Slice(n - 1, 1).First.IsCorner));

    [Fact]
    public void A_marker_goes_into_the_stitch_or_the_space_just_made()
    {
        Assert.Equal("3 6", Corners(Say.Good(Say.Plain(7), Say.Stitches(3), new MarkCorner(), Say.Stitches(2), new Chains(2), new MarkCorner(), Across).Tops));
        Assert.Equal("4 8", Corners(Say.Good(Say.Plain(10), Say.Times(Amount.Of(2), Say.Stitches(4), new MarkCorner()), Across).Tops));
        Assert.Equal(RowFaultKind.MarkNothing, Say.Bad(Say.Plain(3), new MarkCorner(), Across).Kind);
        Assert.Equal(RowFaultKind.MarkNothing, Say.Bad(Say.Plain(4), Say.Stitches(1), Say.Times(Amount.Of(2), new MarkCorner(), Say.Stitches(1)), Across).Kind);
    }

    [Fact]
    public void The_middle_of_what_is_worked_into_a_corner_is_the_next()
    {
        Assert.Equal("5", Corners(Say.Good(At(3, 4), ToCorner(), In(3), Across).Tops));
        Assert.Equal("4", Corners(Say.Good(At(3, 4), ToCorner(), In(1), Across).Tops));
        var group = new Group([Say.Stitches(2), new Chains(1), Say.Stitches(2)], Target.Corner);
        Assert.Equal("6", Corners(Say.Good(At(3, 4), ToCorner(), group, Across).Tops));
        Assert.Equal(RowFaultKind.CornerWithoutMiddle, Say.Bad(At(3, 4), ToCorner(), In(2), Across).Kind);
        var chosen = new Group([Say.Stitches(1), new MarkCorner(), Say.Stitches(1)], Target.Corner);
        Assert.Equal("4", Corners(Say.Good(At(3, 4), ToCorner(), chosen, Across).Tops));
    }

    [Fact]
    public void What_is_worked_in_passing_carries_corners_up()
    {
        Assert.Equal("4 7", Corners(Say.Good(At(3, 2, 4), Across).Tops));
        Assert.Equal("4 7", Corners(Say.Good(At(3, 2, 4), Say.In(Aim.EachOfKind)).Tops));
        Assert.Equal("3", Corners(Say.Good(At(3, 4), ToCorner(1), _together, Across).Tops));
        Assert.Equal(RowFaultKind.CornerTogether, Say.Bad(At(3, 4), ToCorner(2), _together, Across).Kind);
        Assert.Equal(RowFaultKind.CornerTogether, Say.Bad(At(3, 4), Work.Decrease(StitchBook.Double, 4)).Kind);
    }

    [Fact]
    public void A_corner_passed_over_is_a_fault_unless_the_markers_come_out()
    {
        Assert.Equal(RowFaultKind.CornerPassed, Say.Bad(At(3, 4), Say.Stitches(2), new Skip(2), Across).Kind);
        Assert.Equal(RowFaultKind.CornerPassed, Say.Bad(Say.Of((Say.Dc, 1), (_corner, 1), (Say.Space(1), 1)), Say.In(Aim.NextOfKind, Say.AnySpace)).Kind);
        Assert.Equal("", Corners(Say.Good(At(3, 4), Say.Stitches(2), new Skip(2), Across, new RemoveCorners()).Tops));
        Assert.Equal("", Corners(Say.Good(At(3, 4), new SlipOver(4), Across).Tops));
        Assert.Equal("", Corners(Say.Good(At(3, 4), Say.Stitches(2), new Leave(-1)).Tops));
    }

    [Fact]
    public void The_way_to_a_corner_is_said()
    {
        Assert.Equal(3, Say.Bad(At(3, 4), In(3), Across).There);
        Assert.Equal(RowFaultKind.CornerTooNear, Say.Bad(At(3, 4), ToCorner(4), In(3), Across).Kind);
        Assert.Equal(RowFaultKind.NoCorner, Say.Bad(At(3, 4), ToCorner(), In(3), ToCorner()).Kind);
        Assert.Equal(RowFaultKind.CornerAgain, Say.Bad(At(3, 4), ToCorner(), In(1), Say.In(Aim.Same), Across).Kind);
    }

    [Fact]
    public void A_repeat_goes_from_corner_to_corner()
    {
        Word[] body = [ToCorner(), In(3)];
        Assert.Equal("5 10 18", Corners(Say.Good(At(3, 2, 5, 1), new Repeat(body, Amount.Of(3)), Across).Tops));
        Assert.Equal("5 10 18", Corners(Say.Good(At(3, 2, 5, 1), new Repeat(body, Amount.Across), Across).Tops));
        Assert.Equal(RowFaultKind.NoCorner, Say.Bad(At(3, 2), new Repeat(body, Amount.Of(2)), Across).Kind);
        Assert.Equal(RowFaultKind.NoCorner, Say.Bad(Say.Plain(4), new Repeat(body, Amount.Across), Across).Kind);
        Assert.Equal("5", Corners(Say.Good(At(4, 2), new Repeat([Say.Stitches(2)], Amount.ToCorner(0)), Across).Tops));
    }

    [Fact]
    public void A_row_of_many_corners_costs_what_its_words_cost()
    {
        var unit = Say.Of((Say.Dc, 9), (_corner, 1));
        var builder = new PlaceSequenceBuilder();
        builder.AddTimes(unit, 100_000);
        var row = Say.Good(builder.Build(), new Repeat([ToCorner(), In(3)], Amount.Across), new Chains(1));
        Assert.Equal(1_200_000, row.Stitches);
        Assert.True(row.Tops.Segments.Count < 5);
    }

    [Fact]
    public void Read_from_the_other_end_a_row_has_its_corners_there()
    {
        PlaceSequence[] belows = [At(3, 2, 5, 1), At(4, 4, 4), At(2, 6)];
        Word[][] rows =
        [
            [new Repeat([ToCorner(), In(3)], Amount.Across), Across],
            [Say.Stitches(1), ToCorner(), In(1), Across],
            [Say.Stitches(2), new MarkCorner(), Across],
            [Say.In(Aim.First, 3), new MarkCorner(), Across],
            [ToCorner(1), _together, Across],
        ];
        foreach (var below in belows)
        {
            foreach (var words in rows)
            {
                var row = Say.Good(below, words);
                var back = Say.Good(below.Reversed(), [.. WordReversal.Reverse(row.Words)]);
                Assert.Equal(Corners(row.Tops.Reversed()), Corners(back.Tops));
            }
        }
    }
}
