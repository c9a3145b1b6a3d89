using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Colours;

/// <summary>The yarn in the hand: from which line on, in which row, and how much of it.</summary>
public sealed class YarnLineTests
{
    private const string Yarns = "yarn navy\nyarn cream\n";

    [Theory]
    [InlineData("straight 2 rows\nwith cream\nstraight 2 rows", "navy navy navy cream cream")]
    [InlineData("stripes are cream 2 rows, navy 1 row\nstraight 5 rows", "navy cream cream navy cream cream")]
    [InlineData("row: dc 4, with cream, dc across\nstraight 1 rows", "navy navy cream")]
    [InlineData("row: with cream, dc across\nstraight 1 rows\nrepeat rows 1 to 2, 1 more times", "navy cream cream navy cream")]
    [InlineData("straight 1 rows\nwith cream\nrepeat rows 1 to 2, 1 more times", "navy navy cream cream")]
    [InlineData("stripes are cream 1 row, navy 1 row\nrepeat row 1, 3 more times", "navy cream navy cream")]
    [InlineData("stripes are cream 1 row, navy 0 rows\nstraight 2 rows\nwith navy\nstraight 1 rows", "navy cream cream navy")]
    public void Each_row_knows_the_yarn_it_begins_with(string lines, string yarns) =>
        Assert.Equal(yarns, string.Join(' ', Compiled.Of($"{Yarns}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n{lines}\n").Clean().InSizes("back")[0].Rows.Select(r => r.Yarn)));

    [Fact]
    public void What_is_said_behind_a_pick_up_is_said_of_its_row()
    {
        var compiled = Compiled.Of($"{Yarns}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\npiece band picked up along back last row: 1 sc in each st\nwith cream\nstraight 2 rows\n");
        Assert.Equal(["cream", "cream", "cream"], compiled.InSizes("band")[0].Rows.Select(r => r.Yarn));
    }

    [Fact]
    public void A_mirrored_row_has_its_yarns_from_the_other_end()
    {
        var compiled = Compiled.Of($"{Yarns}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: dc 4, with cream, dc 2, (with navy, dc 3, with cream, dc 2) 2 times, dc across\nstraight 1 rows\npiece front is back mirrored\n");
        Assert.Equal("navy 4, cream 2, navy 3, cream 2, navy 3, cream 6", Runs(compiled.Row(2)));
        Assert.Equal("cream 6, navy 3, cream 2, navy 3, cream 2, navy 4", Runs(compiled.Row(2, "front")));
        Assert.Equal("cream", compiled.Row(3, "front").Yarn);
    }

    [Fact]
    public void No_count_depends_on_it()
    {
        const string Rows = "row: {0}dc 3, {1}2 dc in next, ({1}dc 2, {0}dc 2) across\nrow: {1}dc2tog, dc across\n";
        string Written(string a, string b) => "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n" + Rows.Replace("{0}", a, StringComparison.Ordinal).Replace("{1}", b, StringComparison.Ordinal);
        Assert.Equal(Compiled.Of(Written("", "")).Counts(), Compiled.Of(Yarns + Written("with navy, ", "with cream, ")).Clean().Counts());
    }

    [Fact]
    public void A_chain_of_another_yarn_does_not_turn_the_row()
    {
        var row = Compiled.Of($"{Yarns}piece back\nbegin with 21 stitches\nrow 1 RS: dc across\nrow: dc, with cream, ch 1, skip 1, dc across\n").Row(2);
        Assert.Equal((3, 0), (row.Work!.Opening.Chains, row.Work.Opening.Space));
    }

    private const string Pictures = "stitch pattern tile from picture in dc, over multiple of 4\n  key \"x\" is cream\n  key \".\" is navy\n  | x . . x |\n  | . x x . |\nstitch pattern plain from picture in dc, over multiple of 2\n  key \".\" is navy\n  | . . |\n  | . . |\n";

    [Theory]
    [InlineData("with cream\nstraight 2 rows, in tile\nrow: dc across\nstraight 1 row", "navy, navy, cream, cream, cream")]
    [InlineData("straight 2 rows, in tile\nrow: dc across\nstraight 1 row", "navy, navy, cream, navy, navy")]
    [InlineData("with cream\nstraight 2 rows, in tile\nrow: dc across\nrow: dc across\nrepeat rows 2 to 5, 1 more time", "navy, navy, cream, cream, cream, navy, cream, cream, cream")]
    [InlineData("with cream\nrow: dc across\nrow: dc 10, with navy, dc 10\nstraight 2 rows, in tile\nrow: dc across", "navy, cream, cream, navy, cream, navy")]
    [InlineData("with cream\nstraight 2 rows, in tile, edges in dc\nrow: dc across", "navy, navy, cream, cream")]
    public void A_pictures_yarns_are_its_own(string lines, string yarns) =>
        Assert.Equal(yarns, string.Join(", ", Compiled.Of($"{Yarns}{Pictures}piece back\nbegin with 20 stitches\nrow 1 WS: dc across\n{lines}\n").Clean().Piece("back", 0).Rows.Select(static r => r.Yarn)));

    [Theory]
    [InlineData("", "navy 2, cream 2, navy 2, cream 2, navy 2, cream 2, navy 2, cream 2, navy 2, cream 2, navy 2")]
    [InlineData("with cream\n", "cream 1, navy 1, cream 2, navy 2, cream 2, navy 2, cream 2, navy 2, cream 2, navy 2, cream 2, navy 1, cream 1")]
    public void Edges_beside_a_picture_are_of_the_yarn_round_it(string with, string runs)
    {
        var rows = Compiled.Of($"{Yarns}{Pictures}piece back\nbegin with 22 stitches\nrow 1 WS: dc across\n{with}straight 3 rows, in tile, edges in dc\n").Clean().Piece("back", 0).Rows;
        Assert.Equal(runs, Runs(rows[1]));
    }

