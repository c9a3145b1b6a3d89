using System.Text;
using System.Text.Json;
using Turnrow.Cli.Start;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The verbs on real patterns, right ones and broken ones.</summary>
public sealed class VerbTests : IDisposable
{
    private static readonly string Good = StarterPattern.Text("Pouch");

    /// <summary>A row that can't be read; the other lines can.</summary>
    private static readonly string Broken = Good.Replace("  fasten off", "  row: sc 5 sc\n  fasten off", StringComparison.Ordinal);

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_first_pattern_works_out_and_fits_a_screen()
    {
        var ran = InProcess.Turnrow("check", _folder.Write("a.turnrow", Good));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Matches(": 3 sizes, 2 pieces, [0-9]+ rows: no errors, no warnings\n$", ran.Out);
        Assert.All(Good.Split('\n'), line => Assert.True(line.Length <= 110, line));
    }

    [Fact]
    public void Check_shows_the_line_says_how_many_and_ends_with_1()
    {
        var ran = InProcess.Turnrow("check", _folder.Write("a.turnrow", Broken));
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.Contains("| " + "  row: sc 5 sc\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("^", ran.Out, StringComparison.Ordinal);
        Assert.Contains(": 3 sizes, 2 pieces, ", ran.Out, StringComparison.Ordinal);
        Assert.EndsWith(": 1 error, no warnings\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_errors_a_person_gets_the_first_and_is_told_how_many_follow()
    {
        var path = _folder.Write("a.turnrow", string.Concat(Enumerable.Repeat("bogus\n", 130)));
        var ran = InProcess.Turnrow("check", path);
        Assert.Equal(100, ran.Out.Split("no line begins with").Length - 1);
        Assert.Contains($"\n… and 30 more in {path}: mend those above first", ran.Out, StringComparison.Ordinal);
        Assert.EndsWith(": 130 errors, no warnings\n", ran.Out, StringComparison.Ordinal);
        Assert.Equal(130, Records(InProcess.Turnrow("check", "--json", path)).Count);
    }

    [Fact]
    public void Check_of_a_folder_ends_with_the_sum()
    {
        _folder.Write("a.turnrow", Broken);
        _folder.Write("b.turnrow", Good);
        var ran = InProcess.Turnrow("check", _folder.Path);
        Assert.Equal(1, ran.Code);
        Assert.EndsWith("\n2 patterns: 1 error, no warnings\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_as_json_says_the_same_in_fields()
    {
        var path = _folder.Write("a.turnrow", Broken);
        var ran = InProcess.Turnrow("check", "--json", path);
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        var finding = Records(ran).Single();
        Assert.Equal(("error", path), (finding.GetProperty("severity").GetString(), finding.GetProperty("file").GetString()));
        Assert.Equal(LineOf(Broken, "row: sc 5 sc"), finding.GetProperty("line").GetInt32());
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x41, 0x00 })]
    [InlineData(new byte[] { 0x70, 0x00, 0x00, 0x0A })]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0xC3 })]
    public void Bytes_that_are_no_text_are_an_error_in_the_pattern(byte[] bytes)
    {
        var path = _folder.Write("a.turnrow", bytes);
        Assert.Equal(1, InProcess.Turnrow("check", path).Code);
        Assert.Equal(1, InProcess.Turnrow("claim", path).Code);
        Assert.Equal(bytes, File.ReadAllBytes(path));
    }

