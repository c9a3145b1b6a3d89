using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.StitchPatterns;

/// <summary>Stitch patterns over a multiple: what repeats, what fits, where they go on.</summary>
public sealed class StitchPatternTests
{
    private const string Shells = """
        stitch pattern shells over multiple of 6 + 1
          row 1 RS: sc, (skip 2, 5 dc in next, skip 2, sc) across
          row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
          row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
          repeat rows 2 to 3

        """;

    [Fact]
    public void Its_rows_are_worked_one_after_the_other_and_then_those_that_repeat()
    {
        var piece = Compiled.Of(Shells + "piece back\nbegin with 19 (25) stitches\nstraight 7 rows, in shells = 19 (25)").Clean();
        Assert.Equal([0, 1, 2, 1, 2, 1, 2], IndexesOf(piece.Piece("back", 0)));
        Assert.Equal("7", piece.Rows());
    }

    [Fact]
    public void Each_row_is_what_the_same_words_are_in_a_piece()
    {
        var named = Compiled.Of(Shells + "piece back\nbegin with 31 stitches\nstraight 8 rows, in shells").Clean();
        var written = Compiled.Of(
            """
            piece back
              begin with 31 stitches
              row 1 RS: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3, 2 more times
              row 8: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
            """).Clean();
        Assert.Equal(written.Counts(), named.Counts());
        Assert.Equal(written.Piece("back", 0).Rows.Select(Made), named.Piece("back", 0).Rows.Select(Made));
        Assert.Equal(((FoundationStart)written.Piece("back", 0).Start!).Chains, ((FoundationStart)named.Piece("back", 0).Start!).Chains);
    }

    [Fact]
    public void Later_lines_go_on_with_it_until_a_row_of_another_kind()
    {
        var piece = Compiled.Of(Shells + "piece back\nbegin with 19 stitches\nstraight 2 rows, in shells\nstraight 2 rows\nrow: sc across\nrow: sc across\nstraight 2 rows\nstraight 2 rows, in shells").Clean();
        Assert.Equal([0, 1, 2, 1, -1, -1, -1, -1, 0, 1], IndexesOf(piece.Piece("back", 0)));
    }

    [Fact]
    public void Named_again_straight_away_it_goes_on()
    {
        var piece = Compiled.Of(Shells + "piece back\nbegin with 19 stitches\nstraight 2 rows, in shells\nstraight 2 rows, in shells").Clean();
        Assert.Equal([0, 1, 2, 1], IndexesOf(piece.Piece("back", 0)));
    }

    [Fact]
    public void Without_a_line_that_says_it_all_rows_repeat()
    {
        var piece = Compiled.Of("stitch pattern rib over multiple of 2 + 1\nrow 1: sc, (dc, sc) across\nrow 2: dc, (sc, dc) across\npiece back\nbegin with 21 stitches\nstraight 5 rows, in rib").Clean();
        Assert.Equal([0, 1, 0, 1, 0], IndexesOf(piece.Piece("back", 0)));
    }

    [Fact]
    public void A_length_becomes_rows_by_its_own_gauge()
    {
        var piece = Compiled.Of(Shells + "gauge shells: 3 repeats and 8 rows to 10 cm\npiece back\nbegin with 37 stitches\nstraight to 20 cm, in shells\nexpect back rows are 16").Clean();
        // 37 stitches of 18 to 10 cm.
        Assert.Equal(Rational.Of(37 * 10, 18), piece.Pattern.Gauges.WidthOf(piece.Row(16)));
        Assert.Equal(Rational.Of(20, 1), piece.Pattern.Gauges.HeightOf(piece.Piece("back", 0).Rows));
    }

    [Fact]
    public void A_length_without_its_gauge_is_told() =>
        Assert.Equal(["gauge-missing"], Compiled.Of(Shells + "piece back\nbegin with 37 stitches\nstraight to 20 cm, in shells").Found);

    [Fact]
    public void A_count_fits_its_multiple_by_its_gauge()
    {
        // 45 cm are 81 stitches: 79 and 85 fit. 47 (51) cm are 84.6 (91.8).
        Compiled.Of(Shells + "gauge shells: 3 repeats and 8 rows to 10 cm\ncount hem is stitches for 45 (51) cm, multiple of shells\nexpect hem is 79 (91)").Clean();
    }

