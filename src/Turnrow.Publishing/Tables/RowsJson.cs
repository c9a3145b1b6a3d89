using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Turnrow.Publishing.Tables;

/// <summary>Writes row records as a flat JSON array, one record a line, so that two versions can be compared line by line.</summary>
public static class RowsJson
{
    // The text is UTF-8 and no web page: a ½ stays a ½.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The whole text, ending in a line end.</summary>
    public static string Write(IEnumerable<RowRecord> records)
    {
        var text = new StringBuilder("[");
        var bytes = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(bytes, Options);
        var first = true;
        foreach (var record in records)
        {
            Write(json, record);
            json.Flush();
            text.Append(first ? "\n" : ",\n").Append(Encoding.UTF8.GetString(bytes.WrittenSpan));
            bytes.ResetWrittenCount();
            json.Reset();
            first = false;
        }

        return text.Append(first ? "]\n" : "\n]\n").ToString();
    }

    /// <summary>Writes one record as an object.</summary>
    public static void Write(Utf8JsonWriter json, RowRecord record)
    {
        json.WriteStartObject();
        json.WriteString("piece", record.Piece);
        json.WriteString("size", record.Size);
        json.WriteNumber("row", record.Row);
        json.WriteString("side", record.Side);
        WriteNumber(json, "stitches", record.Stitches);
        WriteCounts(json, record.Counts);
        if (record.Yarns is { } yarns) WriteYarns(json, yarns);
        json.WriteString("start", record.Start);
        json.WriteString("end", record.End);
        WriteNumber(json, "width_cm", record.WidthCm);
        WriteNumber(json, "height_cm", record.HeightCm);
        WriteNumber(json, "line", record.Line);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, decimal? value)
    {
        json.WritePropertyName(name);
        if (value is { } number) json.WriteRawValue(number.ToString("0.##", CultureInfo.InvariantCulture));
        else json.WriteNullValue();
    }

    private static void WriteYarns(Utf8JsonWriter json, IReadOnlyList<KeyValuePair<string, long>> yarns)
    {
        json.WriteStartObject("yarns");
        foreach (var (yarn, stitches) in yarns) json.WriteNumber(yarn, stitches);
        json.WriteEndObject();
    }

    private static void WriteCounts(Utf8JsonWriter json, IReadOnlyList<KeyValuePair<string, int>>? counts)
    {
        json.WritePropertyName("counts");
        if (counts is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        foreach (var (kind, count) in counts) json.WriteNumber(kind, count);
        json.WriteEndObject();
    }
}
