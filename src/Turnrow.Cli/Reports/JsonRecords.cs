using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Turnrow.Cli.Reports;

/// <summary>Writes a flat array of records, one a line, so that a diff or a search by line makes sense too.</summary>
internal sealed class JsonRecords : IDisposable
{
    // The output is UTF-8 and no web page; a ½ stays a ½.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Terminal _terminal;
    private readonly ArrayBufferWriter<byte> _buffer = new();
    private readonly Utf8JsonWriter _json;
    private bool _any;

    public JsonRecords(Terminal terminal)
    {
        _terminal = terminal;
        _json = new Utf8JsonWriter(_buffer, Options);
        terminal.Out.Flush();
        terminal.Stream.Write("["u8);
    }

    /// <summary>Writes one record.</summary>
    public void Add(Action<Utf8JsonWriter> fields)
    {
        _buffer.ResetWrittenCount();
        _json.Reset(_buffer);
        _json.WriteStartObject();
        fields(_json);
        _json.WriteEndObject();
        _json.Flush();
        _terminal.Stream.Write(_any ? ",\n"u8 : "\n"u8);
        _terminal.Stream.Write(_buffer.WrittenSpan);
        _any = true;
    }

    /// <summary>Ends the array.</summary>
    public void End() => _terminal.Stream.Write(_any ? "\n]\n"u8 : "]\n"u8);

    /// <inheritdoc/>
    public void Dispose() => _json.Dispose();
}
