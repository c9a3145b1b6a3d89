using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>What is worked in one place: repeats, picots, and the designer's stitches within others.</summary>
public sealed class InOnePlaceTests
{
    [Theory]
    [InlineData("row 2: dc 5, ((dc, ch 1) 4 times, dc) in next, dc 5 = 15 dc, 4 sp")]
    [InlineData("row 2: dc 5, (dc, (ch 1, dc) 4 times) in next, dc 5 = 15 dc, 4 sp")]
    [InlineData("row 2: dc 5, (((dc, ch 1) 2 times, dc, ch 3) 3 times, dc) in next, dc 5 = 20 dc, 9 sp")]
    [InlineData("row 2: dc 5, ((dc, picot) 3 times, ch 1, dc) in next, dc 5 = 14 dc, 1 sp")]
    [InlineData("row 2: dc 5, ((ch 1, dc, ch 1) 2 times, dc) in next, dc 5 = 13 dc, 3 sp")]
    [InlineData("row 2: ((dc, ch 1) 2 times, dc) in each st = 33 dc, 22 sp")]
    public void A_repeat_there_is_each_of_its_times(string row) =>
        Compiled.Of($"piece back\nbegin with 11 stitches\nrow 1 RS: dc across\n{row}\nfasten off\n").Clean();

    [Theory]
    [InlineData("((sc, ch 3) 3 times, sc) in ring = 4 sc, 3 sp")]
    [InlineData("((sc, ch 3) 3 times, sc, ch 1) 2 times in ring = 8 sc, 8 sp")]
    public void A_ring_takes_them_as_well(string words) => Compiled.Of($"piece back\nbegin with ring\nround 1: {words}\nfasten off\n").Clean();

    [Theory]
    [InlineData("((dc, ch 1) across, dc) in next")]
    [InlineData("((dc, ch 1) 150 times, dc) in next")]
    [InlineData("(((dc, ch 1) 20 times, dc) 20 times, dc) in next")]
    public void What_has_no_number_or_too_many_is_told(string words) =>
        Assert.Equal(["not-in-one-place"], Compiled.Of($"piece back\nbegin with 3 stitches\nrow 1 RS: dc across\nrow 2: dc, {words}, dc\n").Found);

    [Theory]
    [InlineData("((dc, ch 1) 4 times, dc) in one place", 5, 4)]
    [InlineData("(3 dc, picot, 3 dc) in one place", 6, 0)]
    [InlineData("(pair, ch 2, pair) in one place", 4, 3)]
    [InlineData("(pair, pair) in one place", 4, 2)]
    [InlineData("(2 pair, picot of 5) in one place", 4, 2)]
    [InlineData("(cluster, ch 2, bobble of 4) in one place", 2, 1)]
    [InlineData("(tooth of 3, ch 1, tooth of 2) in one place", 5, 1)]
    [InlineData("((ch 1, dc, ch 1) 2 times) in one place", 2, 3)]
    public void A_stitch_is_made_of_others(string made, int stitches, int spaces) =>
        Compiled.Of($"{Small}stitch whole is {made}\npiece back\nbegin with 3 stitches\nrow 1 RS: sc across\nrow 2: sc, whole in next, sc = {stitches + 2} sts, {spaces} sp\n").Clean();

    [Fact]
    public void Place_by_place_too() =>
        Compiled.Of($"{Small}stitch fence is (pair in next, skip 1) 2 times, crossed, tooth of 3 in next\npiece back\nbegin with 9 stitches\nrow 1 RS: sc across\nrow 2: sc, fence, sc = 11 sts, 2 sp\n").Clean();

    [Fact]
    public void A_number_is_handed_on() =>
        Compiled.Of($"{Small}stitch jaws of n is (tooth of n, ch 1, tooth of 2) in one place\npiece back\nbegin with 4 stitches\nrow 1 RS: sc across\nrow 2: sc, jaws of 3 in next, jaws of 5 in next, sc = 14 sts, 2 sp\n").Clean();

