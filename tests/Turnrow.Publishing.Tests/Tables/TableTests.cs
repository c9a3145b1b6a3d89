using System.Text.Json;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts;
using Turnrow.Publishing.Tables;
using Turnrow.Publishing.Tests.Charts;
using Xunit;

namespace Turnrow.Publishing.Tests.Tables;

public sealed class TableTests
{
    [Fact]
    public void Counts_have_a_column_a_size_and_a_gap_where_a_size_has_no_row()
    {
        var small = SamplePieces.Plain(SamplePieces.Begun("back", 10), StitchBook.Double, 2).Finish();
        var large = SamplePieces.Plain(SamplePieces.Begun("back", 12), StitchBook.Double, 3).Finish();
        var pattern = new Pattern { Sizes = ["S", "6-9 months, \"tall\""], Items = [new PieceInSizes("back", [small, large], [], null)] };
        Assert.Equal("piece,row,side,S,\"6-9 months, \"\"tall\"\"\"\nback,1,RS,10,12\nback,2,WS,10,12\nback,3,RS,,12\n", CountsCsv.Write(pattern));
    }

    [Fact]
    public void Counts_are_the_pattern_s_own()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("scarf", 10), StitchBook.Double, 1).Finish();
        var pattern = new Pattern { Sizes = [""], Counting = Counting.WithoutTurningChain, Items = [new PieceInSizes("scarf", [piece], [], null)] };
        Assert.Equal("piece,row,side,stitches\nscarf,1,RS,9\n", CountsCsv.Write(pattern));
        Assert.Contains("(9)", Chart.Of(piece, "x", "", Terms.US, Counting.WithoutTurningChain)!.Svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pattern_without_sizes_has_a_column_of_stitches()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("scarf", 10), StitchBook.Double, 1).Finish();
        var pattern = new Pattern { Sizes = [""], Items = [new PieceInSizes("scarf", [piece], [], null)] };
        Assert.Equal("piece,row,side,stitches\nscarf,1,RS,10\n", CountsCsv.Write(pattern));
    }

    [Fact]
    public void Records_say_where_a_row_starts_and_what_it_measures()
    {
        var back = SamplePieces.Back();
        var gauge = new Gauge(StitchBook.Double, 19, 10, 10, 10);
        var pattern = new Pattern { Sizes = ["XS"], Gauges = new GaugeBook([gauge]), Items = [new PieceInSizes("back", [back], [], null)] };
        var rows = RowTable.Of(pattern, row => 100 + row.Number).ToList();
        Assert.Equal(36, rows.Count);
        var first = rows[0];
        Assert.Equal(("back", "XS", 1, "RS", 77, "right side-seam", "left side-seam", 101), (first.Piece, first.Size, first.Row, first.Side, first.Stitches, first.Start, first.End, first.Line));
        Assert.Equal((40.53m, 1m), (first.WidthCm, first.HeightCm));
        Assert.Equal(("left armhole", "right armhole", 36m), (rows[35].Start, rows[35].End, rows[35].HeightCm));
        Assert.Equal([new("dc", 77)], first.Counts!);
    }

    [Fact]
    public void Spaces_are_counted_by_their_chains_and_not_as_stitches()
    {
        var pattern = new Pattern { Sizes = [""], Items = [new PieceInSizes("sampler", [SamplePieces.Sampler()], [], null)] };
        var row = RowTable.Of(pattern, null).ElementAt(2);
        Assert.Equal(13, row.Stitches);
        Assert.Equal([new("dc", 13), new("ch-1 sp", 12)], row.Counts!);
        Assert.Null(row.Line);
        Assert.Null(row.WidthCm);
    }

    [Fact]
    public void The_json_is_a_flat_array_of_one_record_a_line()
    {
        var record = new RowRecord("a \"b\" <c>", "S", 1, "RS", 14, [new("dc", 14)], "right neck", "left", 40.5m, null, 7);
        var text = RowsJson.Write([record, record with { Row = 2, Stitches = null, Counts = null }]);
        Assert.Equal(4, text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("a \"b\" <c>", json.RootElement[0].GetProperty("piece").GetString());
        Assert.Contains("\"width_cm\":40.5,\"height_cm\":null,\"line\":7}", text, StringComparison.Ordinal);
        Assert.Contains("\"stitches\":null,\"counts\":null", text, StringComparison.Ordinal);
        Assert.Equal("[]\n", RowsJson.Write([]));
    }

    [Fact]
    public void Terms_of_the_file_name_the_kinds()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("x", 10), StitchBook.Double, 1).Finish();
        var pattern = new Pattern { Terms = Terms.UK, Sizes = [""], Items = [new PieceInSizes("x", [piece], [], null)] };
        Assert.Equal([new("tr", 10)], RowTable.Of(pattern, null).First().Counts!);
    }

    [Fact]
    public void Lengths_are_rounded_from_the_exact_fraction()
    {
        var third = Rational.Of(1, 3)!.Value;
        var gauge = new Gauge(StitchBook.Double, 1, third, 1, third);
        var piece = SamplePieces.Plain(SamplePieces.Begun("x", 2), StitchBook.Double, 2).Finish();
        var pattern = new Pattern { Sizes = [""], Gauges = new GaugeBook([gauge]), Items = [new PieceInSizes("x", [piece], [], null)] };
        Assert.Equal([0.33m, 0.67m], RowTable.Of(pattern, null).Select(static r => r.HeightCm!.Value));
    }
}
