using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>Chains at an end of a special stitch: beside other chains they would be one space, half of it in the stitch.</summary>
public sealed class ChainsMeetTests
{
    private const string Stitches = "stitch leaf is (2 dc, ch 1) in one place\nstitch dot is (ch 1, 2 dc) in one place\nstitch bow is (ch 1, 2 dc, ch 2) in one place\nyarn navy\n";

    [Theory]
    [InlineData("dc 3, leaf in next, ch 2, skip 2, dc across", "ch 2")]
    [InlineData("dc 3, leaf in next, skip 2, dot in next, dc across", "dot")]
    [InlineData("dc 3, bow 3, dc across", "bow 3")]
    [InlineData("dc 3, (dc, ch 2, skip 2, dot) 3 times, dc across", "dot")]
    [InlineData("dc 3, (ch 1, skip 1, leaf in next) 3 times, dc across", "(ch 1, skip 1, leaf) 3 times")]
    [InlineData("dc 3, (ch 1, skip 1, leaf in next) 1 times, (ch 1, dc in next, skip 1) 2 times, dc across", "(ch 1, dc, skip 1) 2 times")]
    [InlineData("dc 3, leaf in next, (ch 2, dc) in next, dc across", "(ch 2, dc) in next")]
    public void Chains_that_would_be_one_space_are_refused_where_they_meet(string words, string at)
    {
        var found = Assert.Single(Compiled.Of($"{Stitches}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: {words}\n").Compilation.Diagnostics, d => d.Kind.Name == "chains-meet");
        Assert.Equal($"`{at}` brings chains of a stitch and other chains together, and to a maker they are one space in every size", found.Message);
    }

    [Theory]
    [InlineData("dc 3, leaf in next, leaf in next, dc across")]
    [InlineData("dc 3, leaf in next, dc, ch 2, skip 2, dc across")]
    [InlineData("dc 3, leaf in next, picot, ch 2, skip 2, dc across")]
    [InlineData("dc 3, leaf in next, with navy, ch 2, skip 2, dc across")]
    [InlineData("dc 3, ch 1, ch 1, skip 2, leaf in next, dc across")]
    [InlineData("dc 3, bow, dc, bow, dc across")]
    [InlineData("dc 3, (ch 1, skip 1, leaf in next) 0 times, (leaf, dc) 2 times, dc across")]
    public void What_a_stitch_a_picot_or_another_yarn_parts_are_two(string words) =>
        Assert.DoesNotContain("chains-meet", Compiled.Of($"{Stitches}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: {words}\n").Found);
}
