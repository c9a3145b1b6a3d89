using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>A mirrored piece is as sure of itself as its original, and turned by the same rules.</summary>
public sealed class MirroredDoubtTests
{
    private static PieceBuilder MirrorOf(PieceBuilder original, int stitches = 20)
    {
        var mirrored = Made.Begun(stitches);
        new Mirror(false).Work(original.Finish(), mirrored);
        return mirrored;
    }

    [Fact]
    public void It_is_turned_by_the_rules_that_the_original_says()
    {
        var original = Made.Begun(20, 1);
        original.SetRule(StitchBook.Double, TurnRule.Of(2, false), false);
        Assert.Equal(2, MirrorOf(original.Plain(2)).Rows[^1].Work!.Opening.Chains);
    }

    [Fact]
    public void A_rule_for_one_row_is_over_after_it()
    {
        var original = Made.Begun(20, 1);
        original.SetRule(StitchBook.Double, TurnRule.Of(2, false), true);
        Assert.Equal([2, 3], MirrorOf(original.Plain(2)).Rows.Skip(1).Select(row => row.Work!.Opening.Chains));
    }

    [Fact]
    public void A_row_at_fault_is_not_known_in_the_mirror_and_the_number_of_rows_is()
    {
        var original = Made.Begun(20, 1);
        Assert.NotNull(original.WorkRow(new WordsPlan([Say.Stitches(19)]), default, 0));
        var mirrored = MirrorOf(original);
        Assert.Null(mirrored.Rows[^1].Work);
        Assert.False(mirrored.RowsInDoubt);
    }

    [Fact]
    public void A_row_at_fault_is_not_known_even_where_its_words_would_come_out_from_the_other_edge()
    {
        var original = Made.Begun(20, 1);
        Assert.NotNull(original.WorkRow(new WordsPlan([Say.Stitches(Amount.Until(30)), Say.Stitches(20)]), default, 0));
        Assert.Null(MirrorOf(original).Rows[^1].Work);
    }

    [Fact]
    public void A_count_in_doubt_is_in_doubt_and_one_believed_again_is_believed_again()
    {
        var original = Made.Begun(20, 1);
        original.Doubt(false);
        original.Plain(1);
        Assert.Null(MirrorOf(original).Ahead);
        original.Trust(24);
        Assert.Equal(24, MirrorOf(original.Plain(1)).Last());
        Assert.False(MirrorOf(original).RowsInDoubt);
    }

    [Fact]
    public void Rows_in_doubt_are_in_doubt()
    {
        var count = Made.Begun(20, 1);
        count.Doubt(true);
        Assert.True(MirrorOf(count).RowsInDoubt);
        var rows = Made.Begun(20, 1);
        rows.DoubtRows();
        Assert.True(MirrorOf(rows).RowsInDoubt);
        Assert.Equal(20, MirrorOf(rows).Ahead!.Count);
    }

    [Fact]
    public void What_is_added_one_row_apart_is_so_from_the_other_edge()
    {
        var original = Made.Begun(20, 2);
        original.AddChainsApart(6, default);
        var mirrored = MirrorOf(original.Plain(2));
        Assert.Equal([26, 32], mirrored.Rows.Skip(2).Select(row => row.Work!.Stitches));
        Assert.All(mirrored.Rows.Skip(2), row => Assert.True(row.Start is { Adds: true, Count: 6 }));
    }

    [Fact]
    public void It_is_fastened_off_as_the_original_is()
    {
        var original = Made.Begun(20, 1);
        Assert.False(MirrorOf(original).IsFastenedOff);
        original.FastenOff();
        Assert.True(MirrorOf(original).IsFastenedOff);
    }
}
