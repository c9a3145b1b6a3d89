using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The same pattern for a maker's own gauge: her counts, what the pattern's counts measure, and the size nearest to hers.</summary>
public sealed class GaugeTests : IDisposable
{
    /// <summary>Three sizes in dc, 20 stitches and 10 rows to 10 cm: 40, 44 and 48 cm wide, 30 cm high.</summary>
    private const string Panel = """
        terms US
        sizes S, M, L
        hook 4 mm
        gauge dc: 20 stitches and 10 rows to 10 cm
        count width is stitches for 40 (44, 48) cm

        piece panel
          begin with width stitches
          row 1 RS: dc across      = width
          straight to 30 cm

        """;

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Her_counts_stand_beside_the_patterns()
    {
        var ran = Gauge(Panel, "--stitches", "18", "--rows", "9");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Says(ran, "  the pattern's gauge   dc: 20 stitches and 10 rows to 10 cm\n  your gauge            dc: 18 stitches and 9 rows to 10 cm\n");
        Says(ran, "\nYour counts, sizes S (M, L)\n");
        Row(ran, "width", "80 (88, 96)", "72 (79, 86)");
        Row(ran, "panel: first row", "80 (88, 96)", "72 (79, 86)");
        Row(ran, "panel: rows", "30", "27");
        Assert.EndsWith("\nEvery row and seam works out at your gauge.\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_patterns_counts_measure_something_else_at_her_gauge()
    {
        var ran = Gauge(Panel, "--stitches", "18", "--rows", "9");
        Row(ran, "panel: wide", "40 (44, 48) cm", "44.4 (48.9, 53.3) cm");
        Row(ran, "panel: high", "30 cm", "33.3 cm");
    }

    [Fact]
    public void The_nearest_size_is_named_and_how_far_it_is()
    {
        // 44.4, 48.9 and 53.3 cm for 40, 44 and 48.
        var ran = Gauge(Panel, "--stitches", "18", "--rows", "10");
        Row(ran, "S", "S", "4.4 cm wider (panel)", "as meant");
        Row(ran, "M", "S", "0.4 cm wider (panel)", "as meant");
        Row(ran, "L", "M", "0.9 cm wider (panel)", "as meant");
    }

    [Fact]
    public void Of_two_sizes_as_near_the_larger_is_named()
    {
        // At 25 stitches 80 are 32 cm and 100 are 40: 36 lies between them.
        var ran = Gauge(Panel.Replace("40 (44, 48)", "36 (40, 50)", StringComparison.Ordinal), "--stitches", "25");
        Row(ran, "S", "L", "4 cm wider (panel)", "as meant");
    }

    [Fact]
    public void One_size_is_shown_alone_and_compared_with_all()
    {
        var ran = Gauge(Panel, "--stitches", "18", "--size", "l");
        Says(ran, "\nYour counts, size L\n");
        Row(ran, "width", "96", "86");
        Row(ran, "L", "M", "0.9 cm wider (panel)", "as meant");
        Assert.DoesNotContain("\n  M ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_given_stays_the_patterns()
    {
        Says(Gauge(Panel, "--rows", "9.5"), "  your gauge            dc: 20 stitches and 9.5 rows to 10 cm\n");
        Says(Gauge(Panel, "--stitches", "17 1/2"), "  your gauge            dc: 17 1/2 stitches and 10 rows to 10 cm\n");
    }

    [Fact]
    public void A_pattern_in_one_size_names_none()
    {
        var ran = Gauge(Panel.Replace("sizes S, M, L\n", "", StringComparison.Ordinal).Replace(" (44, 48)", "", StringComparison.Ordinal), "--stitches", "18");
        Row(ran, "width", "80", "72");
        Assert.DoesNotContain("come nearest", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Counts_claimed_in_plain_numbers_are_not_held_against_hers()
    {
        var ran = Gauge(Panel.Replace("= width", "= 80 (88, 96)", StringComparison.Ordinal), "--stitches", "18");
        Assert.Equal(0, ran.Code);
        Says(ran, "\n  1 count behind `=` in plain numbers is the pattern's own, and not held against yours\n");
        Row(ran, "panel: first row", "80 (88, 96)", "72 (79, 86)");
    }

    [Fact]
    public void A_plain_number_stays_and_the_piece_that_it_makes_is_named()
    {
        var ran = Gauge(Panel.Replace("begin with width", "begin with 80 (88, 96)", StringComparison.Ordinal), "--stitches", "18");
        Says(ran, "plain numbers do not follow the gauge");
        Says(ran, "\n    panel: 44.4 (48.9, 53.3) cm wide, not 40 (44, 48) cm\n");
        // The claim by name is one that the pattern could keep at any gauge, and does not.
        Assert.Equal(1, ran.Code);
        Says(ran, "\nAt your gauge, though not at the pattern's own, this is found:\n\nerror row-count [TR0301] ");
    }

    [Fact]
    public void A_slope_that_no_longer_fits_is_told_for_her_gauge_alone()
    {
        // 40 rows are as many decreases at each edge as 20 cm give; at her gauge there are fewer rows.
        const string slope = """
            terms US
            gauge dc: 20 stitches and 20 rows to 10 cm
            count rise is rows for 20 cm

            piece slope
              begin with 100 stitches
              row 1 RS: dc across
              shape rise rows evenly to 20, at both edges

            """;
        var ran = Gauge(slope, "--rows", "8");
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Says(ran, "\nAt your gauge, though not at the pattern's own, this is found:\n\nerror taper-too-steep ");
        Assert.Equal(0, Gauge(slope, "--stitches", "18").Code);
    }

    [Fact]
    public void Errors_that_the_pattern_has_itself_are_told_first_and_once()
    {
        var ran = Gauge(Panel + "  row: dc 5\n", "--stitches", "18");
        Assert.Equal(1, ran.Code);
        Assert.StartsWith("error row-length ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("error", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_gauge_of_the_named_stitch_is_exchanged()
    {
        var two = Panel.Replace("count width is", "gauge sc: 20 stitches to 10 cm, 12 rows to 5 cm\ncount width is dc", StringComparison.Ordinal);
        var ran = Gauge(two, "--stitches", "18", "--rows", "11", "--stitch", "SC");
        Says(ran, "  your gauge            sc: 18 stitches to 10 cm, 11 rows to 5 cm\n  the gauge of dc stays as the pattern has it\n");
        Row(ran, "width", "80 (88, 96)", "80 (88, 96)");
    }

    [Theory]
    [InlineData("gauge dc: 20 stitches and 10 rows to 10 cm\n", "", "gives no gauge", "--stitches", "18")]
    [InlineData("", "", "has no gauge for `tr`", "--stitches", "18", "--stitch", "tr")]
    [InlineData("", "", "has no size `XL`", "--stitches", "18", "--size", "XL")]
    public void What_is_not_there_is_refused(string from, string to, string says, params string[] options)
    {
        var text = from.Length == 0 ? Panel : Panel.Replace(from, to, StringComparison.Ordinal);
        var ran = Gauge(text, options);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_stays_as_it_is()
    {
        Gauge(Panel, "--stitches", "18");
        Assert.Equal(Panel, File.ReadAllText(_folder["a.turnrow"]));
        Assert.Equal(["a.turnrow"], _folder.Files);
    }

    // Published: a pattern of 5 stitches to the inch has 102 stitches; at 4 they measure 25.5 in where 20.4 were meant. In multiples of 6,
    // 96 stitches become 76.8, so 78, and 102 become 81.6, so 84 (qctester.wordpress.com, 2010/04/21).
    [Fact]
    public void A_published_pattern_for_fewer_stitches_to_the_inch()
    {
        var ran = Gauge(Inches(5, "19.2", "20.4"), "--stitches", "4");
        Row(ran, "small", "96", "78");
        Row(ran, "large", "102", "84");
        Row(ran, "strip: wide", "20.4 in", "25.5 in");
    }

    // Published, the same page: 4 stitches to the inch and 102 stitches, her own 5: 127.5, so 126 in multiples of 6, which are 25.2 in where
    // 25.5 were meant.
    [Fact]
    public void A_published_pattern_for_more_stitches_to_the_inch()
    {
        var ran = Gauge(Inches(4, "24", "25.5"), "--stitches", "5");
        Row(ran, "large", "102", "126");
        Assert.Equal(0, ran.Code);
        var own = Gauge(Inches(5, "24", "25.5"), "--stitches", "5");
        Row(own, "strip: wide", "25.2 in", "25.2 in");
    }

    // Published: 24 rows at 6 rows to the inch are 12 rows at 3 (fiber-images.com, "How to convert knit/crochet").
    [Fact]
    public void A_published_conversion_of_rows() => Row(Gauge(Inches(4, "24", "25.5"), "--rows", "3"), "strip: rows", "24", "12");

    [Fact]
    public void Check_says_below_its_summary_what_the_sample_tells()
    {
        var ran = InProcess.Turnrow("check", _folder.Write("a.turnrow", Panel + "made M: panel 46 cm wide, 30 cm high\n"));
        Assert.Equal(0, ran.Code);
        Assert.EndsWith(
            """
            : 3 sizes, 1 piece, 90 rows: no errors, 1 warning
              the finished sample, beside what its stitches and rows are by the gauge:
                panel in M: 46 cm wide (2 cm more than 44), 30 cm high (as planned)
              so its true gauge is:
                dc: 19.1 stitches to 10 cm (the gauge line says 20), 10 rows to 10 cm (the gauge line says 10)
              and worked like that each size will measure:
                panel: 41.8 (46, 50.2) cm wide, 30 cm high

            """.ReplaceLineEndings("\n"),
            ran.Out,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_fabrics_check_says_what_can_be_known()
    {
        var mixed = Panel.Replace("count width is", "gauge sc: 20 stitches and 20 rows to 10 cm\ncount width is dc", StringComparison.Ordinal)
            + "  row: sc across\n  straight 19 rows\nmade S: panel 38 cm high\n";
        var ran = InProcess.Turnrow("check", _folder.Write("a.turnrow", mixed));
        Says(ran, "\n    panel has 30 rows of dc and 20 rows of sc, so its height gives no gauge of rows for either: it is 95 % of what the gauges make it, and is reckoned so below\n");
        Says(ran, "\n    panel: 40 (44, 48) cm wide, 38 cm high\n    (widths of dc: by the gauge line, since the sample does not tell)\n");
    }

    [Fact]
    public void The_sample_is_not_published()
    {
        var bare = _folder.Write("bare/a.turnrow", Panel);
        var made = _folder.Write("made/a.turnrow", Panel + "made M: panel 46 cm wide\n");
        foreach (var path in new[] { bare, made }) Assert.Equal(0, InProcess.Turnrow("build", path, "--out", Path.Combine(Path.GetDirectoryName(path)!, "out")).Code);
        foreach (var file in new[] { "a.md", "a.html" })
            Assert.Equal(File.ReadAllText(_folder[$"bare/out/{file}"]), File.ReadAllText(_folder[$"made/out/{file}"]));
    }

    private static string Inches(int stitches, string small, string large) => $"""
        terms US
        gauge dc: {stitches} stitches and 6 rows to 1 in
        count small is stitches for {small} in, multiple of 6
        count large is stitches for {large} in, multiple of 6

        piece strip
          begin with large stitches
          row 1 RS: dc across
          straight to 4 in

        """;

    private Ran Gauge(string text, params string[] options) => InProcess.Turnrow(["gauge", _folder.Write("a.turnrow", text), .. options]);

    private static void Says(Ran ran, string text) => Assert.Contains(text, ran.Out, StringComparison.Ordinal);

    /// <summary>A line of a table, however wide its columns are.</summary>
    private static void Row(Ran ran, params string[] cells) =>
        Assert.Contains(ran.Out.Split('\n').Select(line => System.Text.RegularExpressions.Regex.Split(line.Trim(), " {2,}")), line => line.SequenceEqual(cells));
}
