using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.StitchPatterns;

/// <summary>Shaping in a stitch pattern: edges in plain stitches, whole repeats that join and leave.</summary>
public sealed class ShapedPatternTests
{
    private const string Top = "terms US\nuse \"stitch-library.turnrow\"\nturn dc: ch 3 counts\nturn hdc: ch 2 counts\n";

    [Theory]
    [InlineData("vees", 26, "dc")]
    [InlineData("wide-vees", 27, "dc")]
    [InlineData("shells", 25, "sc")]
    [InlineData("moss", 25, "sc")]
    [InlineData("mesh", 25, "dc")]
    [InlineData("squares", 25, "dc")]
    [InlineData("post-rib", 26, "dc")]
    [InlineData("waffle", 24, "dc")]
    [InlineData("basketweave", 26, "dc")]
    [InlineData("chevron", 49, "dc")]
    public void It_grows_and_shrinks_by_what_is_said(string name, int stitches, string edge)
    {
        var piece = Worked(name, stitches, $"straight 2 rows, in {name}\nshape 24 rows, edges in {edge}: inc 1 at both edges every 2 rows\nstraight 6 rows\nshape 24 rows: dec 1 at both edges every 3 rows");
        var rows = piece.Piece("back", 0).Rows;
        Assert.Equal(56, rows.Count);
        var widths = rows.Select(row => ((WordsPlan)row.Plan).Of!.Places).ToList();
        Assert.Equal((stitches, stitches + 24, stitches + 24, stitches + 8), (widths[1], widths[25], widths[31], widths[55]));
        for (var i = 1; i < rows.Count; i++) Assert.InRange(widths[i] - widths[i - 1], -2, 2);
    }

    [Fact]
    public void A_whole_repeat_joins_when_the_edge_is_wide_enough_and_leaves_when_it_is_used_up()
    {
        var rows = Worked("vees", 26, "straight 2 rows, in vees\nshape 12 rows, edges in dc: inc 1 at right edge every row\nshape 12 rows: dec 1 at right edge every row").Piece("back", 0).Rows;
        var repeats = rows.Skip(2).Select(row => ((WordsPlan)row.Plan).Of!.State.Repeats).ToList();
        Assert.Equal((11, 7), (repeats.Take(12).Max(), repeats[^1]));
        // The V of each repeat is a space.
        Assert.All(rows.Skip(2), row => Assert.Equal(((WordsPlan)row.Plan).Of!.State.Repeats, row.Work!.Spaces));
    }

    [Theory]
    [InlineData("shells", 6, 1, 4, "sc")]
    [InlineData("shells", 6, 1, 20, "sc")]
    [InlineData("vees", 3, 2, 6, "dc")]
    [InlineData("vees", 3, 2, 30, "dc")]
    [InlineData("mesh", 2, 1, 25, "dc")]
    [InlineData("chevron", 12, 1, 9, "dc")]
    [InlineData("basketweave", 6, 2, 12, "dc")]
    public void Each_row_between_edges_is_what_it_would_be_by_itself(string name, int multiple, int plus, int repeats, string edge)
    {
        var shaped = Worked(name, (multiple * repeats) + plus, $"straight 2 rows, in {name}\nshape 24 rows, edges in {edge}: inc 1 at both edges every 2 rows\nshape 12 rows: dec 1 at both edges every row");
        foreach (var row in shaped.Piece("back", 0).Rows.Skip(2))
        {
            var of = ((WordsPlan)row.Plan).Of!;
            var alone = Worked(name, (of.State.Repeats * multiple) + plus, $"straight 16 rows, in {name}").Piece("back", 0).Rows.Last(r => ((WordsPlan)r.Plan).Of!.Index == of.Index);
            var (first, last) = row.RightSide ? (of.State.Right, of.State.Left) : (of.State.Left, of.State.Right);
            var edges = row.Work!.Tops.Slice(0, first).Then(row.Work.Tops.Slice(row.Work.Tops.Count - last, last));
            Assert.Equal(first + last, edges.CountWhere(place => place.IsStitch));
            Assert.True(SamePlaceKinds.Are(row.Work.Tops.Slice(first, row.Work.Tops.Count - first - last), alone.Work!.Tops));
        }
    }

    // A row that says what goes into stitches and what into spaces stops before the edge, as any other does.
    [Fact]
    public void What_goes_into_stitches_and_spaces_stays_between_the_edges()
    {
        var made = Compiled.Whole("terms US\nstitch pattern net over multiple of 4 + 1\nrow 1: sc, (ch 3, skip 3, sc) across\nrow 2: sc in each st and 3 sc in each sp\npiece back\nbegin with 24 stitches\nrow: sc across\nstraight 4 rows, in net, edges in sc\nshape 4 rows: inc 1 at both edges every 2 rows\n").Clean();
        Assert.Equal([24, 9, 24, 9, 24, 9, 26, 11, 28], made.Counts());
    }