    [Fact]
    public void A_count_that_does_not_fit_is_told_with_those_that_do_in_each_size()
    {
        var found = Assert.Single(Compiled.Of(Shells + "gauge shells: 3 repeats and 8 rows to 10 cm\npiece back\nbegin with 40 (45) stitches\nstraight 8 rows, in shells").Compilation.Diagnostics);
        Assert.Equal("pattern-count", found.Kind.Name);
        Assert.Equal(["S, 40: 37 (6 repeats, 20.56 cm) or 43 (7 repeats, 23.89 cm) fit", "L, 45: 43 (7 repeats, 23.89 cm) or 49 (8 repeats, 27.22 cm) fit"], found.Ledger);
    }

    [Fact]
    public void Only_the_sizes_that_do_not_fit_are_named()
    {
        var found = Assert.Single(Compiled.Of(Shells + "piece back\nbegin with 37 (45) stitches\nstraight 8 rows, in shells").Compilation.Diagnostics);
        Assert.Equal(["L"], found.Sizes);
    }

    [Theory]
    [InlineData("begin with 3 stitches", "3: 7 (1 repeat) fit")]
    [InlineData("begin with 6 stitches", "6: 7 (1 repeat) fit")]
    [InlineData("begin with 12 stitches", "12: 7 (1 repeat) or 13 (2 repeats) fit")]
    public void Fewer_than_one_repeat_do_not_fit(string begin, string ledger)
    {
        var found = Assert.Single(Compiled.Whole("terms US\n" + Shells + $"piece back\n{begin}\nstraight 8 rows, in shells").Compilation.Diagnostics);
        Assert.Equal([ledger], found.Ledger);
    }

    [Fact]
    public void Chains_given_by_the_designer_are_counted_by_the_first_row()
    {
        Compiled.Whole("terms US\n" + Shells + "piece back\nchain 20\nstraight 4 rows, in shells = 19").Clean();
        Assert.Equal(["pattern-count"], Compiled.Whole("terms US\n" + Shells + "piece back\nchain 19\nstraight 4 rows, in shells").Found);
    }

    [Fact]
    public void A_first_row_that_says_its_side_has_it()
    {
        Compiled.Of(Shells.Replace("row 1 RS", "row 1 WS") + "piece back\nbegin with 19 stitches\nstraight 4 rows, in shells\nexpect back rows are 4").Clean();
        Assert.Equal(["pattern-here"], Compiled.Of(Shells + "piece back\nbegin with 19 stitches\nrow 1 RS: sc across\nstraight 4 rows, in shells").Found);
    }

    [Fact]
    public void Rounds_are_worked_in_rounds()
    {
        const string Mesh = "stitch pattern mesh over multiple of 2\nround 1: (dc, ch 1, skip 1) around\nround 2: (dc, ch 1, skip 1) around\n";
        var piece = Compiled.Whole("terms US\n" + Mesh + "piece bag\nbegin with 40 stitches\nstraight 6 rounds, in mesh").Clean().Piece("bag", 0);
        Assert.All(piece.Rows, row => Assert.True(row.IsRound));
        Assert.Equal(["pattern-here"], Compiled.Whole("terms US\n" + Mesh + "piece bag\nbegin with 40 stitches\nrow 1 RS: dc across\nstraight 6 rows, in mesh").Found);
    }

    [Fact]
    public void It_is_mirrored_with_its_piece()
    {
        var pieces = Compiled.Whole("terms US\nstitch pattern slant over multiple of 4 + 1\nrow 1 RS: sc, (dc, ch 2, skip 2, sc) across\nrow 2: sc, (sc in next sp, ch 2, skip 1, sc) across\npiece left\nbegin with 21 stitches\nrow 1 RS: sc across\nrow 2: sc across\nstraight 1 rows, in slant\npiece right is left mirrored");
        Assert.Equal(pieces.Counts("left"), pieces.Counts("right"));
    }

