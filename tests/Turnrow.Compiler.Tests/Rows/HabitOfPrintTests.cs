using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>What a designer types from the habit of reading patterns is answered with what to write.</summary>
public sealed class HabitOfPrintTests
{
    [Theory]
    [InlineData("round 1: 6 sc", "stitch-number", "`6 sc in ring` where the piece begins with a ring")]
    [InlineData("round 1: sc 6", "row-length", "`6 sc in ring`")]
    [InlineData("round 1: ch 3, 11 dc in ring", "turning-chain", "take them out")]
    [InlineData("round 1: 6 sc in ring\nround 2: sc around, join", "line-unfinished", "rounds are joined by themselves")]
    public void In_a_ring(string lines, string kind, string help) => Answers("piece a\nbegin with ring\n" + lines, kind, help);

    [Theory]
    [InlineData("row 2: sc 2 tog, sc across", "unexpected-word", "`sc2tog`")]
    [InlineData("row 2: sc 5, 3 dc cluster in next, sc across", "words-too-many", "put a comma between two things to do")]
    [InlineData("row 2: raised-front tr 3, dc across", "unknown-stitch", "in front of a stitch may stand one of `back-loop`")]
    [InlineData("stitch half is (3 dc) in one place\nrow 2: sc until 3 remain, half in last", "place-in-row", "`skip 2`")]
    [InlineData("row 2: sc across = 20 dc", "row-count", "claim 20 sc")]
    public void In_a_row(string lines, string kind, string help)
    {
        var (before, row) = lines.StartsWith("stitch", StringComparison.Ordinal) ? (lines[..(lines.IndexOf('\n', StringComparison.Ordinal) + 1)], lines[(lines.IndexOf('\n', StringComparison.Ordinal) + 1)..]) : (string.Empty, lines);
        Answers($"{before}piece a\nbegin with 20 stitches\nrow 1 RS: sc across\n{row}", kind, help);
    }

    [Fact]
    public void Where_no_chain_stands_for_a_stitch_nobody_asks_what_it_counts() =>
        Compiled.Of("piece a\nbegin with 20 stitches\nrow 1 RS: sc across\nrow 2: puff across\n").Clean();

    [Fact]
    public void What_is_so_in_every_size_is_said_of_none_by_itself()
    {
        var found = Compiled.Of("piece a\nbegin with 20 stitches\nrow 1 RS: sc 19\n").Compilation.Diagnostics.Single();
        Assert.EndsWith("of a in every size", found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(found.Ledger, static line => line.StartsWith("left over", StringComparison.Ordinal));
    }

    private static void Answers(string text, string kind, string help)
    {
        var found = Compiled.Of(text).Compilation.Diagnostics.Single();
        Assert.Equal(kind, found.Kind.Name);
        Assert.Contains(help, found.Help, StringComparison.Ordinal);
    }
}