    [Fact]
    public void A_count_that_is_no_multiple_has_edges_at_both_sides()
    {
        var rows = Worked("shells", 30, "straight 5 rows, in shells, edges in sc\nstraight 2 rows").Piece("back", 0).Rows;
        Assert.All(rows, row => Assert.Equal((4, 2, 3), (((WordsPlan)row.Plan).Of!.State.Repeats, ((WordsPlan)row.Plan).Of!.State.Right, ((WordsPlan)row.Plan).Of!.State.Left)));
        Assert.Equal(7, rows.Count);
    }

    [Fact]
    public void In_every_size_and_mirrored()
    {
        var compiled = Compiled.Whole(
            Top + "sizes S, L\npiece left\nbegin with 26 (32) stitches\nstraight 2 rows, in vees\nshape 10 (12) rows, edges in dc: inc 1 at right edge every 2 rows\npiece right is left mirrored\nseam left left edge with right right edge").Clean();
        for (var size = 0; size < 2; size++) Assert.Equal(compiled.Counts("left", size), compiled.Counts("right", size));
    }

    [Theory]
    [InlineData("straight 3 rows, in vees", "straight 4 rows", "straight 4 rows")]
    [InlineData("straight 2 rows, in shells", "straight 3 rows, in shells", "straight 3 rows, in shells")]
    [InlineData("straight 3 rows, in slant", "straight 5 rows", "straight 5 rows")]
    [InlineData("straight 2 rows, in vees", "shape 12 rows, edges in dc: inc 1 at left edge every 2 rows", "shape 12 rows, edges in dc: inc 1 at right edge every 2 rows")]
    [InlineData("straight 2 rows, in vees\nshape 6 rows, edges in dc: inc 1 at left edge every row", "shape 6 rows: dec 1 at both edges every 2 rows", "shape 6 rows: dec 1 at both edges every 2 rows")]
    [InlineData("straight 5 rows, in slant, edges in sc", "shape 8 rows: inc 1 at left edge every 4 rows", "shape 8 rows: inc 1 at right edge every 4 rows")]
    public void A_mirrored_piece_goes_on_as_the_other_would(string first, string then, string thenMirrored)
    {
        const string Slant = "stitch pattern slant over multiple of 4 + 1\nrow 1: sc, (dc, ch 2, skip 2, sc) across\nrow 2: sc, (2 sc in next sp, sc 2) across\n";
        var stitches = first.Contains("shells", StringComparison.Ordinal) ? 31 : 29;
        var text = $"{Top}{Slant}piece short\nbegin with {stitches} stitches\nrow 1 RS: sc across\nrow 2: sc across\n{first}\npiece long\nbegin with {stitches} stitches\nrow 1 RS: sc across\nrow 2: sc across\n{first}\n{then}\n"
            + $"piece on is short mirrored\n{thenMirrored}\npiece whole is long mirrored\n";
        var compiled = Compiled.Whole(text);
        Assert.All(compiled.Found, static name => Assert.Equal("piece-unjoined", name));
        var (on, whole) = (compiled.Piece("on", 0).Rows, compiled.Piece("whole", 0).Rows);
        Assert.Equal(whole.Count, on.Count);
        for (var i = 0; i < on.Count; i++)
        {
            Assert.NotNull(on[i].Work);
            Assert.Equal(whole[i].RightSide, on[i].RightSide);
            Assert.True(SamePlaceKinds.Are(whole[i].Work!.Tops, on[i].Work!.Tops), $"row {i + 1}");
        }
    }

    [Fact]
    public void A_slope_is_solved_as_in_plain_rows()
    {
        var piece = Worked("vees", 26, "straight 2 rows, in vees\nshape 20 rows, edges in dc: evenly to 38, at both edges".Replace("dc: evenly", "dc evenly", StringComparison.Ordinal));
        Assert.Equal(38, ((WordsPlan)piece.Row(22).Plan).Of!.Places);
    }