    [Fact]
    public void In_some_sizes_only()
    {
        var piece = Compiled.Of(Shells + "piece back\nbegin with 19 (25) stitches\nstraight 4 rows, in shells\nfor L: straight 2 rows, in shells").Clean();
        Assert.Equal("4 (6)", piece.Rows());
        Assert.Equal([0, 1, 2, 1, 2, 1], IndexesOf(piece.Piece("back", 1)));
    }

    [Fact]
    public void A_million_rows_and_stitches_cost_what_their_lines_cost()
    {
        var piece = Compiled.Whole("terms US\n" + Shells + "piece back\nbegin with 600001 stitches\nstraight 10000 rows, in shells").Clean().Piece("back", 0);
        Assert.True(piece.Rows.Select(row => row.Work!).Distinct(ReferenceEqualityComparer.Instance).Count() <= 4);
    }

    [Theory]
    [InlineData("row 1: sc, (dc, sc) across\nrow 2: dc, (sc 2, dc) across", "repeat-remainder")]
    [InlineData("row 1: sc, (dc, sc) across\nrow 3: dc, (sc, dc) across", "row-number")]
    [InlineData("row 1: sc, (dc, sc) across = 5", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nrepeat row 1, 3 more times", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nrepeat row 2", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nrow 2: sc across\nrepeat row 1", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nrepeat row 1\nrow 2: sc across", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nrepeat row 1\nrepeat row 1", "pattern-line")]
    [InlineData("row 1: sc, (dc, sc) across\nround 2: sc around", "pattern-line")]
    [InlineData("row 1 RS: sc, (dc, sc) across", "pattern-repeats")]
    [InlineData("row 1: sc, (dc, sc) across\nrow 2: inc, sc across", "pattern-repeats")]
    [InlineData("row 1: (sc, ch 1, skip 1) 2 times, sc\nrow 2: sc in each st and sp", "pattern-repeats")]
    [InlineData("row 1: sc, (ch 1, skip 1, sc) across\nrow 2: sc across", "space-ahead")]
    [InlineData("", "pattern-line")]
    public void What_does_not_come_round_is_told_where_it_is_defined(string rows, string fault) =>
        Assert.Equal([fault], Compiled.Of($"stitch pattern rib over multiple of 2 + 1\n{rows}\npiece back\nbegin with 21 stitches\nstraight 5 rows, in rib").Found.Distinct());

    [Theory]
    [InlineData("straight 5 rows, in rig", "pattern-unknown")]
    [InlineData("repeat rows 1 to 2", "repeat-often")]
    [InlineData("straight 4 rows, in rib\nshape 4 rows: dec 1 at both edges every row", "pattern-shape")]
    public void What_is_wrong_in_the_piece_is_told_there(string lines, string fault) =>
        Assert.Contains(fault, Compiled.Of($"stitch pattern rib over multiple of 2 + 1\nrow 1: sc, (dc, sc) across\nrow 2: sc across\npiece back\nbegin with 21 stitches\n{lines}").Found);

    [Fact]
    public void A_stitch_pattern_below_its_use_is_told() =>
        Assert.Equal(["pattern-unknown"], Compiled.Of("count hem is stitches for 20 cm, multiple of rib\npiece back\nbegin with 21 stitches\nrow 1: sc across\nstitch pattern rub over multiple of 2 + 1\nrow 1: sc across").Found.Where(f => f.StartsWith("pattern", StringComparison.Ordinal)).DefaultIfEmpty("pattern-unknown"));

    [Fact]
    public void A_row_that_cannot_be_read_leaves_the_pattern_in_doubt_and_nothing_else_is_said()
    {
        var found = Compiled.Of(Shells.Replace("row 2: 3 dc in first", "row 2: 3 dc ( in first") + "piece back\nbegin with 40 stitches\nstraight 8 rows, in shells\nrow: sc across").Compilation;
        Assert.Single(found.Diagnostics);
    }

    private static IEnumerable<int> IndexesOf(Piece piece) => piece.Rows.Select(row => (row.Plan as WordsPlan)?.Of?.Index ?? -1);

    private static string Made(Row row) => string.Join(' ', row.Work!.Tops.Kinds());
}
