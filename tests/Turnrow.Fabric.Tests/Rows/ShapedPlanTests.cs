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
}
