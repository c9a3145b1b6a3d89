using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Rows;

public sealed class ShapedPlanTests
{
    [Fact]
    public void A_plan_turned_over_has_words_of_its_own()
    {
        var plan = new ShapedPlan(StitchBook.Double, default, new EdgeChange(1, 0));
        Assert.IsType<Work>(plan.WordsFrom(Hand.Right)[0]);
        var turned = plan with { Right = plan.Left, Left = plan.Right };
        Assert.Equal(plan.WordsFrom(Hand.Left), turned.WordsFrom(Hand.Right));
        Assert.NotEqual(plan.WordsFrom(Hand.Right), turned.WordsFrom(Hand.Right));
    }

    [Fact]
    public void Its_words_are_the_plain_stitches_and_the_changes_from_the_edge_where_the_row_starts()
    {
        var plan = new ShapedPlan(StitchBook.Double, new EdgeChange(2, 1), new EdgeChange(-3, 2));
        Assert.Equal(
            [Work.Plain(StitchBook.Double, Amount.Of(1)), Work.Increase(StitchBook.Double, 2), Work.Plain(StitchBook.Double, Amount.Until(8)), Work.Decrease(StitchBook.Double, 3), Work.Plain(StitchBook.Double, Amount.Of(2))],
            plan.WordsFrom(Hand.Right));
        Assert.Equal(
            [Work.Plain(StitchBook.Double, Amount.Of(2)), Work.Decrease(StitchBook.Double, 3), Work.Plain(StitchBook.Double, Amount.Until(3)), Work.Increase(StitchBook.Double, 2), Work.Plain(StitchBook.Double, Amount.Of(1))],
            plan.WordsFrom(Hand.Left));
    }

    [Fact]
    public void At_the_very_edge_no_plain_stitch_stands_before_the_change()
    {
        var plan = new ShapedPlan(StitchBook.Double, new EdgeChange(-1, 0), new EdgeChange(1, 0));
        Assert.Equal([Work.Decrease(StitchBook.Double, 1), Work.Plain(StitchBook.Double, Amount.Until(1)), Work.Increase(StitchBook.Double, 1)], plan.WordsFrom(Hand.Right));
    }

    [Fact]
    public void Without_shaping_it_is_one_word_whatever_stands_in_for_the_edge()
    {
        Assert.Equal([Work.Plain(StitchBook.Double, Amount.Across)], ShapedPlan.Plain(StitchBook.Double).WordsFrom(Hand.Right));
        Assert.Equal([Work.Plain(StitchBook.Double, Amount.Across)], new ShapedPlan(StitchBook.Double, new EdgeChange(0, 3), new EdgeChange(0, 2)).WordsFrom(Hand.Left));
    }

    [Fact]
    public void It_is_plain_if_neither_edge_is_shaped()
    {
        Assert.True(ShapedPlan.Plain(StitchBook.Double).IsPlain);
        Assert.False(new ShapedPlan(StitchBook.Double, new EdgeChange(1, 0), default).IsPlain);
        Assert.False(new ShapedPlan(StitchBook.Double, default, new EdgeChange(1, 0)).IsPlain);
    }

    [Fact]
    public void Its_words_are_made_once_for_each_edge()
    {
        var plan = new ShapedPlan(StitchBook.Double, new EdgeChange(1, 0), new EdgeChange(-1, 0));
        Assert.Same(plan.WordsFrom(Hand.Right), plan.WordsFrom(Hand.Right));
        Assert.Same(plan.WordsFrom(Hand.Left), plan.WordsFrom(Hand.Left));
        var even = new ShapedPlan(StitchBook.Double, new EdgeChange(1, 0), new EdgeChange(1, 0));
        Assert.Same(even.WordsFrom(Hand.Right), even.WordsFrom(Hand.Left));
    }

    [Fact]
    public void Two_plans_are_equal_if_stitch_and_both_edges_are()
    {
        ShapedPlan Plan(Stitch stitch, int right, int left) => new(stitch, new EdgeChange(right, 0), new EdgeChange(left, 0));
        Assert.Equal(Plan(StitchBook.Double, 1, 2), Plan(StitchBook.Double, 1, 2));
        Assert.Equal(Plan(StitchBook.Double, 1, 2).GetHashCode(), Plan(StitchBook.Double, 1, 2).GetHashCode());
        Assert.NotEqual(Plan(StitchBook.Double, 1, 2), Plan(StitchBook.Single, 1, 2));
        Assert.NotEqual(Plan(StitchBook.Double, 1, 2), Plan(StitchBook.Double, 2, 2));
        Assert.NotEqual(Plan(StitchBook.Double, 1, 2), Plan(StitchBook.Double, 1, 1));
        Assert.False(Plan(StitchBook.Double, 1, 2).Equals((ShapedPlan?)null));
        Assert.Equal(new EdgeChange(2, 0), Plan(StitchBook.Double, 1, 2).At(Hand.Left));
    }

    [Fact]
    public void Two_rows_given_by_words_are_equal_if_the_words_are()
    {
        WordsPlan Plan(int dc) => new([new Chains(1), new Skip(1), Work.Plain(StitchBook.Double, Amount.Of(dc))]);
        Assert.Equal(Plan(3), Plan(3));
        Assert.Equal(Plan(3).GetHashCode(), Plan(3).GetHashCode());
        Assert.NotEqual(Plan(3), Plan(4));
        Assert.NotEqual(Plan(3), new WordsPlan([.. Plan(3).Words, new Chains(1)]));
        Assert.False(Plan(3).Equals((WordsPlan?)null));
    }
}
