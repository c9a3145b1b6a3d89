using Xunit;

namespace Turnrow.Compiler.Tests.Colours;

/// <summary>Slips with yarns and with stitches of one's own: what is said of them names the slip and its mend.</summary>
public sealed class YarnSlipTests
{
    private const string Yarns = "yarn navy\nyarn A\n";

    [Theory]
    [InlineData("row: dc 3, A dc 3, dc across", "`A` is a yarn", "with A")]
    [InlineData("row: A, dc across", "`A` is a yarn", "with A")]
    [InlineData("row: dc 3 with A, dc across", "should be a comma", "`sc 3, with A, sc across`")]
    [InlineData("with A B", "a name is one word", "A-B")]
    [InlineData("stripes are navy 1 row, A 2 rows, until 4 rows", "stripes go on", "take it out")]
    [InlineData("row: dc 2, (2 dc, with A, 2 dc) in next, dc across", "another yarn can't be taken up", "with A, dc in same")]
    public void In_a_piece(string line, string message, string help) => Says($"{Yarns}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n{line}\n", message, help);

    [Theory]
    [InlineData("yarn dark blue \"wool\"", "a name is one word", "dark-blue")]
    [InlineData("stitch two is (2 dc, with A, 2 dc) in one place", "takes up no yarn", "with cream")]
    [InlineData("stitch lilac is (3 dc together, ch 1, 3 dc together) in one place", "can't be part of a stitch", "a line of its own")]
    [InlineData("stitch suz is sc in next, (dc, ch 1) 2 times in next, skip 1", "can't be part of a stitch", "((dc, ch 1) 2 times) in next")]
    [InlineData("stitch berry is 5 dc together in one place\nstitch pattern dots from picture in dc, over multiple of 2\n  key \"x\" is navy\n  key \"o\" is berry\n  | x o |", "`berry` is a stitch", "(berry)")]
    [InlineData("stitch pattern dots from picture in dc, over multiple of 2\n  key \"x\" is navy\n  key \"o\" is (A, dc)\n  | x o |", "`A` is a yarn", "with A")]
    public void At_the_top(string line, string message, string help) => Says($"{Yarns}{line}\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\n", message, help);

    [Theory]
    [InlineData("row 2: (V-st in next, skip 2) until 2 remain, dc 2\nrow 3: dc 2, V-st in first V-st, leave the rest", "means the first place", "in next")]
    [InlineData("row 2: (V-st in next, skip 2) until 2 remain, dc 2\nrow 3: V-st in first V-st, leave the rest", "another place than the one that it names", "in next …")]
    [InlineData("row 2: crossed 9, dc 2", "counts as a stitch, but `crossed 9` begins further in", "turn dc, next row: ch 3 does not count")]
    [InlineData("row 2: (V-st in next, skip 2) until 2 remain, dc 2\nrow 3: dc 2, V-st in each V-st", "left over at the end of row 3", "they are the rest of the last V-st")]
    public void With_special_stitches(string rows, string message, string help) => Says($"piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n{rows}\n", message, help);

    private static void Says(string text, string message, string help)
    {
        var found = Compiled.Of(text).Compilation.Diagnostics;
        Assert.Contains(found, d => d.Message.Contains(message, StringComparison.Ordinal) && d.Help!.Contains(help, StringComparison.Ordinal));
    }
}