    [Theory]
    [InlineData("stitch a-1 is (a-1, ch 1) in one place", "stitch-inside")]
    [InlineData("stitch shell is (shell, ch 1, shell) in one place", "stitch-inside")]
    [InlineData("stitch a-1 \"AA\" is (dc, AA) in one place", "stitch-inside")]
    [InlineData("stitch a-1 is (b-1, ch 1) in one place\nstitch b-1 is (c-1, dc) in one place\nstitch c-1 is (a-1, dc) in one place", "stitch-inside")]
    [InlineData("stitch a-1 is (b-1, ch 1) in one place\nstitch b-1 is (dc, ch 1) in one place", "defined-below")]
    [InlineData("stitch a-1 is (crossed, ch 1) in one place", "stitch-inside")]
    [InlineData("stitch a-1 is (picot, 3 dc) in one place", "stitch-inside")]
    [InlineData("stitch a-1 is (dc, picot) together", "stitch-unclear")]
    [InlineData("stitch a-1 is (dc, picot in next) in one place", "stitch-here")]
    [InlineData("stitch a-1 is ((dc, ch 1) across) in one place", "stitch-unclear")]
    [InlineData("stitch a-1 is ((dc, ch 1) 99 times) in one place", "stitch-unclear")]
    [InlineData("stitch tooth of n is (n dc) in one place\nstitch a-1 is (tooth, ch 1) in one place", "stitch-size")]
    [InlineData("stitch a-1 is (cluster of 50, ch 1) in one place", "stitch-size")]
    [InlineData("stitch a-1 is (dc of 5, ch 1) in one place", "stitch-size")]
    public void What_can_not_be_a_part_is_told_once(string lines, string name)
    {
        var found = Compiled.Of(lines + "\n").Found.ToList();
        Assert.Equal(name, found[0]);
        Assert.All(found, other => Assert.True(other == name || other == "defined-below"));
    }

    [Theory]
    [InlineData("((dc, ch 1) 4 times, dc) in one place", true)]
    [InlineData("(3 dc, picot, 3 dc) in one place", true)]
    [InlineData("(dc, picot) in one place", true)]
    [InlineData("(3 dc, picot) in one place", false)]
    [InlineData("(pair, ch 2, pair) in one place", true)]
    [InlineData("(pair, ch 2, dc) in one place", false)]
    public void What_is_the_same_from_both_ends_has_no_mirror_image(string made, bool same)
    {
        var stitch = Assert.IsType<Work>(Compiled.Of($"{Small}stitch whole is {made}\npiece back\nbegin with 3 stitches\nrow 1 RS: sc across\nrow 2: sc, whole in next, sc\n").Row(2).Work!.Words[1]).Stitch;
        Assert.Equal(same, stitch.Mirrored == stitch);
        Assert.Equal(stitch.Tops.Reversed().Count, stitch.Mirrored.Tops.Count);
    }

    [Fact]
    public void A_knot_at_the_end_stays_on_its_own_stitch()
    {
        var stitch = Assert.IsType<Work>(Compiled.Of("stitch whole is (3 dc, picot) in one place\npiece back\nbegin with 3 stitches\nrow 1 RS: sc across\nrow 2: sc, whole in next, sc\n").Row(2).Work!.Words[1]).Stitch;
        Assert.Equal([1, 1, 2], stitch.Mirrored.Form!.Parts.Select(static part => part.Count));
        Assert.Equal([false, true, false], stitch.Mirrored.Form!.Parts.Select(static part => part.IsKnot));
    }

    [Fact]
    public void A_spur_within_takes_yarn()
    {
        var counts = new Dictionary<Stitch, long>();
        var row = Compiled.Of("stitch tip is ch 4, turn back, sc 3\nstitch bud is (2 dc, tip, 2 dc) in one place\npiece back\nbegin with 12 stitches\nround 1: sc around\nround 2: (bud in next, skip 1, (dc, tip, dc) in next) around\n").Row(2);
        YarnTally.AddOnTop(row.Work!, "navy", "navy", 1, counts);
        Assert.Equal(24L, counts[StitchBook.Single]);
    }

    private const string Small = "stitch pair is (dc, ch 1, dc) in one place\nstitch tooth of n is (n tr) in one place\n";
}
