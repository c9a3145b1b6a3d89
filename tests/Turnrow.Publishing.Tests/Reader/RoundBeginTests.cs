using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Rounds that go to a space or to a kind of stitch first begin there, and read back with what they went past at their end.</summary>
public sealed class RoundBeginTests
{
    [Theory]
    [InlineData("(sc, ch 5) 12 times in ring", "(5 sc in next ch-5 sp, sl st in next sc) around = 60 sc, 12 sl st")]
    [InlineData("(dc, ch 2) 6 times in ring", "(4 dc in next sp, skip 1) around = 24")]
    [InlineData("(dc, ch 2) 6 times in ring", "(4 dc in next sp, ch 1, dc in next dc, ch 1) around = 30, 12 sp")]
    [InlineData("(dc, ch 2) 6 times in ring", "((sc, 3 dc, sc) in next ch-2 sp, ch 2, sc in next dc, ch 2) around")]
    [InlineData("(3 dc, ch 2) 4 times in ring", "((2 dc, ch 2, 2 dc) in next sp, dc 3) around = 28, 4 sp")]
    [InlineData("(3 dc, ch 2) 4 times in ring", "((2 dc, ch 2, 2 dc) in next sp, skip 1, dc in next dc) around = 20, 4 sp")]
    [InlineData("(3 dc, ch 2) 4 times in ring", "5 dc in next sp, dc 3, (4 dc in next sp, dc 3) 3 times = 29")]
    [InlineData("(dc, sc) 6 times in ring", "(2 sc in next sc, dc in next dc) around = 18")]
    [InlineData("(V-st, ch 2) 6 times in ring", "(5 dc in next V-st, sc in next ch-2 sp) around = 30 dc, 6 sc")]
    [InlineData("(3 dc, ch 2, mark corner) 4 times in ring", "(dc to corner, (2 dc, ch 2, 2 dc) in corner) around = 28")]
    public void They_read_back(string first, string second)
    {
        foreach (var rule in new[] { "turn dc: ch 3 counts\nturn sc: ch 1 does not count\n", "turn dc: ch 2 does not count\nturn sc: ch 1 does not count\n" })
        {
            var pattern = Compilation.Of(new SourceText("mat.turnrow", $"notation 1\npattern \"Mat\"\nterms US\nhook 4 mm\n{rule}piece mat\n  begin with ring\n  round 1: {first}\n  round 2: {second}\n  fasten off\n")).Pattern;
            Assert.Equal(0, pattern.Errors);
            Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.US)));
            Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.UK)));
        }
    }
}