    [Fact]
    public void A_file_too_large_to_be_a_pattern_is_not_read_to_its_end()
    {
        var path = _folder["a.turnrow"];
        using (var file = File.Create(path)) file.SetLength(Files.PatternFile.MostBytes + 1L);
        var ran = InProcess.Turnrow("check", path);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("that is no pattern", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_lists_every_row_in_all_sizes()
    {
        var ran = InProcess.Turnrow("rows", _folder.Write("a.turnrow", Good), "--piece", "front");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("front, sizes S (M, L)\n  row ", ran.Out, StringComparison.Ordinal);
        Assert.Matches(@"\n  1 +RS +21 \(25, 29\) +right side +left side +\d+\n", ran.Out);
        Assert.DoesNotContain("back", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_in_one_size_says_that_size_alone()
    {
        var ran = InProcess.Turnrow("rows", _folder.Write("a.turnrow", Good), "--piece", "Front", "--size", "m");
        Assert.StartsWith("front, size M\n", ran.Out, StringComparison.Ordinal);
        Assert.Matches(@"\n  1 +RS +25 +right side ", ran.Out);
    }

    [Fact]
    public void Rows_as_json_has_a_record_for_each_row_that_check_counts()
    {
        var path = _folder.Write("a.turnrow", Good);
        var rows = Records(InProcess.Turnrow("rows", path, "--json"));
        Assert.Contains($", {rows.Count} rows: ", InProcess.Turnrow("check", path).Out, StringComparison.Ordinal);
        Assert.Equal(
            """{"piece":"front","size":"S","row":1,"side":"RS","stitches":21,"counts":{"sc":21},"start":"right side","end":"left side","width_cm":15,"height_cm":0.63,"line":"""
            + LineOf(Good, "row 1 RS") + "}",
            rows[0].GetRawText());
        Assert.Equal(rows.Where(row => row.GetProperty("size").GetString() == "L").Count(), Records(InProcess.Turnrow("rows", path, "--json", "--size", "L")).Count);
    }

    [Theory]
    [InlineData("--piece", "frnot", "has no piece `frnot`; did you mean `front`?\n  there are: front, back")]
    [InlineData("--size", "XXL", "has no size `XXL`\n  there are: S, M, L")]
    public void An_unknown_piece_or_size_is_wrong_use(string option, string name, string says)
    {
        var ran = InProcess.Turnrow("rows", _folder.Write("a.turnrow", Good), option, name);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Claim_adds_what_is_missing_and_keeps_every_other_byte()
    {
        var text = "\uFEFF" + Good.ReplaceLineEndings("\r\n");
        var path = _folder.Write("a.turnrow", text);
        var ran = InProcess.Turnrow("claim", path);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var claimed = File.ReadAllText(path, Encoding.UTF8);
        Assert.Equal(0xEF, File.ReadAllBytes(path)[0]);
        Assert.Matches(@"straight to 10 \(11, 12\) cm, even rows += 21 \(25, 29\)\r\n", claimed);
        Assert.DoesNotMatch("[^\r]\n", claimed);
        Assert.Matches(@"claims? added\n", ran.Out);
        Assert.True(IsKeptIn(text, "\uFEFF" + claimed), claimed);
        Assert.Equal(0, InProcess.Turnrow("check", path).Code);
    }

    [Fact]
    public void Claim_leaves_a_file_with_nothing_missing_alone()
    {
        var path = _folder.Write("a.turnrow", Good);
        InProcess.Turnrow("claim", path);
        File.SetLastWriteTimeUtc(path, DateTime.UnixEpoch);
        var ran = InProcess.Turnrow("claim", path);
        Assert.Equal((0, $"{path}: nothing to add, every count is claimed\n"), (ran.Code, ran.Out));
        Assert.Equal(DateTime.UnixEpoch, File.GetLastWriteTimeUtc(path));
    }

    [Fact]
    public void Claim_never_changes_a_claim_that_is_wrong()
    {
        var path = _folder.Write("a.turnrow", Good.Replace("= width - 8", "= width - 6", StringComparison.Ordinal));
        Assert.Equal(1, InProcess.Turnrow("claim", path).Code);
        var text = File.ReadAllText(path);
        Assert.Contains("every 2 rows = width - 6\n", text, StringComparison.Ordinal);
        Assert.Matches(@"even rows += 21 \(25, 29\)\n", text);
    }

    [Fact]
    public void Claim_adds_what_is_known_of_a_pattern_with_errors_and_says_what_is_not()
    {
        var text = Good.Replace("  # `=` claims", "  row: sc 5\n  straight 4 rows\n  # `=` claims", StringComparison.Ordinal);
        var path = _folder.Write("a.turnrow", text);
        var ran = InProcess.Turnrow("claim", path);
        Assert.Equal(1, ran.Code);
        Assert.Contains("error row-length", ran.Error, StringComparison.Ordinal);
        Assert.Contains($"counts that an error hides: lines {LineOf(text, "row: sc 5")}, ", ran.Out, StringComparison.Ordinal);
        var claimed = File.ReadAllText(path);
        Assert.Matches(@"even rows += 21 \(25, 29\)\n", claimed);
        Assert.Contains("  row: sc 5\n", claimed, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_publishes_the_same_bytes_each_time_and_touches_nothing_else()
    {
        var path = _folder.Write("in/pouch.turnrow", Good);
        var (first, second) = (_folder["one"], _folder["two/deep"]);
        var ran = InProcess.Turnrow("build", path, "--out", first);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal(0, InProcess.Turnrow("build", path, "--out", second).Code);
        var names = Directory.GetFiles(first).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToArray();
        Assert.Equal(names, Directory.GetFiles(second).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("pouch.md", names);
        foreach (var name in names)
        {
            Assert.Equal(File.ReadAllBytes(Path.Combine(first, name!)), File.ReadAllBytes(Path.Combine(second, name!)));
            Assert.Contains($"  {first}/{name}\n", ran.Out, StringComparison.Ordinal);
        }

        Assert.Equal(1 + (2 * names.Length), _folder.Files.Count);
    }

    [Fact]
    public void Build_publishes_what_it_can_of_a_pattern_with_errors()
    {
        var ran = InProcess.Turnrow("build", _folder.Write("pouch.turnrow", Broken), "--out", _folder["out"]);
        Assert.Equal(1, ran.Code);
        Assert.Contains("error ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("out/pouch.md", _folder.Files);
    }

    [Fact]
    public void Build_refuses_names_that_would_meet_and_folders_that_are_files()
    {
        var ran = InProcess.Turnrow("build", _folder.Write("a/bag.turnrow", Good), _folder.Write("b/Bag.turnrow", Good), "--out", _folder["out"]);
        Assert.Equal(2, ran.Code);
        Assert.Contains("would have the same names", ran.Error, StringComparison.Ordinal);
        Assert.Contains("out/bag.md", _folder.Files);

        var inTheWay = InProcess.Turnrow("build", _folder["a/bag.turnrow"], "--out", _folder["a/bag.turnrow"]);
        Assert.Equal(2, inTheWay.Code);
        Assert.Contains("can't be written to", inTheWay.Error, StringComparison.Ordinal);
        Assert.Equal(Good, File.ReadAllText(_folder["a/bag.turnrow"]));
    }

    private static List<JsonElement> Records(Ran ran) => [.. JsonDocument.Parse(ran.Out).RootElement.EnumerateArray()];

    // A claim is put in; nothing is taken out and nothing changes places.
    private static bool IsKeptIn(string text, string longer)
    {
        var at = 0;
        foreach (var letter in longer)
        {
            if (at < text.Length && text[at] == letter) at++;
        }

        return at == text.Length;
    }

    private static int LineOf(string text, string words) => text[..text.IndexOf(words, StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;
}
