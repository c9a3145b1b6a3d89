using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>Chains that are worked back along.</summary>
public sealed class SpurTests
{
    private const string Tip = "stitch tip \"LT\" is ch 6, turn back, sc, hdc, dc 3\n";

    [Theory]
    [InlineData("begin with 12 stitches\nround 1: sc around\nround 2: (sc 3, tip) around = 12\nround 3: sc around = 12")]
    [InlineData("begin with 12 stitches\nrow 1 RS: sc across\nrow 2: sc, tip, sc across = 12\nrow 3: sc across = 12")]
    [InlineData("begin with ring\nround 1: 6 sc in ring\nround 2: (inc, tip) around = 12")]
    public void It_stands_on_the_stitch_before_it_and_is_not_counted(string lines) =>
        Compiled.Of($"{Tip}piece back\n{lines}\nfasten off\n").Clean();

    [Theory]
    [InlineData("ch 6, turn back, sc 5")]
    [InlineData("ch 6, turn back, dc 3")]
    [InlineData("ch 6, turn back, sc, skip 1, 2 dc in next, sc 2")]
    [InlineData("ch 2, turn back, sc")]
    public void What_comes_out_at_the_foot_is_a_spur(string made) =>
        Compiled.Of($"stitch tip is {made}\npiece back\nbegin with 12 stitches\nround 1: sc around\nround 2: (sc 3, tip) around = 12\nfasten off\n").Clean();

    [Theory]
    [InlineData("ch 6, turn back, sc 4", "stitch-spur")]
    [InlineData("ch 6, turn back, sc 6", "stitch-spur")]
    [InlineData("ch 3, turn back, dc", "stitch-spur")]
    [InlineData("sc 6, turn back, sc 5", "stitch-spur")]
    [InlineData("ch 6, turn back, sc 2, ch 1, sc 3", "stitch-spur")]
    [InlineData("ch 6, turn back, sc across", "stitch-unclear")]
    public void What_does_not_come_out_is_told_once(string made, string name) =>
        Assert.Equal([name], Compiled.Of($"stitch tip is {made}\n").Found);

    [Fact]
    public void A_number_makes_it_longer() =>
        Compiled.Of("stitch ray of n is ch n + 1, turn back, sc n\npiece back\nbegin with 12 stitches\nround 1: sc around\nround 2: (sc 3, ray of 4, sc 3, ray of 9) around = 12\nfasten off\n").Clean();

    [Fact]
    public void Its_stitches_take_yarn_and_its_chain_does_not()
    {
        var counts = new Dictionary<Stitch, long>();
        var row = Compiled.Of($"{Tip}piece back\nbegin with 12 stitches\nround 1: sc around\nround 2: (sc 3, tip) around\n").Row(2);
        YarnTally.AddOnTop(row.Work!, "navy", "navy", 1, counts);
        Assert.Equal((4L, 4L, 12L), (counts[StitchBook.Single], counts[StitchBook.HalfDouble], counts[StitchBook.Double]));
    }
}
