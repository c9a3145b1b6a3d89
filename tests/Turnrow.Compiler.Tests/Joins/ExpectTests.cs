using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

public sealed class ExpectTests
{
    [Theory]
    [InlineData("expect back rows are 6")]
    [InlineData("expect back rows are back rows")]
    [InlineData("expect back stitches + 2 are 22 (26)")]
    [InlineData("expect back rows are 2 x 3")]
    [InlineData("expect back stitches are 20 (24)")]
    [InlineData("expect 20 dc stitches measure 10 cm")]
    [InlineData("expect 21 dc stitches measure 10 cm, within 1 cm")]
    [InlineData("expect 12 dc rows measure 12 cm")]
    [InlineData("expect back rows are at least 6")]
    [InlineData("expect back rows are at most 6")]
    [InlineData("expect back rows are at least 5")]
    [InlineData("expect back stitches are at most 20 (30)")]
    [InlineData("expect 20 dc stitches measure at least 10 cm")]
    [InlineData("expect 20 dc stitches measure at most 10.5 cm")]
    public void What_holds_says_nothing(string line) => Lines(line).Clean();

    [Theory]
    [InlineData("expect back rows are 7", "expect-equal")]
    [InlineData("expect back rows are at least 7", "expect-equal")]
    [InlineData("expect back rows are at most 5", "expect-equal")]
    [InlineData("expect back stitches are at most 20 (23)", "expect-equal")]
    [InlineData("expect 19 dc stitches measure at least 10 cm", "expect-measure")]
    [InlineData("expect 21 dc stitches measure at most 10 cm", "expect-measure")]
    [InlineData("expect back stitches are 20", "expect-equal")]
    [InlineData("expect 23 dc stitches measure 10 cm, within 1 cm", "expect-measure")]
    [InlineData("expect 20 hdc stitches measure 10 cm", "gauge-missing")]
    [InlineData("expect 20 stitches measure 10 cm", "gauge-unclear")]
    [InlineData("expect front rows are 7", "unknown-piece")]
    public void What_does_not_hold_is_told_once(string line, string name) => Assert.Equal([name], Lines(line).Found);

    private static Compiled Lines(string line) => Compiled.Of("piece back\nbegin with 20 (24) stitches\nrow 1: dc across\nstraight 5 rows\n" + line);
}