    [Theory]
    [InlineData("row: with rust, dc across", "yarn-unknown")]
    [InlineData("stripes are rust 2 rows", "yarn-unknown")]
    [InlineData("row: dc across, with cream", "yarn-nothing")]
    [InlineData("row: with navy, with cream, dc across", "yarn-nothing")]
    [InlineData("straight 2 rows\nwith cream", "yarn-nothing")]
    [InlineData("with navy\nwith cream\nstraight 2 rows", "yarn-nothing")]
    [InlineData("with navy\nrow: with cream, dc across", "yarn-nothing")]
    [InlineData("stripes are navy 0 rows, cream 0 rows\nstraight 2 rows", "stripes-empty")]
    [InlineData("with navy\nstraight 2 rows", "yarn-unused")]
    [InlineData("row: dc 7, with cream, dc 6, with navy, dc across", "float-long")]
    [InlineData("row: (dc 2, with cream, dc 2) 5 times", "yarn-next-time")]
    [InlineData("row: ((dc, with cream, dc) 2 times, with navy, dc) 4 times", "yarn-next-time")]
    [InlineData("row: (dc 2, with cream, dc 2) 2 times, dc 12", "yarn-next-time")]
    [InlineData("row: (dc 2, with cream, dc 2) 1 times, dc 16", "")]
    [InlineData("row: (with navy, dc 2, with cream, dc 2) 5 times", "")]
    [InlineData("row: (with navy, dc 2, with cream, dc 2) 5 times\nrow: (dc 2, with cream, dc 2) across", "")]
    [InlineData("row: dc across\nwith cream\nstraight 2 rows, in tile", "")]
    [InlineData("row: dc across\nwith cream\nstraight 2 rows, in tile\nwith navy\nstraight 1 row", "")]
    [InlineData("row: dc across\nwith cream\nstraight 2 rows, in plain\nwith navy\nstraight 1 row", "yarn-nothing")]
    [InlineData("row: (dc 3, with cream, dc, with navy) 2 times, dc 3, with cream, dc across", "")]
    public void What_can_not_be(string lines, string found) =>
        Assert.Equal(found.Length > 0 ? [found] : [], Compiled.Of($"{Yarns}{Pictures}piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n{lines}\n").Found);

    [Fact]
    public void A_float_may_be_longer_where_the_pattern_says_so() =>
        Compiled.Of($"{Yarns}floats at most 6 stitches\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow: dc 7, with cream, dc 6, with navy, dc across\n").Clean();

    [Fact]
    public void A_float_is_found_from_one_time_of_a_bracket_to_the_next()
    {
        var found = Compiled.Of($"{Yarns}piece back\nbegin with 40 stitches\nrow 1 RS: dc across\nrow: (dc, with cream, dc 9, with navy) across\n").Compilation.Diagnostics.Single();
        Assert.Equal(FloatLong.Kind, found.Kind);
        Assert.Contains("over 9 stitches in row 2", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(", with cream", "cream", null)]
    [InlineData(", WS together, with cream: 1 sc in each row", "cream", false)]
    [InlineData(", RS together: 1 sc in each row", null, true)]
    public void A_seam_knows_its_yarn_and_the_side_that_lies_inside(string said, string? yarn, bool? rightSides)
    {
        const string Pieces = "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\npiece front\nbegin with 20 stitches\nrow 1 RS: dc across\n";
        var seam = Compiled.Of($"{Yarns}{Pieces}seam back left edge with front right edge{said}\n").Clean().Pattern.Items.OfType<SeamInSizes>().Single().InSizes[0]!;
        Assert.Equal((yarn, rightSides), (seam.Yarn, seam.RightSidesTogether));
        Assert.Contains("yarn-unknown", Compiled.Of($"{Yarns}{Pieces}seam back left edge with front right edge, with rust\n").Found);
    }

    [Fact]
    public void What_each_yarn_needs_is_what_all_need()
    {
        const string Swatch = "swatch dc: 10 stitches and 10 rows weigh 10 g\n";
        const string Lines = "piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n";
        var all = YarnNeed.All(Compiled.Of($"{Yarns}{Swatch}{Lines}row: dc across\nstraight 8 rows\n").Pattern).Single();
        var each = YarnNeed.All(Compiled.Of($"{Yarns}{Swatch}{Lines}row: (dc 2, with cream, dc 2, with navy) across\nstripes are cream 3 rows, navy 1 row\nstraight 8 rows\n").Pattern);
        Assert.Equal(["navy", "cream"], each.Select(n => n.Yarn.Name));
        Assert.Equal([7, 13], each.Select(n => (int)n.Grams![0].Floor()));
        Assert.Equal(all.Grams![0], each[0].Grams![0] + each[1].Grams![0]);
    }

    private static string Runs(Row row)
    {
        var runs = new List<string>();
        YarnWords.Visit(row.Work!.Words, row.Yarn!, (yarn, word, times) =>
        {
            for (var i = 0; i < times * WordCounts.Makes(word); i++) runs.Add(yarn);
        });
        return Naive.RowFact.InRuns(InOrder(row, runs));
    }

    // Brackets are handed over once with their times: what is asked for here has to be laid out.
    private static IEnumerable<string> InOrder(Row row, List<string> counted)
    {
        var places = new Turnrow.Fabric.Colours.YarnPlaces(row);
        return Enumerable.Range(0, counted.Count).Select(i => places.Of(i)!);
    }
}
