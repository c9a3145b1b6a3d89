using System.Globalization;
using System.Text;
using System.Text.Json;
using Turnrow.Cli.Reports;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Tables;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>What other programs and people read: the fields are a promise, and no culture changes a number.</summary>
public sealed class ReportTests
{
    private static readonly string[] FindingFields =
        ["code", "name", "severity", "message", "help", "mends", "related", "file", "line", "column", "end_line", "end_column", "sizes"];

    private static readonly string[] RowFields =
        ["piece", "size", "row", "side", "stitches", "counts", "start", "end", "width_cm", "height_cm", "line"];

    [Fact]
    public void A_finding_has_exactly_the_fields_promised()
    {
        var source = new SourceText("a.turnrow", "notation 1\npiece 🧶 back\n");
        var kind = new DiagnosticKind("row-count", "TR0301", Severity.Warning, "", "", "");
        var finding = new Diagnostic(kind, new TextSpan(20, 4), "say \"½\" <b>")
        {
            Help = "help",
            Sizes = ["L", "1X"],
            Mends = [new Mend("write 12", new TextSpan(11, 5), "12")],
            Related = [new Related(new TextSpan(0, 8), "from here")],
        };
        var text = Json(records => records.Add(json => FindingJson.Write(json, source, finding)));
        Assert.Contains("say \\\"½\\\" <b>", text, StringComparison.Ordinal);
        var record = Records(text).Single();
        Assert.Equal(FindingFields, Names(record));
        Assert.Equal("row-count TR0301 warning help a.turnrow", Join(record, "name", "code", "severity", "help", "file"));
        // The ball of yarn is two UTF-16 units, as in an editor.
        Assert.Equal("2 10 2 14", Join(record, "line", "column", "end_line", "end_column"));
        Assert.Equal("""["L","1X"]""", record.GetProperty("sizes").GetRawText());
        Assert.Equal(["title", "new_text", "line", "column", "end_line", "end_column"], Names(record.GetProperty("mends")[0]));
        Assert.Equal(["message", "file", "line", "column", "end_line", "end_column"], Names(record.GetProperty("related")[0]));
    }

    [Fact]
    public void A_finding_that_says_little_has_the_same_fields()
    {
        var kind = new DiagnosticKind("row-count", "TR0301", Severity.Error, "", "", "");
        // Half a pair of surrogates is no text; it must not stop the output.
        var finding = new Diagnostic(kind, new TextSpan(0, 0), "half \ud83e");
        var record = Records(Json(records => records.Add(json => FindingJson.Write(json, new SourceText("a", ""), finding)))).Single();
        Assert.Equal(FindingFields, Names(record));
        Assert.Equal(JsonValueKind.Null, record.GetProperty("help").ValueKind);
        Assert.Equal("[] [] []", string.Join(' ', record.GetProperty("mends"), record.GetProperty("related"), record.GetProperty("sizes")));
        Assert.Equal("error 1 1", Join(record, "severity", "line", "column"));
    }

    [Fact]
    public void A_row_has_exactly_the_fields_promised_in_any_culture()
    {
        var text = InCommaCulture(() => Json(WriteBack));
        var rows = Records(text).ToList();
        Assert.Equal(3, rows.Count);
        Assert.All(rows, row => Assert.Equal(RowFields, Names(row)));
        Assert.Equal(
            """{"piece":"back","size":"S","row":2,"side":"WS","stitches":9,"counts":{"dc":9,"ch-3 sp":2},"start":"left","end":"right neck","width_cm":7.89,"height_cm":2.5,"line":8}""",
            rows[1].GetRawText());
        Assert.Equal("""{"stitches":null,"counts":null,"width_cm":null,"height_cm":3.75}""", Only(rows[2], "stitches", "counts", "width_cm", "height_cm"));
    }

    [Fact]
    public void No_records_are_an_empty_array() => Assert.Equal("[]\n", Json(_ => { }));

    [Fact]
    public void Rows_stand_beside_each_other_by_the_line_that_made_them()
    {
        var small = Back(9, 2);
        var large = Back(11, 3);
        var lines = RowLines.Of([small, large], row => row.Number == 1 ? 5 : 6).ToList();
        Assert.Equal("5 6 6", string.Join(' ', lines.Select(line => line.Line)));
        Assert.Null(lines[2].InSizes[0]);
        Assert.Equal(3, lines[2].InSizes[1]!.Number);
    }

