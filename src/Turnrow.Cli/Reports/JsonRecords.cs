using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Turnrow.Cli.Reports;

/// <summary>Writes a flat array of records, one a line, so that a diff or a search by line makes sense too.</summary>
internal sealed class JsonRecords : IDisposable
{
    // The output is UTF-8 and no web page; a ½ stays a ½.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private const int Enough = 32 * 1024;

    private readonly Stream _stream;
    private readonly ArrayBufferWriter<byte> _held = new(Enough + (Enough / 2));
    private readonly Utf8JsonWriter _json;
    private bool _any;

    public JsonRecords(Terminal terminal)
    {
        terminal.Out.Flush();
        _stream = terminal.Stream;
        _json = new Utf8JsonWriter(_held, Options);
        _held.Write("["u8);
    }

    /// <summary>Adds one record.</summary>
    /// <param name="write">Writes it, as one object.</param>
    public void Add(Action<Utf8JsonWriter> write)
    {
        _held.Write(_any ? ",\n"u8 : "\n"u8);
        _any = true;
        _json.Reset();
        write(_json);
        _json.Flush();
        // A write for each record would cost more than all the rest.
        if (_held.WrittenCount >= Enough) Pass();
    }

    /// <summary>Ends the array.</summary>
    public void End()
    {
        _held.Write(_any ? "\n]\n"u8 : "]\n"u8);
        Pass();
    }

    /// <inheritdoc/>
    public void Dispose() => _json.Dispose();

    private void Pass()
    {
        _stream.Write(_held.WrittenSpan);
        _held.ResetWrittenCount();
    }
}
