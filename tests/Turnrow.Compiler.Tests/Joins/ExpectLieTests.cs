using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>
/// How work lies, by its shape. The numbers are geometry: round about n corners the way is 2 n tan(pi / n) longer a round, round a circle 2 pi, round half of
/// one pi. With 14 dc and 8 rows to 10 cm a round of dc is 1.75 stitches high, with 20 sc and 22 rows one of sc 0.91.
/// </summary>
public sealed class ExpectLieTests
{
    private const string Tube = "begin with 40 stitches\nround 1: sc around\nstraight 5 rounds\n";
    private const string Oval = "begin with both sides of 10 stitches\nround 1: (3 sc in corner, sc to corner) around\nrounds 2 to 3: (sc to corner, 3 sc in corner) around, sc around\n";
    private const string Square = "begin with ring\nround 1: (3 dc, ch 2, mark corner) 4 times in ring\nrounds 2 to 3: (dc to corner, (2 dc, ch 2, 2 dc) in corner) 4 times, dc around\n";
    private const string Triangle = "begin with ring\nround 1: (4 dc, ch 2, mark corner) 3 times in ring\nrounds 2 to 3: (dc to corner, (3 dc, ch 2, 3 dc) in corner) 3 times, dc around\n";
    private const string Half = "begin with ring\nrow 1: 6 dc in ring\nshape 3 rows: inc 6 evenly every row\n";

    [Theory]
    // A tube grows by nothing.
    [InlineData(Tube, "expect top cups")]
    [InlineData(Tube, "expect top cups in rounds 2 to 3")]
    [InlineData(Tube, "expect top cups in rounds 1 to 1")]
    [InlineData("begin with 6 stitches\nround 1: sc around\nround 2: sc inc 6 evenly\n", "expect top lies flat")]
    [InlineData("begin with 40 stitches\nround 1: sc around\nshape 4 rounds: inc 6 evenly every round\n", "expect top lies flat")]
    // A square takes 8 h / w = 14, where a circle takes 11.
    [InlineData(Square, "expect top lies flat")]
    [InlineData(Square, "expect top lies flat in rounds 2 to 3")]
    // An oval grows at its two ends alone.
    [InlineData(Oval, "expect top cups")]
    [InlineData("begin with both sides of 10 stitches\nround 1: (3 sc in corner, sc to corner) around\nshape 2 rounds: inc 6 evenly every round\n", "expect top lies flat")]
    // A triangle takes 10.4 h / w = 18.2.
    [InlineData(Triangle, "expect top lies flat")]
    // A half circle takes pi h / w = 5.5.
    [InlineData(Half, "expect top lies flat")]
    [InlineData("begin with ring\nrow 1: 12 dc in ring\nshape 3 rows: inc 12 evenly every row\n", "expect top ruffles")]
    // Rows with open ends are flat as they are.
    [InlineData("begin with 10 stitches\nrow 1: dc across\nshape 6 rows: inc 1 at both edges every row\n", "expect top lies flat")]
    [InlineData("begin with 10 stitches\nrow 1: dc across\nstraight 6 rows\n", "expect top lies flat")]
    [InlineData("begin with 20 stitches\nrow 1: dc across\nshape 2 rows: inc 20 evenly every row\n", "expect top ruffles")]
    public void What_lies_so_says_nothing(string rows, string line) => Lines(rows, line).Clean();

    [Theory]
    [InlineData(Tube, "expect top lies flat", "top cups: it grows by 0 stitches a round, and a circle lies flat with 5.7")]
    [InlineData(Oval, "expect top lies flat", "top cups: it grows by 4 stitches a round, and an oval lies flat with 5.7")]
    [InlineData(Square, "expect top cups", "top lies flat: it grows by 14.7 stitches a round, and a square lies flat with 14")]
    [InlineData(Triangle, "expect top ruffles", "top lies flat: it grows by 16 stitches a round, and a triangle lies flat with 18.2")]
    [InlineData(Half, "expect top cups", "top lies flat: it grows by 6 stitches a row, and a half circle lies flat with 5.5")]
    [InlineData("begin with 20 stitches\nrow 1: dc across\nshape 2 rows: inc 20 evenly every row\n", "expect top lies flat", "top ruffles: it grows by 20 stitches a row, and a whole turn lies flat with 11")]
    public void What_does_not_is_told_by_its_shape(string rows, string line, string message)
    {
        var made = Lines(rows, line);
        Assert.Equal(["expect-lie"], made.Found);
        Assert.Equal(message, made.Compilation.Diagnostics[0].Message);
    }

    [Theory]
    [InlineData("expect top ruffles in rounds 8 to 9", "top has no round 8: it has 6 here")]
    [InlineData("expect top cups in rounds 5 to 8", "top has no round 7: it has 6 here")]
    [InlineData("expect top cups in rounds 6 to 2", "rounds 6 to 2 run backwards: it has 6 here")]
    public void Rounds_that_are_not_there_are_an_error(string line, string message)
    {
        var made = Lines(Tube, line);
        Assert.Equal(["expect-rounds"], made.Found);
        Assert.Equal(message, made.Compilation.Diagnostics[0].Message);
    }

    private static Compiled Lines(string rows, string line) =>
        Compiled.Whole("terms US\ngauge dc: 14 stitches and 8 rows to 10 cm\ngauge sc: 20 stitches and 22 rows to 10 cm\npiece top\n" + rows + line);
}
