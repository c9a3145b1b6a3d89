using System.Diagnostics;
using System.Globalization;
using System.Text;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Hostile;

/// <summary>What nobody types: it gets a clear message, costs little time and little memory, and what stands around it is understood.</summary>
[Collection(nameof(Alone))]
public sealed class HostileTests
{
    // Far above what it takes: a walk that is deep or quadratic takes minutes or ends the process.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private const long Memory = 200_000_000;
    private const int Many = 100_000;

    public static TheoryData<string, string> Lines => new()
    {
        { "row 2: " + new string('(', Many), LineLong.Kind.Name },
        { "row 2: " + Repeat("(\n", Many), BracketDepth.Kind.Name },
        { "row 2: " + new string('d', 10_000), UnknownStitch.Kind.Name },
        { "row 2: dc \0 across", StrangeCharacter.Kind.Name },
        { "straight 2000000000 rows", NumberLarge.Kind.Name },
        { "straight 999999999 rows", TooLarge.Kind.Name },
        { "straight 999999 rows", TooManyRows.Kind.Name },
        { "straight to 999999999 cm", TooManyRows.Kind.Name },
        { "straight to 9999999999999999999999 cm", NumberLarge.Kind.Name },
        { "rows 2 to 2000000000: dc across", NumberLarge.Kind.Name },
        { "rows 2 to 999999999: dc across", TooLarge.Kind.Name },
        { "rows 2 to 999999: dc across", TooManyRows.Kind.Name },
        { "repeat rows 1 to 1, 999999999 more times", TooLarge.Kind.Name },
        { "repeat rows 1 to 1, 999999 more times", TooManyRows.Kind.Name },
        { "row 2: (dc) 1000000000 times", NumberLarge.Kind.Name },
        { "row 2: (dc) 999999999 times", TooLarge.Kind.Name },
        { "row 2: (dc) 1000000 times", RowLength.Kind.Name },
        { "row 2: ((((((((dc in same) 1000000 times) 1000000 times) 1000000 times) 1000000 times) 1000000 times) 1000000 times) 1000000 times) 1000000 times", PlaceInRow.Kind.Name },
        { "row 2: dc, ((((dc in same) 1000 times) 1000 times) 1000 times) 1000 times, dc across", RowTooLong.Kind.Name },
        { "row 2: dc, ((((ch 1, dc in same) 1000 times) 1000 times) 1000 times) 1000 times, dc across", RowTooLong.Kind.Name },
        { "row 2: ((ch 1, skip 0) 1000000 times) 1000000 times, dc across", RowTooLong.Kind.Name },
        { "row 2: " + Repeat("1000000 dc in next, ", 11) + "dc across", RowTooLong.Kind.Name },
        { "row 2: 2000000 dc in next, dc across", TooLarge.Kind.Name },
        { "row 2: (1000000 dc in next) across", RowTooLong.Kind.Name },
        { "row 2: dc inc 1000000 evenly", SpreadTooMany.Kind.Name },
        { "row 2: (ch 1, skip 0) across", RepeatEndless.Kind.Name },
        { "row 2: dc until 1000000 remain", RowLength.Kind.Name },
        { "row 2: dc across = 10 / 0", DivisionByZero.Kind.Name },
        { "leave 1000000 at both edges", EdgeShort.Kind.Name },
        { "shape 999999 rows: inc 1 at right edge every row", TooManyRows.Kind.Name },
        { "shape 20 rows: dec 1000000 at right edge every row", RowLength.Kind.Name },
        { "shape 1000 rows: inc 1 at right edge every 1000000 rows 1000000 times", ScheduleTooLong.Kind.Name },
        { "shape 1000 rows evenly to 1000000, at both edges", TaperTooSteep.Kind.Name },
        { "count n is 1 / 0", DivisionByZero.Kind.Name },
        { "count n is 999999999 x 999999999 x 999999999", TooLarge.Kind.Name },
        { "count n is 999999999 x 999999999 + 1", TooLarge.Kind.Name },
        { "count n is 1/999999999 + 1/999999998 + 1/999999997", TooLarge.Kind.Name },
        { "count n is 1/999999999 + 1/999999998", NotWhole.Kind.Name },
        { "count n is 99999999999999999999999999", NumberLarge.Kind.Name },
        { "count n is 0.00000000000000000000000001", NumberLarge.Kind.Name },
        { "measure n is 999999999 in x 999999999 x 999999999", TooLarge.Kind.Name },
        { "count n is stitches for 999999999 cm", TooLarge.Kind.Name },
        { "count n is stitches for 999999999 cm x 999999999", TooLarge.Kind.Name },
        { "count n is rows for 1/999999999 cm + 1/999999998 cm + 1/999999997 cm", TooLarge.Kind.Name },
        { "count n is 10, multiple of 9973 + 1, multiple of 10000", TooLarge.Kind.Name },
        { "count n is 10, multiple of 9973 + 1, multiple of 9972, multiple of 9971, multiple of 9967", FixesConflict.Kind.Name },
        { "count n is 10, multiple of 1000000", TooLarge.Kind.Name },
        { "count n is 10, multiple of 4 + 1, multiple of 6", FixesConflict.Kind.Name },
        { "count n is 2 - 5, odd", TooSmall.Kind.Name },
        { "count n is n", Circular.Kind.Name },
        { "gauge sc: 0 stitches and 10 rows to 10 cm", GaugeZero.Kind.Name },
        { "turn dc: ch 1000000 counts", TurnChainLength.Kind.Name },
        { "piece a is a mirrored", PieceBelow.Kind.Name },
        { "piece a from a: 2 stitches at right edge", PieceBelow.Kind.Name },
        { "piece a picked up along a right edge: 1 dc in each row", PieceBelow.Kind.Name },
        { "piece a is c mirrored\npiece c is a mirrored", PieceBelow.Kind.Name },
        { "piece a is c mirrored\npiece c is d mirrored\npiece d is a mirrored", PieceBelow.Kind.Name },
        { "expect 999999999 stitches measure 1 cm", ExpectMeasure.Kind.Name },
        { "expect 999999999 x 999999999 stitches measure 1 cm", TooLarge.Kind.Name },
        { "straight 1 (" + Repeat("2, ", 60) + "3) rows", SizesList.Kind.Name },
        { "sizes " + Names(61), SizesTooMany.Kind.Name },
        { "sizes " + string.Join(",\n", Enumerable.Range(1, 10_000)), SizesTooMany.Kind.Name },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_gets_one_clear_message(string line, string name)
    {
        var inHeader = line.Split(' ')[0] is "count" or "gauge" or "measure" or "sizes" or "turn";
        var found = Compile("gauge dc: 19 stitches and 10 rows to 10 cm\n" + (inHeader ? line + "\n" : string.Empty)
            + "piece b\n  begin with 12 stitches\n  row 1 RS: dc across = 12\n" + (inHeader ? string.Empty : line + "\n"));
        Assert.Equal(name, found.First(d => d.Kind.Severity == Severity.Error).Kind.Name);
    }

    [Fact]
    public void The_lines_around_are_still_counted()
    {
        foreach (var line in Lines.Select(data => (string)data[0]))
        {
            if (line.Split(' ')[0] is "count" or "gauge" or "measure" or "sizes" or "turn" or "piece") continue;
            var found = Compile($"gauge dc: 19 stitches and 10 rows to 10 cm\npiece b\n  begin with 10 stitches\n  row 1 RS: dc across = 11\n{line}\npiece c\n  begin with 20 stitches\n  row 1 RS: dc across = 21\n");
            Assert.Equal(2, found.Count(d => d.Kind == RowCount.Kind && d.Message.StartsWith("11 stitches are claimed", StringComparison.Ordinal) | d.Message.StartsWith("21 stitches are claimed", StringComparison.Ordinal)));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    [InlineData("# nothing\n# but comments")]
    [InlineData("\r\n\r\n")]
    [InlineData("   ")]
    public void A_file_that_says_nothing_is_no_error(string text) => Assert.DoesNotContain(Compile(text), d => d.Kind.Severity == Severity.Error);

    [Fact]
    public void Bytes_that_are_no_text_are_told()
    {
        var found = Watched(() => Compilation.Of(SourceText.FromBytes("bytes", [.. Encoding.UTF8.GetBytes("piece b\n  begin with 3 stitches\n  row 1: dc across = 4\n"), 0xFF, 0xC0, 0x80, 0x0A])));
        Assert.Contains(found.Diagnostics, d => d.Kind == WrongBytes.Kind);
        Assert.Contains(found.Diagnostics, d => d.Kind == RowCount.Kind);
    }

    [Fact]
    public void Forty_thousand_lines_with_bytes_that_are_no_text()
    {
        var bytes = Encoding.Latin1.GetBytes("piece b\nbegin with 3 stitches\n" + Repeat("row: dc \u00E9\n", 40_000));
        Assert.Contains(Watched(() => Compilation.Of(SourceText.FromBytes("bytes", bytes))).Diagnostics, d => d.Kind == WrongBytes.Kind);
    }

    [Fact]
    public void A_broken_line_that_goes_on_for_300_KB() => Compile("row: " + Repeat("dc piece row,\n", 20_000));

    [Fact]
    public void Chains_of_spaces_without_end() => Assert.Contains(
        Compile("piece b\nbegin with 100000 stitches\nrow 1: dc across\nrow 2: (ch 30000, dc) 100000 times"), d => d.Kind == RowTooLong.Kind);

    [Fact]
    public void Chains_added_to_a_row_as_long_as_a_row_can_be()
    {
        var lines = "piece b\nbegin with 1000000 stitches\nrow 1: dc across\nrow 2: (10 dc in next) across\nadd 6 at both edges\nrow 3: dc across";
        Assert.Contains(Compile(lines), d => d.Kind == RowTooLong.Kind);
    }

    [Fact]
    public void A_line_of_10_MB_is_refused() => Assert.Equal(FileLarge.Kind, Assert.Single(Compile("row 1: " + new string('(', 10_000_000))).Kind);

    [Fact]
    public void Twenty_thousand_pieces_that_mirror_one() => Compile(Numbered("piece p{0} is b mirrored\n", 20_000));

    [Fact]
    public void Twenty_thousand_pieces_that_mirror_one_another() =>
        Compile("piece p0\n  begin with 3 stitches\n  row 1 RS: dc across\n" + Numbered("piece p{0} is p{1} mirrored\n", 20_000, false));

    [Fact]
    public void Seventeen_thousand_pieces_of_their_own() => Compile(Numbered("piece p{0}\nbegin with 3 stitches\nrow 1: dc across\n", 17_000));

    [Fact]
    public void Twenty_thousand_parts_of_one_row() => Compile("piece b\n begin with 60000 stitches\n row 1 RS: dc across\n" + Numbered("piece p{0} from b: 3 stitches at right edge\n", 20_000, false));

    [Fact]
    public void Fourteen_thousand_parts_each_of_the_one_before() => Compile(Numbered("piece p{0} from p{1}: 3 stitches at right edge\n row: dc across\n", 14_000));

    [Fact]
    public void Sixteen_thousand_pick_ups_of_one_edge() => Compile(Numbered("piece p{0} picked up along b right edge: 2 dc in each row\n", 16_000));

    [Fact]
    public void Twenty_thousand_seams_of_one_edge() => Compile(Numbered("seam b right edge with b left edge\n", 20_000));

    [Fact]
    public void Twenty_thousand_pieces_of_one_name() => Compile(Numbered("piece b\n", 20_000));

    [Fact]
    public void Fifty_thousand_definitions() => Compile(Numbered("count n{0} is 5\n", 50_000));

    [Fact]
    public void Forty_thousand_definitions_each_of_the_one_before() => Compile("count n0 is 5\n" + Numbered("count n{0} is n{1}\n", 40_000, false));

    [Fact]
    public void Forty_thousand_definitions_each_of_the_one_below() =>
        Assert.All(Compile(Numbered("count n{1} is n{0}\n", 40_000, false)), d => Assert.True(d.Kind == DefinedBelow.Kind || d.Kind == UnknownName.Kind));

    [Fact]
    public void Ninety_definitions_in_one_circle() =>
        Assert.Contains(Compile(Numbered("count n{0} is n{1}\n", 90, false) + "count n0 is n90\n"), d => d.Kind == Circular.Kind);

    [Fact]
    public void Forty_thousand_definitions_in_one_circle() =>
        Assert.All(Compile(Numbered("count n{0} is n{1}\n", 40_000, false) + "count n0 is n40000\n"), d => Assert.Equal(DefinedBelow.Kind, d.Kind));

    [Fact]
    public void Ten_thousand_names_that_nobody_knows() => Compile(Numbered("count n{0} is nme{0}\n", 10_000));

    [Fact]
    public void Forty_thousand_claims() => Compile("piece b\n begin with 5 stitches\n" + Repeat(" row: dc across = 6\n", 19_000) + Repeat(" leave 0 at right edge = 6\n", 20_000));

    [Fact]
    public void Fifteen_thousand_claims_each_wrong_in_its_own_way() => Compile("piece b\n begin with 5 stitches\n" + Numbered(" row: dc across = 5 + {0}\n", 15_000, false));

    [Fact]
    public void Sixty_sizes_of_many_long_pieces() => Assert.Contains(
        Compile($"sizes {Names(60)}\npiece b\nbegin with 5 stitches\nrow: dc across\nstraight 1900 rows\n" + Numbered("piece q{0} is b mirrored\n", 20_000, false)),
        d => d.Kind == TooManyRows.Kind);

    [Fact]
    public void Sixty_sizes_of_many_pieces() => Assert.Contains(
        Compile($"sizes {Names(60)}\n" + Numbered("piece p{0}\nbegin with 3 stitches\nrow 1: dc across\n", 15_000, false)),
        d => d.Kind == TooManyRows.Kind);

    [Fact]
    public void Sixty_sizes_of_many_definitions() => Compile($"sizes {Names(60)}\n" + Numbered("count n{0} is n{1} + 1\n", 30_000, false));

    [Fact]
    public void Ten_thousand_edge_names() => Compile("piece b\n begin with 5 stitches\n" + Numbered(" row: dc across\n from here right edge is e{0}\n", 10_000, false));

    [Fact]
    public void Ten_thousand_steps_before_one_row() => Compile("piece b\n begin with 5 stitches\n row: dc across\n" + Repeat(" add 1 at right edge = 5\n", 10_000) + " row: dc across\n");

    [Fact]
    public void Ten_thousand_steps_each_before_a_row() => Compile("piece b\n begin with 5 stitches\n row: dc across\n" + Repeat(" add 1 at right edge\n row: dc across\n", 9_000));

    [Fact]
    public void Twenty_thousand_rows_of_twenty_thousand_kinds() =>
        Compile("piece b\n begin with 20000 stitches\n row: (dc, sc, ch 1) 10000 times\n" + Repeat(" row: (dc in next st, sc in next st, ch 1) across\n", 19_000));

    [Fact]
    public void Many_solved_and_given_schedules() => Compile("piece b\n begin with 5 stitches\n row: dc across\n" + Repeat(" shape 20000 rows: inc 1 at right edge every row\n", 10_000));

    [Fact]
    public void Twenty_five_thousand_lines_that_can_not_be_read() => Compile(Repeat("row dc ac(ross count is piece gauge\n", 25_000));

    [Fact]
    public void Fifty_thousand_lines_in_no_piece() => Compile(Repeat("row 1: dc across\n", 50_000));

    [Fact]
    public void A_sum_of_100_000_terms() => Compile("count n is (1" + Repeat("\n+ 1", Many) + ")\npiece b\n begin with n stitches\n row: dc across = 100001\n");

    [Fact]
    public void A_product_of_100_000_terms() => Assert.Contains(Compile("count n is (2" + Repeat("\nx 3", Many) + ")\n"), d => d.Kind == TooLarge.Kind);

    [Fact]
    public void A_row_of_70_000_words() => Compile("piece b\n begin with 5 stitches\n row: dc, " + Repeat("dc in same,\n", 70_000) + "dc across\n");

    [Fact]
    public void A_name_as_long_as_a_line() => Compile($"count {new string('n', 19_000)} is 5\npiece b\n begin with {new string('n', 19_000)}m stitches\n");

    [Fact]
    public void Sixty_sizes_are_as_many_as_there_may_be() =>
        Assert.DoesNotContain(Compile($"sizes {Names(60)}\ncount n is 1 ({string.Join(", ", Enumerable.Range(2, 59))})\npiece b\n begin with n stitches\n row: dc across = n\n"), d => d.Kind.Severity == Severity.Error);

    private static string Names(int sizes) => string.Join(", ", Enumerable.Range(1, sizes).Select(i => $"s{i}"));

    private static string Numbered(string line, int times, bool begun = true)
    {
        var text = new StringBuilder(begun ? "piece b\n begin with 3 stitches\n row 1 RS: dc across\npiece p0 is b mirrored\n" : string.Empty);
        for (var i = 1; i <= times; i++) text.AppendFormat(CultureInfo.InvariantCulture, line, i, i - 1);
        return text.ToString();
    }

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static IReadOnlyList<Diagnostic> Compile(string text)
    {
        var compilation = Watched(() => Compilation.Of(new SourceText("hostile", text)));
        Assert.True(text.Length > SyntaxReader.LargestFile == compilation.Diagnostics.Any(d => d.Kind == FileLarge.Kind));
        Assert.True(text.Length is <= SyntaxReader.LargestFile or > 5_000_000, "the file is too long to say anything about its lines");
        foreach (var found in compilation.Diagnostics.Take(20)) Assert.InRange(DiagnosticPrinter.Print(found, compilation.Tree.Source).Length, 1, 100_000);
        return compilation.Diagnostics;
    }

    private static Compilation Watched(Func<Compilation> work)
    {
        var (watch, before) = (Stopwatch.StartNew(), GC.GetTotalMemory(true));
        watch.Restart();
        var made = work();
        Assert.True(watch.Elapsed < Patience, $"took {watch.Elapsed}");
        var held = GC.GetTotalMemory(true) - before;
        Assert.True(held < Memory, $"holds {held} bytes");
        GC.KeepAlive(made);
        return made;
    }
}
