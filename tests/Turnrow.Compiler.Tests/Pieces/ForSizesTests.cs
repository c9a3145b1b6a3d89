using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary><c>for L: …</c>: done in the sizes named and not there in the others. The pieces have the sizes S and L and begin with 20 dc.</summary>
public sealed class ForSizesTests
{
    [Theory]
    [InlineData("for L: straight 2 rows", "1 (3)", "20")]
    [InlineData("for S: straight to 10 cm", "10 (1)", "20")]
    [InlineData("for S to L: straight 2 rows", "3", "20")]
    [InlineData("for S, L: straight 2 rows", "3", "20")]
    [InlineData("for L: row 2: dec, dc across = 19", "1 (2)", "20 (19)")]
    [InlineData("for L: row 2: dec, dc across = 20 (19)", "1 (2)", "20 (19)")]
    [InlineData("for L: rows 2 to 4: dc across", "1 (4)", "20")]
    [InlineData("for S: repeat row 1, 2 more times", "3 (1)", "20")]
    [InlineData("for L: shape 4 rows: inc 1 at both edges every 2 rows = 24", "1 (5)", "20 (24)")]
    [InlineData("for L: shape 4 rows evenly to 24, at both edges", "1 (5)", "20 (24)")]
    [InlineData("for L: leave 3 at both edges = 14\nrow 2: dc across = 20 (14)", "2", "20 (14)")]
    [InlineData("for S: add 3 at right edge = 23\nrow 2: dc across = 23 (20)", "2", "23 (20)")]
    [InlineData("for L: turn dc: ch 2 does not count\nrow 2: dc across", "2", "20")]
    public void A_line_is_done_in_its_sizes_alone(string lines, string rows, string last)
    {
        var compiled = Compiled.Piece(lines).Clean();
        Assert.Equal((rows, last), (compiled.Rows(), compiled.Last()));
    }

    [Theory]
    [InlineData("for L: straight 2 rows\nrow 2 (4): dc across", "2 (4)")]
    [InlineData("for L: straight 1 rows\nrow 2 (3) WS: dc across", "")]
    [InlineData("for L: straight 2 rows\nmark next row up\nstraight 4 rows from up", "5 (7)")]
    [InlineData("mark next row up\nfor L: straight 3 rows\nstraight 4 rows from up", "5")]
    [InlineData("for S: mark next row up\nfor L: straight 2 rows\nfor L: mark next row up\nstraight 4 rows from up", "5 (7)")]
    public void Numbers_sides_and_marks_are_each_sizes_own(string lines, string rows)
    {
        var compiled = Compiled.Piece(lines);
        if (rows.Length == 0) Assert.Equal("row-side", Assert.Single(compiled.Found));
        else Assert.Equal(rows, compiled.Clean().Rows());
    }

    [Theory]
    [InlineData("for L: straight width - 30 rows", "")]
    [InlineData("for S: straight 40 / (40 - width) rows", "")]
    [InlineData("for S: straight 30 - width rows", "")]
    [InlineData("for S: straight width - 30 rows", "too-small")]
    public void What_a_name_is_in_the_other_sizes_is_not_looked_at(string line, string found)
    {
        var compiled = Compiled.Of($"count width is 20 (40)\n\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\n{line}");
        Assert.Equal(found, string.Join(", ", compiled.Found));
    }

    [Theory]
    [InlineData("for XL: straight 2 rows", "size-unknown")]
    [InlineData("for L to S: straight 2 rows", "sizes-backwards")]
    [InlineData("for S, S to L: straight 2 rows", "size-twice")]
    [InlineData("for L: straight 2 rows = 21", "row-count")]
    [InlineData("for L: row 3: dc across", "row-number")]
    [InlineData("for L: row 2: dc 19", "row-length")]
    [InlineData("for L: leave 20 at right edge\nstraight 1 rows", "edge-short")]
    [InlineData("for L: mark next row up\nstraight 2 rows from up", "mark-unknown")]
    [InlineData("mark next row up\nfor L: mark next row up", "defined-twice")]
    [InlineData("for L: from here left edge is neck\nshape 2 rows: inc 1 at neck every row", "edge-in-sizes")]
    [InlineData("for L: row: dc, (ch 1, skip 1, dc) until 1 remains, dc\nstraight 2 rows", "not-plain")]
    [InlineData("for L: straight 2 (3, 4) rows", "sizes-list")]
    public void What_is_wrong_is_said_of_its_sizes(string lines, string found) =>
        Assert.Equal(found, string.Join(", ", Compiled.Piece(lines).Found));

    [Fact]
    public void Sizes_that_go_on_with_other_stitches_are_worked_in_theirs()
    {
        var compiled = Compiled.Piece("for L: row: sc across\nstraight 2 rows\nstraight for 5 cm").Clean();
        Assert.Equal("8 (14)", compiled.Rows());
        Assert.Equal("sc", compiled.Row(14, size: 1).Work!.Tops.Last.Stitch!.Id);
    }

    [Fact]
    public void A_mirror_has_the_same_lines_in_the_same_sizes()
    {
        var compiled = Compiled.Piece("for L: leave 3 at left edge\nstraight 2 rows\nfor S: straight 2 rows\n\npiece front is back mirrored\nseam back right edge with front left edge").Clean();
        Assert.Equal((compiled.Rows(), compiled.Last()), (compiled.Rows("front"), compiled.Last("front")));
    }

    [Fact]
    public void A_pattern_without_sizes_has_none_to_name() =>
        Assert.Equal(["size-unknown"], Compiled.Whole("terms US\nturn dc: ch 3 counts\n\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\nfor L: straight 2 rows").Found);
}
