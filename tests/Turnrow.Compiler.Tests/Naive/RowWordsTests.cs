using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What each word of a row takes and makes, on rows small enough to count on one's fingers.</summary>
public sealed class RowWordsTests
{
    [Fact]
    public void Words_take_and_make_what_they_say()
    {
        Assert.Equal("dc dc dc dc dc", OnSix(new Inc("dc", 1), new Each("dc", 1), new Dec("dc", 1), new Dec("dc", 1), 5));
        Assert.Equal("sc sc dc dc dc hdc hdc", OnSix(new Each("sc", 2), new Into(3, "dc", Target.Next), new Skip(1), new Across("hdc"), 7));
        Assert.Equal("dc dc dc3tog", OnSix(new Skip(1), new Until("dc", 3), new Together("dc", 3), null, 3));
    }

    [Fact]
    public void Chains_of_a_stitch_beside_others_are_a_fault()
    {
        var leaf = new NaiveStitch("leaf", "(2 dc, ch 1) in one place", 1, ["dc", "dc", Place.Space]);
        Assert.Contains("beside other chains", Pieces.Fault(new BeginWith(6), Pieces.Row(new Each("dc", 1), new Special(leaf, 1), new Space(2), new Skip(1), new Across("dc"))), StringComparison.Ordinal);
        Assert.Equal(8, Pieces.Worked(new BeginWith(6), Pieces.Row(new Each("dc", 1), new Special(leaf, 2), new Each("dc", 1), new Space(2), new Each("dc", 2))).Rows[0].Stitches);
    }

    [Fact]
    public void A_row_one_short_or_one_over_is_a_fault()
    {
        Assert.Contains("1 places are left", Pieces.Fault(new BeginWith(6), Pieces.Row(new Each("dc", 5))), StringComparison.Ordinal);
        Assert.Contains("no place", Pieces.Fault(new BeginWith(6), Pieces.Row(new Each("dc", 7))), StringComparison.Ordinal);
    }

    [Fact]
    public void Repeats_come_out_or_are_a_fault()
    {
        Word[] fan = [new Each("dc", 4), new Inc("dc", 1)];
        Assert.Equal(18, Pieces.Worked(new BeginWith(15), Pieces.Row(Repeat.Across(fan))).Rows[0].Stitches);
        Assert.Equal(20, Pieces.Worked(new BeginWith(17), Pieces.Row(Repeat.Until(2, fan), new Each("dc", 2))).Rows[0].Stitches);
        Assert.NotEmpty(Pieces.Fault(new BeginWith(16), Pieces.Row(Repeat.Across(fan))));
        Assert.NotEmpty(Pieces.Fault(new BeginWith(18), Pieces.Row(Repeat.Times(3, fan), new Each("dc", 2))));
    }

    [Fact]
    public void Spaces_are_counted_by_themselves_and_worked_into_by_name()
    {
        var mesh = Pieces.Row(new Each("dc", 1), Repeat.Across(new Space(1), new Skip(1), new Each("dc", 1)));
        var piece = Pieces.Worked(
            new BeginWith(7),
            mesh,
            Pieces.Row(new Each("dc", 1), Repeat.Until(1, new Into(2, "dc", Target.NextSpace)), new Each("dc", 1)));
        var filled = Pieces.Worked(new BeginWith(7), mesh, Pieces.Row(new InEach("dc", EachOf.StitchAndSpace)));
        Assert.Equal("dc sp dc sp dc sp dc", Pieces.Kinds(piece.Rows[0]));
        Assert.Equal(4, piece.Rows[0].Stitches);
        Assert.Equal(8, piece.Rows[1].Stitches);
        Assert.Equal(7, filled.Rows[1].Stitches);
    }

    [Fact]
    public void A_space_is_no_stitch_to_work_across() =>
        Assert.Contains("space", Pieces.Fault(
            new BeginWith(3),
            Pieces.Row(new Each("dc", 1), new Space(1), new Skip(1), new Each("dc", 1)),
            Pieces.Row(new Across("dc"))), StringComparison.Ordinal);

    [Fact]
    public void A_group_goes_into_one_place()
    {
        var fan = new Group([new Into(2, "dc", Target.Next), new Space(2), new Into(2, "dc", Target.Next)], Target.Next);
        Assert.Equal("dc dc dc sp dc dc dc", Pieces.Kinds(Pieces.Worked(
            new BeginWith(3), Pieces.Row(new Each("dc", 1), fan, new Each("dc", 1))).Rows[0]));
    }

    [Fact]
    public void Evenly_spreads_all_it_says()
    {
        Assert.Equal(28, Pieces.Worked(new BeginWith(20), Pieces.Row(new Evenly("dc", true, 8))).Rows[0].Stitches);
        Assert.Equal(12, Pieces.Worked(new BeginWith(20), Pieces.Row(new Evenly("dc", false, 8))).Rows[0].Stitches);
        Assert.NotEmpty(Pieces.Fault(new BeginWith(15), Pieces.Row(new Evenly("dc", false, 8))));
    }

    [Fact]
    public void What_is_spread_has_the_longer_gaps_in_the_middle()
    {
        var holes = new SpreadOver("dc", [new Space(1), new Skip(1)], 1, 4, 2);
        Assert.Equal("dc dc sp dc sp dc dc sp dc sp dc dc", Pieces.Kinds(Pieces.Worked(new BeginWith(12), Pieces.Row(holes)).Rows[0]));
        var halves = new SpreadOver("dc", [new Space(1), new Skip(1)], 1, 2, null);
        Assert.Equal("dc sp dc dc dc sp dc dc", Pieces.Kinds(Pieces.Worked(new BeginWith(8), Pieces.Row(halves), Pieces.Row(new EachByKind("dc", 1))).Rows[0]));
        Assert.NotEmpty(Pieces.Fault(new BeginWith(7), Pieces.Row(holes)));
    }

    [Fact]
    public void Going_to_a_kind_passes_over_other_stitches()
    {
        var mixed = Pieces.Row(new Each("sc", 3), new Across("dc"));
        var named = new RowLine([new Each("sc", 1), new Into(1, "sc", Target.NextOf("sc")), new Across("sc")]);
        var result = Pieces.Worked(new BeginWith(6), mixed, named);
        // The second row comes back from the left: one, then over two dc to the first sc, then the last two.
        Assert.Equal(4, result.Rows[1].Stitches);
    }

    /// <summary>The words on six places (the last may be null), with the number of stitches they make.</summary>
    private static string OnSix(Word first, Word second, Word third, Word? fourth, int stitches)
    {
        var words = fourth is null ? new[] { first, second, third } : [first, second, third, fourth];
        var row = Pieces.Worked(new BeginWith(6), Pieces.Row(new Across("dc")), Pieces.Row(words)).Rows[1];
        Assert.Equal(stitches, row.Stitches);
        return string.Join(' ', Frame.InWorkingOrder(row.Places, row.Side).Select(place => place.Kind)).Replace("dc2tog", "dc", StringComparison.Ordinal);
    }
}
