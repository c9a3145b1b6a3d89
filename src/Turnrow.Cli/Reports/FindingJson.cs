using System.Text.Json;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Cli.Reports;

/// <summary>A finding as a record of <c>check --json</c>. Its fields are a promise; the README of the command lists them.</summary>
internal static class FindingJson
{
    /// <summary>Writes one finding as an object.</summary>
    public static void Write(Utf8JsonWriter json, SourceText source, Diagnostic finding)
    {
        json.WriteStartObject();
        json.WriteString("code"u8, finding.Kind.Code);
        json.WriteString("name"u8, finding.Kind.Name);
        json.WriteString("severity"u8, finding.Kind.Severity == Severity.Error ? "error"u8 : "warning"u8);
        json.WriteString("message"u8, finding.Message);
        json.WriteString("help"u8, finding.Help);
        json.WriteStartArray("mends"u8);
        foreach (var mend in finding.Mends) WriteMend(json, source, mend);
        json.WriteEndArray();
        json.WriteStartArray("related"u8);
        foreach (var related in finding.Related) WriteRelated(json, source, related);
        json.WriteEndArray();
        json.WriteString("file"u8, source.FileName);
        WritePlace(json, source, finding.Span);
        json.WriteStartArray("sizes"u8);
        foreach (var size in finding.Sizes) json.WriteStringValue(size);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMend(Utf8JsonWriter json, SourceText source, Mend mend)
    {
        json.WriteStartObject();
        json.WriteString("title"u8, mend.Title);
        json.WriteString("new_text"u8, mend.NewText);
        WritePlace(json, source, mend.Span);
        json.WriteEndObject();
    }

    private static void WriteRelated(Utf8JsonWriter json, SourceText source, Related related)
    {
        json.WriteStartObject();
        json.WriteString("message"u8, related.Message);
        json.WriteString("file"u8, source.FileName);
        WritePlace(json, source, related.Span);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, SourceText source, TextSpan span)
    {
        var (line, column) = source.PositionOf(span.Start);
        var (endLine, endColumn) = source.PositionOf(span.End);
        json.WriteNumber("line"u8, line);
        json.WriteNumber("column"u8, column);
        json.WriteNumber("end_line"u8, endLine);
        json.WriteNumber("end_column"u8, endColumn);
    }
}