    [Fact]
    public void Every_row_stands_in_the_table_with_its_counts_in_all_sizes()
    {
        using var writer = new StringWriter { NewLine = "\n" };
        InCommaCulture(() =>
        {
            RowListing.Write(writer, row => row.Number == 1 ? 5 : 6, [Back(9, 2), Back(11, 3)], ["S", "M"]);
            return 0;
        });
        Assert.Equal(
            """
            back, sizes S (M)
              row  side  stitches  spaces  starts at      ends at     line
              1    RS    9 (11)    2       right armhole  left        5
              2    WS    9 (11)    2       left           right neck  6
              3    RS    - (?)             right neck     left        6

            """.ReplaceLineEndings("\n"),
            writer.ToString());
    }

    [Theory]
    [InlineData("77", "77", "77")]
    [InlineData("77 (85)", "77", "85")]
    [InlineData("77 (77, 85)", "77", "77", "85")]
    public void Sizes_are_written_as_the_trade_does(string expected, params string[] inSizes) => Assert.Equal(expected, SizedText.Of(inSizes));

    private static Pattern Pattern { get; } = new()
    {
        Sizes = ["S", "M"],
        Gauges = new GaugeBook([new Gauge(StitchBook.Double, 19, 10, 8, 10)]),
    };

    /// <summary>A piece whose third row, if it has one, is unknown.</summary>
    private static Piece Back(int stitches, int rows)
    {
        var tops = PlaceSequence.Of(new Place(PlaceKind.TurningChain, StitchBook.Double, 0), 1)
            .Then(PlaceSequence.Of(Place.SpaceOf(3), 2))
            .Then(PlaceSequence.Of(Place.TopOf(StitchBook.Double), stitches - 1));
        var work = new RowWork([], PlaceSequence.Empty, tops, new Opening(StitchBook.Double, 3, true, 0, 0));
        var plan = ShapedPlan.Plain(StitchBook.Double);
        List<Row> made = [];
        for (var i = 0; i < rows; i++)
            made.Add(new Row(i + 1, i % 2 == 0, i == 0 ? RowBegins.Foundation : RowBegins.Turned, i == 2 ? null : work, null, null, plan, i == 0 ? 0 : i - 1));
        EdgeWalk right = new(Hand.Right,
        [
            new(StretchKind.Foundation, 0, 9, null, "hem"),
            new(StretchKind.RowEnds, 1, 1, StitchBook.Double, "armhole"),
            new(StretchKind.RowEnds, 2, 2, StitchBook.Double, "neck"),
        ]);
        return new Piece("back", null, made, right, new EdgeWalk(Hand.Left, []), false);
    }

    private static void WriteBack(JsonRecords records)
    {
        foreach (var record in RowTable.Of(Pattern, Back(9, 3), "S", row => row.Number + 6))
            records.Add(json => RowsJson.Write(json, record));
    }

    private static string Json(Action<JsonRecords> write)
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        using var terminal = new Terminal(output, error);
        using var records = new JsonRecords(terminal);
        write(records);
        records.End();
        return Encoding.UTF8.GetString(output.ToArray());
    }

    private static IEnumerable<JsonElement> Records(string text) => JsonDocument.Parse(text).RootElement.EnumerateArray();

    private static string[] Names(JsonElement record) => [.. record.EnumerateObject().Select(field => field.Name)];

    private static string Join(JsonElement record, params string[] fields) => string.Join(' ', fields.Select(field => record.GetProperty(field).ToString()));

    private static string Only(JsonElement record, params string[] fields) =>
        "{" + string.Join(',', fields.Select(field => $"\"{field}\":{record.GetProperty(field).GetRawText()}")) + "}";

    /// <summary>A culture that writes a decimal comma and a minus of its own; the machine may have no other.</summary>
    private static T InCommaCulture<T>(Func<T> work)
    {
        var before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "~";
        CultureInfo.CurrentCulture = culture;
        try
        {
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
