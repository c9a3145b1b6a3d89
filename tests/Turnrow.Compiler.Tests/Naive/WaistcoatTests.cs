using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>The naive model gives every count of the waistcoat, so that it can be trusted as the other model's judge.</summary>
public sealed class WaistcoatTests
{
    private static readonly NaiveResult s_result = NaiveWorker.Work(Waistcoat.Pattern);

    public static TheoryData<int> Sizes => [0, 1, 2, 3, 4, 5, 6];

    [Fact]
    public void It_can_be_worked_in_every_size() => Assert.Empty(s_result.Faults);

    [Fact]
    public void Measures_become_the_nearest_allowed_counts()
    {
        int[] bust = [76, 86, 97, 107, 117, 127, 137];
        int[] shoulderTenths = [100, 105, 115, 120, 125, 130, 135];
        for (var size = 0; size < 7; size++)
        {
            Assert.Equal(Waistcoat.Hem[size], Nearest((bust[size] + 4) * 19, 20, 2, 1));
            Assert.Equal(Waistcoat.Shoulder[size], Nearest(shoulderTenths[size] * 19, 100, 1, 0));
            Assert.Equal(Waistcoat.ArmholeRows[size], Nearest(165 + 10 * size, 10, 2, 0));
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Back_has_its_hem_its_armhole_width_and_its_neck(int size)
    {
        int[] aboveArmholes = [69, 71, 77, 81, 85, 89, 91];
        int[] neck = [31, 31, 33, 35, 37, 39, 39];
        var back = s_result.Of("back", size);
        Assert.Equal(Waistcoat.Hem[size] + 2, back.FoundationChains);
        Assert.Equal(20 + Waistcoat.ArmholeRows[size], back.Rows.Count);
        Assert.All(back.Rows.Take(20), row => Assert.Equal(Waistcoat.Hem[size], row.Stitches));
        Assert.All(back.Rows.Skip(20), row => Assert.Equal(aboveArmholes[size], row.Stitches));
        Assert.Equal(neck[size], back.Rows[^1].Stitches - back.UsedPlaces.Count);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Fronts_widen_at_the_neck_add_at_the_armhole_and_mirror_each_other(int size)
    {
        int[] beforeTheChain = [34, 37, 39, 42, 43, 46, 47];
        int[] atTheEnd = [48, 54, 58, 64, 68, 74, 78];
        var armholeRows = Waistcoat.ArmholeRows[size];
        foreach (var name in new[] { "right-front", "left-front" })
        {
            var front = s_result.Of(name, size);
            Assert.Equal(armholeRows + 20, front.Rows.Count);
            Assert.Equal(Waistcoat.Shoulder[size], front.Rows[0].Stitches);
            Assert.Equal(beforeTheChain[size], front.Rows[armholeRows - 1].Stitches);
            Assert.Equal(beforeTheChain[size] + Waistcoat.Drop[size], front.Rows[armholeRows].Stitches);
            Assert.Equal(front.Rows[armholeRows].Stitches + 1, front.Rows[armholeRows + 1].Stitches);
            Assert.Equal(atTheEnd[size], front.Rows[^1].Stitches);
            Assert.Equal(Side.RS, front.Rows[0].Side);
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Yarn_goes_on_into_the_right_front_and_is_joined_anew_for_the_left(int size)
    {
        Assert.Equal(Hand.Right, s_result.Of("back", size).Rows[^1].End);
        Assert.Equal(YarnAt.GoesOn, s_result.Of("right-front", size).Yarn);
        Assert.Equal(YarnAt.JoinedAnew, s_result.Of("left-front", size).Yarn);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Armhole_chain_is_worked_on_at_the_right_and_a_length_of_its_own_at_the_left(int size)
    {
        var right = Assert.Single(s_result.Of("right-front", size).Edge(Hand.Right), s => s.Kind != StretchKind.RowEnd);
        var left = Assert.Single(s_result.Of("left-front", size).Edge(Hand.Left), s => s.Kind != StretchKind.RowEnd);
        var row = Waistcoat.ArmholeRows[size] + 1;
        Assert.Equal(new Stretch(StretchKind.AddedChain, row, "", Waistcoat.Drop[size], "armhole"), right);
        Assert.Equal(new Stretch(StretchKind.SeparateChain, row, "", Waistcoat.Drop[size], "armhole"), left);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Ties_are_picked_up_downwards_at_the_left_edge_and_upwards_at_the_right(int size)
    {
        var last = Waistcoat.ArmholeRows[size] + 20;
        Assert.Equal([last, last - 1, last - 2], s_result.Of("right-tie", size).PickedUpRows);
        Assert.Equal([last - 2, last - 1, last], s_result.Of("left-tie", size).PickedUpRows);
        foreach (var name in new[] { "right-tie", "left-tie" })
        {
            var tie = s_result.Of(name, size);
            Assert.Equal(Waistcoat.TieRows[size], tie.Rows.Count);
            Assert.All(tie.Rows, row => Assert.Equal(6, row.Stitches));
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Seams_have_the_same_rows_on_both_sides(int size)
    {
        var back = s_result.Of("back", size);
        Assert.Equal(17, back.RowEnds(Hand.Right, "side-seam").Skip(3).Count());
        Assert.Equal(17, s_result.Of("right-front", size).RowEnds(Hand.Right, "side-seam").SkipLast(3).Count());
        Assert.Equal(20, back.RowEnds(Hand.Left, "side-seam").Count);
        Assert.Equal(20, s_result.Of("left-front", size).RowEnds(Hand.Left, "side-seam").Count);
    }

    /// <summary>Tries every count: the nearest to numerator/denominator that is an offset over a step, the larger on a tie.</summary>
    private static int Nearest(int numerator, int denominator, int step, int offset)
    {
        var best = offset;
        for (var count = offset; count < 1000; count += step)
        {
            if (Math.Abs(count * denominator - numerator) <= Math.Abs(best * denominator - numerator))
                best = count;
        }
        return best;
    }
}
