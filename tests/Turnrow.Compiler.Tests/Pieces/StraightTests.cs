using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>straight</c> in all its forms, after one row of dc at 10 rows to 10 cm.</summary>
public sealed class StraightTests
{
    [Theory]
    [InlineData("straight 12 rows", "13")]
    [InlineData("straight 0 (3) rows", "1 (4)")]
    [InlineData("straight to 20 cm", "20")]
    [InlineData("straight to 20 (20.5) cm", "20 (21)")]
    [InlineData("straight for 6 cm", "7")]
    [InlineData("straight to 20.4 cm, even rows", "20")]
    [InlineData("straight to 21 cm, even rows", "22")]
    [InlineData("straight to 20 cm, odd rows", "21")]
    [InlineData("straight to 20 cm, end RS", "21")]
    [InlineData("straight to 20 cm, end WS", "20")]
    [InlineData("straight for 6.4 cm, even rows", "7")]
    [InlineData("straight for 6 cm, odd rows", "8")]
    [InlineData("straight for 6 cm, end RS", "7")]
    [InlineData("straight for 6 cm, end WS", "8")]
    [InlineData("straight 6 rows, even rows, end RS", "7")]
    [InlineData("straight 4 rows\nmark next row armhole\nstraight 2 rows\nstraight 6 rows from armhole", "11")]
    [InlineData("straight 4 rows\nmark next row armhole\nstraight to 12 cm from armhole", "17")]
    [InlineData("straight 4 rows\nmark next row armhole\nstraight 1 rows\nstraight to 12 cm from armhole, odd rows", "18")]
    [InlineData("row 2: sc across\nstraight to 4 cm", "7")]
    public void It_makes_rows_until_what_was_said_is_there(string lines, string rows)
    {
        var compiled = Compiled.Piece(lines).Clean();
        Assert.Equal(rows, compiled.Rows());
        Assert.Equal("20", compiled.Last());
    }

    [Theory]
    [InlineData("straight to 0.2 cm\nstraight to 0 cm", "length-passed")]
    [InlineData("straight 4 rows\nmark next row slit\nstraight 4 rows\nstraight 2 rows from slit", "rows-passed")]
    [InlineData("straight 4 rows from nowhere", "mark-unknown")]
    [InlineData("straight 5 rows, even rows", "rows-fix")]
    [InlineData("straight 2000000000 rows", "number-large")]
    [InlineData("straight 30000 rows", "too-many-rows")]
    [InlineData("straight to 20", "unit-missing")]
    [InlineData("row 2: hdc across\nstraight to 20 cm", "gauge-missing")]
    [InlineData("row 2: sc 4, dc across\nstraight 2 rows", "not-plain")]
    [InlineData("row 2: skip 1, dc across\nstraight 2 rows", "not-plain")]
    public void What_it_can_not_do_is_told(string lines, string name) =>
        Assert.Contains(name, Compiled.Piece("turn hdc: ch 2 counts\n" + lines).Found);

    [Fact]
    public void It_needs_a_row_to_go_on_from()
    {
        Assert.Equal(["no-row-yet"], Compiled.Of("piece back\nbegin with 20 stitches\nstraight 4 rows").Found);
        Assert.Equal(["nothing-begun"], Compiled.Of("piece back\nstraight 4 rows").Found);
    }

    [Fact]
    public void It_goes_over_whatever_the_last_row_stood_on() => Assert.Equal(
        "26", Compiled.Piece("add 6 at right edge\nrow 2: dc across\nadd 0 at left edge\nstraight 4 rows").Clean().Last());
}