    [Theory]
    [InlineData("straight 2 rows, in shells\nshape 8 rows: inc 1 at both edges every row", "what stands beside the whole repeats of shells is not said")]
    [InlineData("row 1: sc across\nshape 8 rows, edges in sc: inc 1 at both edges every row", "this line has edges beside a stitch pattern, and the last row is of none")]
    [InlineData("straight 2 rows, in shells\nshape 8 rows, edges in sc: leave 2 at both edges every row", "beside shells the edges grow and shrink by single stitches, and this schedule leaves or adds several at once")]
    [InlineData("straight 2 rows, in shells\nshape 13 rows, edges in sc: dec 1 at both edges every row", "row 8 of back can't be shaped in shells")]
    public void What_does_not_come_out_is_refused(string lines, string message)
    {
        var found = Compiled.Whole(Top + $"piece back\nbegin with 25 stitches\n{lines}").Compilation.Diagnostics;
        Assert.StartsWith(message, Assert.Single(found, d => d.Kind.Name == "pattern-shape").Message);
    }

    // The width of a piece goes with what is left and added at its edges, chains added a row apart too.
    [Theory]
    [InlineData("add 6 at both edges", 27, "39 39 39 39")]
    [InlineData("add 6 at both edges, one row apart", 27, "33 39 39 39")]
    [InlineData("leave 4 at both edges", 27, "19 19 19 19")]
    [InlineData("leave 4 at right edge\nadd 2 at left edge", 27, "25 25 25 25")]
    public void Stitches_left_and_added_make_it_narrower_and_wider(string step, int stitches, string widths)
    {
        var rows = Worked("st", stitches, $"straight 4 rows, in st\n{step}\nstraight 4 rows").Piece("back", 0).Rows;
        Assert.Equal(widths, string.Join(' ', rows.Skip(4).Select(static row => ((WordsPlan)row.Plan).Of!.Places)));
        Assert.Equal(widths, string.Join(' ', rows.Skip(4).Select(static row => row.Work!.Stitches)));
    }

    // A row of five arches and six sc has eleven places, and is as wide as 31.
    [Fact]
    public void It_is_the_repeats_that_are_left_and_not_the_places()
    {
        var rows = Worked("net", 31, "straight 3 rows, in net\nleave 2 at both edges\nstraight 2 rows").Piece("back", 0).Rows;
        Assert.Equal(["31", "31", "31", "19", "19"], rows.Select(static row => $"{((WordsPlan)row.Plan).Of!.Places}"));
    }

    [Theory]
    [InlineData("straight 4 rows, in st\nleave 4 at both edges\nstraight 4 rows\nshape 4 rows, edges in sc: dec 1 at both edges every 2 rows", "39 39 39 39 31 31 31 31 31 29 29 27")]
    [InlineData("straight 4 rows, in st\nleave 4 at both edges\nshape 4 rows, edges in sc: dec 1 at both edges every 2 rows", "39 39 39 39 31 29 29 27")]
    [InlineData("straight 4 rows, in st, edges in sc\nleave 4 at both edges\nstraight 2 rows", "39 39 39 39 31 31")]
    [InlineData("straight 2 rows, in st\nadd 6 at both edges\nstraight 3 rows, edges in sc", "39 39 51 51 51")]
    [InlineData("straight 2 rows, in st\nadd 6 at both edges, one row apart\nstraight 3 rows, edges in sc", "39 39 45 51 51")]
    public void A_step_comes_before_rows_with_edges(string lines, string counts) =>
        Assert.Equal(counts, string.Join(' ', Worked("st", 39, lines).Counts()));

    [Fact]
    public void Edges_begun_for_some_sizes_go_on_in_these_alone()
    {
        var made = Compiled.Whole(
            $"{Top}sizes S, L\n{St}piece back\nbegin with 20 (30) stitches\nstraight 4 rows, in st\nfor L: shape 4 rows, edges in sc: dec 1 at both edges every 2 rows\nstraight 2 rows").Clean();
        Assert.Equal((6, 10), (made.Counts("back", 0).Count(), made.Counts("back", 1).Count()));
        Assert.Equal((20, 26), (made.Counts("back", 0).Last(), made.Counts("back", 1).Last()));
    }

    private const string St = "stitch pattern st over multiple of 1\nrow 1: sc across\nrow 2: sc across\n";
    private const string Net = "stitch pattern net over multiple of 6 + 1\nrow 1: sc, (ch 3, skip 2, dc, ch 3, skip 2, sc) across\nrow 2: sc, (2 sc in next sp, sc, 2 sc in next sp, sc) across\nrow 3: sc, (ch 5, skip 5, sc) across\nrow 4: sc, (5 sc in next sp, sc) across\n";

    private static Compiled Worked(string name, int stitches, string lines)
    {
        Assert.NotNull(name);
        return Compiled.Whole($"{Top}{(name == "st" ? St : name == "net" ? Net : string.Empty)}piece back\nbegin with {stitches} stitches\n{lines}").Clean();
    }
}
