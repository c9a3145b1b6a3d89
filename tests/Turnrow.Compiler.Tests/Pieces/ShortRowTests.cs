using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Stitches left for later, in words, at an edge and in a shaping; counted by hand.</summary>
public sealed class ShortRowTests
{
    [Fact]
    public void A_round_goes_over_what_rows_of_a_tube_left_for_later()
    {
        var compiled = Compiled.Of("""
            piece sock
            begin with 20 stitches
            round 1: sc around
            row RS: sc 10, leave the rest for later
            row WS: sc 8, leave 2 for later
            row RS: sc to turn, sc, leave the rest for later
            row WS: sc across
            round: sc to turn, sc around = 20
            straight 1 round
            """);
        Assert.Equal(20, compiled.Piece("sock", 0).Rows[5].Work!.Stitches);
        Assert.DoesNotContain(compiled.Found, f => f != "turn-unsaid");
    }

    [Theory]
    [InlineData("row RS: sc 10, leave the rest for later")]
    [InlineData("row RS: sc 10, leave the rest for later\nrow WS: sc 8, leave 2 for later")]
    [InlineData("row RS: sc 10, leave the rest for later\nrow WS: sc 8, leave 2 for later\nrow RS: sc across")]
    public void A_round_begins_where_rounds_begin(string rows)
    {
        var compiled = Compiled.Of($"piece sock\nbegin with 20 stitches\nround 1: sc around\n{rows}\nround: sc in each st around").Compilation;
        var told = Assert.Single(compiled.Diagnostics, d => d.Kind.Name == "round-at-turn");
        Assert.EndsWith("round: sc in each st around", compiled.Tree.Source.Text[..told.Span.End], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("row: dc until 4 remain, leave 4 for later\nrow: dc across\nrow: dc 12, leave 4 for later", "leave 8 for later", "wait since")]
    [InlineData("row: dc until 4 remain, leave 4 for later\nrow: dc across\nrow: dc 10, leave 4 for later", "leave 10 for later", "leave them too")]
    [InlineData("row: dc 12, leave 4 for later", "leave 8 for later", "leave them too")]
    [InlineData("row: dc 12, leave 4", "leave 8", "leave them too")]
    public void Where_too_few_are_left_the_mend_leaves_all(string rows, string mended, string help)
    {
        var found = Assert.Single(Compiled.Piece("row: dc across\n" + rows + "\n").Compilation.Diagnostics, d => d.Kind.Name == "row-length");
        Assert.Contains(help, found.Help, StringComparison.Ordinal);
        Assert.Contains($"`{mended}`", found.Help, StringComparison.Ordinal);
        var mend = Assert.Single(found.Mends);
        Assert.Equal(mended, mend.NewText);
        var text = Compiled.Header + "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: dc across\n" + rows + "\n";
        Assert.DoesNotContain("row-length", Compiled.Whole(text[..mend.Span.Start] + mend.NewText + text[mend.Span.End..]).Found);
    }

    [Theory]
    [InlineData("row: dc 15, leave 8 for later", "`leave 5 for later`")]
    [InlineData("row: dc across, leave 8 for later", "take it out")]
    [InlineData("row: dc 12, leave 4 for later, leave 4 for later", "in one `leave`")]
    public void Where_too_many_are_left_the_help_says_how_many_can_be(string row, string help) =>
        Assert.Contains(Compiled.Piece("row: dc across\n" + row + "\n").Compilation.Diagnostics, d => d.Help?.Contains(help, StringComparison.Ordinal) == true);

    [Theory]
    [InlineData("row: dc across\nrow: dc until 8 remain, leave 8 for later = 12\nrow: dc across = 12\nrow: dc across = 20", "20")]
    [InlineData("row: dc until 8 remain, leave 8 for later\nrow: dc across\nrow: dc until 3 remain, leave 3 for later = 17\nrow: dc across = 17\nrow: dc across", "20")]
    [InlineData("row: dc 4 (6), leave the rest for later = 4 (6)\nrow: dc across\nrow: dc across", "20")]
    [InlineData("row: dc until 3 (5) remain, leave 3 (5) for later\nrow: dc across = 17 (15)\nrow: dc until 4 (6) remain, leave 4 (6) for later = 16 (14)\nrow: dc across\nrow: dc across", "20")]
    [InlineData("row: dc until 3 remain, leave 3 for later\nrow: dc across\nrow: dc until 3 remain, leave 3 for later = 17\nrow: dc across\nrow: dc inc, dc across = 21", "21")]
    [InlineData("leave 4 for later at right edge = 16\nstraight 1 row = 16\nstraight 2 rows", "20")]
    [InlineData("leave 4 for later at left edge = 20\nstraight 1 row = 20\nstraight 1 row = 16\nstraight 2 rows", "20")]
    [InlineData("leave 2 for later at left edge\nleave 1 (2) for later at left edge\nstraight 2 rows = 17 (16)\nstraight 2 rows", "20")]
    [InlineData("left edge is neck\nshape 6 rows: leave 4 for later at neck every 2 rows = 8\nstraight 2 rows", "20")]
    [InlineData("shape 4 rows: leave 2 (3) for later at both edges every 2 rows = 12 (8)\nstraight 2 rows", "20")]
    [InlineData("shape 9 rows: after 1 rows, leave 3 for later at right edge every 4 rows 2 times\nstraight 2 rows", "20")]
    [InlineData("shape 4 rows: leave 4 for later at left edge every 2 rows; inc 1 at right edge every 2 rows = 14\nstraight 2 rows = 22", "22")]
    [InlineData("shape 2 rows: leave 5 for later at left edge\nstraight 2 rows", "20")]
    [InlineData("shape 4 rows: leave 4 for later at left edge every 2 rows\nstraight 1 row\nleave 3 at left edge\nstraight 1 row = 17", "17")]
    [InlineData("row: dc across\nrow: dc until 6 remain, leave 6 for later\nrow: dc across\nrepeat rows 3 to 4, 1 more time = 14\nrow: dc across", "20")]
    [InlineData("row: dc across\nleave 3 for later at left edge\nrow: dc across = 17\nrow: dc across\nrepeat rows 3 to 4, 2 more times = 11\nrow: dc across", "20")]
    public void Rows_have_the_counts_that_they_should(string lines, string last) => Assert.Equal(last, Compiled.Piece(lines).Clean().Last());

    [Theory]
    [InlineData("row: dc until 6 remain, leave 6 for later\nrow: dc across", "stitches-waiting")]
    [InlineData("leave 6 for later at left edge\nstraight 1 row", "stitches-waiting")]
    [InlineData("shape 6 rows: leave 2 for later at right edge every row\nstraight 2 rows", "short-row-every")]
    [InlineData("shape 6 rows: leave 2 for later at right edge by turns every 1 and 2 rows\nstraight 2 rows", "short-row-every")]
    [InlineData("shape 6 rows: leave 2 for later at left edge every 2 rows; dec 1 at left edge every 2 rows\nstraight 2 rows", "short-row-edge")]
    [InlineData("row: dc until 6 remain, leave 6 for later\nrow: slip over 2, dc across\nrow: dc across", "short-row-edge")]
    [InlineData("leave 20 for later at right edge\nstraight 4 rows", "row-length")]
    [InlineData("row: dc until 6 remain, leave 8 for later\nstraight 2 rows", "row-length")]
    [InlineData("row: dc across, leave 2 for later\nstraight 2 rows", "row-length")]
    [InlineData("row: dc 3, leave 2 for later, dc across\nstraight 2 rows", "place-in-row")]
    [InlineData("leave 3 for later at armhole\nstraight 4 rows", "edge-unknown")]
    [InlineData("shape 4 rows: leave 4 for later at left edge every 2 rows\nstraight 2 rows\nstraight to 12 cm", "edge-heights")]
    [InlineData("shape 4 rows: leave 4 for later at left edge every 2 rows\nstraight 2 rows\nstraight to 12 cm at neck", "edge-unknown")]
    public void What_can_not_be_is_told_once(string lines, params string[] names) => Assert.Equal(names, Compiled.Piece(lines).Found);

    [Fact]
    public void The_first_row_over_a_foundation_turns_nowhere() => Assert.Equal(
        ["short-row-edge"],
        Compiled.Of("piece back\nbegin with 20 stitches\nrow 1 RS: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: dc across").Found);

    [Fact]
    public void A_row_from_a_part_may_turn()
    {
        var found = Compiled.Of("""
            piece back
            begin with 20 stitches
            row 1 RS: dc across
            piece half from back: 12 stitches at right edge
            row 1: dc until 4 remain, leave 4 for later = 8
            row 2: dc across = 8
            row 3: dc across = 12
            """).Clean();
        Assert.Equal([8, 8, 12], found.Counts("half"));
    }

    [Fact]
    public void Lengths_go_by_the_edge()
    {
        // 10 rows to 10 cm. Of 9 rows 4 do not reach the left edge: 5 cm there, 9 cm at the right edge.
        const string Wedge = "shape 4 rows: leave 4 for later at left edge every 2 rows\nstraight 4 rows\n";
        Assert.Equal("16", Compiled.Piece(Wedge + "straight to 12 cm at left edge").Clean().Rows());
        Assert.Equal("12", Compiled.Piece(Wedge + "straight to 12 cm at right edge").Clean().Rows());
        Assert.Equal("15", Compiled.Piece(Wedge + "mark next row armhole\nstraight to 6 cm from armhole").Clean().Rows());
        Assert.Equal("12", Compiled.Piece(Wedge + "right edge is side\nshape to 12 cm at side: dec 1 at side every 3 rows").Clean().Rows());
    }

    [Fact]
    public void After_short_rows_at_both_edges_alike_a_length_need_not_name_one() =>
        Assert.Equal("16", Compiled.Piece("shape 4 rows: leave 2 for later at both edges every 2 rows\nstraight 2 rows\nstraight to 12 cm").Clean().Rows());

    [Fact]
    public void A_mirrored_piece_turns_in_the_row_beside_it_and_comes_to_the_same()
    {
        var pieces = Compiled.Of("""
            piece back
            begin with 20 stitches
            left edge is neck
            right edge is side
            row 1 RS: dc across
            shape 4 rows: leave 4 (6) for later at neck every 2 rows
            row: dc across
            straight 1 row
            piece front is back mirrored
            seam back side with front side
            seam back neck with front neck
            """).Clean();
        // The original goes to the left edge in rows 3 and 5, the mirror to the right edge in rows 2 and 4.
        Assert.Equal([20, 20, 16, 16, 12, 12, 20], pieces.Counts());
        Assert.Equal([20, 16, 16, 12, 12, 20, 20], pieces.Counts("front"));
        Assert.Equal((7, 3), (RowEnds(pieces.Piece("back", 0), Hand.Right), RowEnds(pieces.Piece("back", 0), Hand.Left)));
        Assert.Equal((3, 7), (RowEnds(pieces.Piece("front", 1), Hand.Right), RowEnds(pieces.Piece("front", 1), Hand.Left)));
    }

    [Fact]
    public void Turns_in_words_can_be_mirrored_only_turned_over()
    {
        const string Back = "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: dc until 6 remain, leave 6 for later\nrow: dc across\nrow: dc across\n";
        Assert.Contains("short-row-mirrored", Compiled.Of(Back + "piece front is back mirrored").Found);
        Assert.DoesNotContain("short-row-mirrored", Compiled.Of(Back + "piece front is back mirrored, turned over").Found);
    }

    [Fact]
    public void Seams_and_stitches_picked_up_go_by_the_row_ends_that_are_there()
    {
        var pieces = Compiled.Of("""
            piece back
            begin with 20 stitches
            both edges are side
            row 1 RS: dc across
            straight 9 rows
            piece front
            begin with 20 stitches
            both edges are side
            row 1 RS: dc across
            straight 3 rows
            shape 4 rows: leave 2 for later at both edges every 2 rows
            straight 6 rows
            expect front rows are back rows + 4
            seam back right side with front left side
            seam back left side, rows 3 to 10, with front right side, rows 3 to 14
            piece band picked up along front right side, last 7 rows: 2 sc in each row = 14
            """);
        Assert.Equal(["edge-twice"], pieces.Found.Where(name => name != "piece-unjoined"));
        Assert.Equal(10, pieces.Seam(0).Second.RowEnds);
        Assert.Equal(8, pieces.Seam(1).Second.RowEnds);
    }

    [Fact]
    public void A_broken_line_among_short_rows_leaves_what_follows_in_doubt_and_nothing_else_is_said() => Assert.Equal(
        ["unknown-stitch"],
        Compiled.Piece("row: dc until 6 remain, leave 6 for later\nrow: zz across\nrow: dc across\nstraight to 12 cm").Found);

    private static int RowEnds(Piece piece, Hand hand) => piece.At(hand).Stretches.Where(s => s.Kind == StretchKind.RowEnds).Sum(s => s.Count);
}
